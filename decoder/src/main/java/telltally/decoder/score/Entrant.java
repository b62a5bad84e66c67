package telltally.decoder.score;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** A decoder that is to be scored, whatever it is written in and however it misbehaves. */
public interface Entrant {
    /** By which score cards name it: small letters, figures, hyphens. */
    String id();

    /** What a score has to know of it besides its readings. Asking may start a program. */
    default Traits traits() {
        return new Traits(false, true);
    }

    /**
     * What an entrant says of itself.
     *
     * @param wantsFormat whether it has to be told the format: its candidates are the one that was sent and no other
     * @param givesProbabilities whether the probabilities in its readings mean anything
     */
    record Traits(boolean wantsFormat, boolean givesProbabilities) {}

    /** A reader for one worker thread; may be called from several. */
    Reader open();

    /** Reads one session after the other; not for sharing between threads. Never throws, never hangs. */
    interface Reader extends AutoCloseable {
        Outcome read(PulseTrain train, List<FlashFormat> candidates);

        @Override
        void close();
    }
}
