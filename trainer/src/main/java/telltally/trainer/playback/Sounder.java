package telltally.trainer.playback;

import java.util.Optional;
import java.util.function.LongSupplier;
import javax.sound.sampled.LineUnavailableException;
import org.jspecify.annotations.Nullable;
import telltally.simulator.signal.PulseTrain;

/**
 * Beeps a pulse train on a thread of its own. The line is opened before the first beep and kept running on silence,
 * because a line that has to wake up makes the first beep late. Without a device it stays silent and says why.
 */
public final class Sounder implements Sound {
    private static final byte[] SILENCE = new byte[2 * SoundFeed.CHUNK_SAMPLES];

    /** What is being played. */
    private record Playing(SoundFeed feed, LongSupplier positionNanos) {}

    private final Thread thread;
    private volatile @Nullable Playing playing;
    private volatile @Nullable Trouble trouble;
    private volatile boolean open = true;
    private volatile long worstOffNanos;

    /** Begins to open the usual output. */
    public Sounder() {
        this(SoundLine::usual);
    }

    Sounder(SoundLine.Opener opener) {
        thread = new Thread(() -> run(opener), "sounder");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void play(PulseTrain pulses, Voice voice, LongSupplier positionNanos) {
        worstOffNanos = 0;
        playing = new Playing(new SoundFeed(pulses, voice), positionNanos);
    }

    @Override
    public void stop() {
        playing = null;
    }

    @Override
    public Optional<Trouble> trouble() {
        return Optional.ofNullable(trouble);
    }

    @Override
    public long worstOffNanos() {
        return worstOffNanos;
    }

    @Override
    public void close() {
        open = false;
    }

    /** Waits until its thread has ended: at once without a device, else after closing. */
    void awaitEnd() throws InterruptedException {
        thread.join(5_000);
    }

    private void run(SoundLine.Opener opener) {
        try {
            SoundLine line = opener.open();
            try {
                while (open) {
                    line.write(next(line));
                }
            } finally {
                line.close();
            }
        } catch (LineUnavailableException e) {
            trouble = Trouble.DEVICE_TAKEN;
        } catch (IllegalArgumentException | SecurityException e) {
            trouble = Trouble.NO_DEVICE;
        }
    }

    private byte[] next(SoundLine line) {
        Playing now = playing;
        if (now == null) {
            return SILENCE;
        }
        byte[] chunk = now.feed().next(now.positionNanos().getAsLong(), line.queuedSamples());
        worstOffNanos = now.feed().worstOffNanos();
        return chunk;
    }
}
