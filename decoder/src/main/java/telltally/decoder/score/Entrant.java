package telltally.decoder.score;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** A decoder that is to be scored, whatever it is written in and however it misbehaves. */
public interface Entrant {
    /** By which score cards name it: small letters, figures, hyphens. */
    String id();

    /** A reader for one worker thread; may be called from several. */
    Reader open();

    /** Reads one session after the other; not for sharing between threads. Never throws, never hangs. */
    interface Reader extends AutoCloseable {
        Outcome read(PulseTrain train, List<FlashFormat> candidates);

        @Override
        void close();
    }
}
