package telltally.trainer.playback;

import java.util.Optional;
import java.util.function.LongSupplier;
import telltally.simulator.signal.PulseTrain;

/** Something that makes a pulse train heard. */
public interface Sound extends AutoCloseable {
    /**
     * Plays from now on, in place of what was played before.
     *
     * @param positionNanos tells where in the train the clock is; may be asked from any thread
     */
    void play(PulseTrain pulses, Voice voice, LongSupplier positionNanos);

    void stop();

    /** Why nothing can be heard; empty while all is well. */
    Optional<Trouble> trouble();

    /** Why nothing can be heard. */
    enum Trouble {
        NO_DEVICE,
        DEVICE_TAKEN
    }

    /** The farthest that the tone of the current playing was found from its time. */
    long worstOffNanos();

    @Override
    void close();
}
