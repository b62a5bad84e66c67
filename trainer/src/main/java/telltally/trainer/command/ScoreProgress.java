package telltally.trainer.command;

import java.util.function.LongSupplier;
import telltally.decoder.card.run.ScoreRun;
import telltally.decoder.score.Outcome;

/**
 * How far a run has come, in one line that is written over; a few times a second, whatever the number of sessions, and
 * only where it is seen at once.
 */
final class ScoreProgress implements ScoreRun.Progress {
    private static final long PAUSE_NANOS = 200_000_000;

    private final Streams streams;
    private final LongSupplier clock;
    private final long began;
    private long written;
    private int width;

    /** @param clock nanoseconds from some instant */
    ScoreProgress(Streams streams, LongSupplier clock) {
        this.streams = streams;
        this.clock = clock;
        this.began = clock.getAsLong();
        this.written = began;
    }

    @Override
    public void givenUp(String decoder, Outcome.Failed why) {
        streams.error(decoder + " failed every session that was tried first, and is not asked again; the last: "
                + why.detail());
    }

    @Override
    public void sessions(long done, long all) {
        long now = clock.getAsLong();
        if (!streams.progressSeen()) {
            return;
        }
        if (now - written < PAUSE_NANOS && done < all) {
            return;
        }
        written = now;
        long left = done == 0 ? 0 : (long) ((now - began) * ((double) (all - done) / done));
        String text = done + " of " + all + " sessions, " + done * 100 / Math.max(1, all) + " %"
                + (done < all ? ", about " + (left / 1_000_000_000 + 1) + " s to go" : "");
        over(text);
    }

    /** Takes the line away again. */
    void end() {
        if (!streams.progressSeen()) {
            return;
        }
        over("");
        streams.err().print('\r');
        streams.err().flush();
    }

    private void over(String text) {
        streams.err().print('\r' + text + " ".repeat(Math.max(0, width - text.length())));
        streams.err().flush();
        width = text.length();
    }
}
