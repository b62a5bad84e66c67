package telltally.trainer.playback;

/**
 * What a display shows of a train: light or deflection, 0 at rest and 1 held by a steady lit level; more where a needle
 * overshoots.
 */
public interface DisplaySignal {
    /**
     * The mean over a stretch of time, which is what one frame can show of it.
     *
     * @param fromNanos from the start of the train
     * @param toNanos later than that, and not after the end
     */
    double mean(long fromNanos, long toNanos);
}
