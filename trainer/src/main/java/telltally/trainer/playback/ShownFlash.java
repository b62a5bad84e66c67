package telltally.trainer.playback;

import telltally.simulator.signal.Interval;

/**
 * A flash as it was planned and as it was shown, in nanoseconds of the train.
 *
 * @param shownNanos the first frame that had light of it
 * @param goneNanos the first frame that had darkness after it
 */
public record ShownFlash(Interval planned, long shownNanos, long goneNanos) {
    /** How late the light came; never negative. */
    public long lateNanos() {
        return shownNanos - planned.startNanos();
    }

    /** How late the later of its two changes was seen. */
    public long worstLateNanos() {
        return Math.max(lateNanos(), goneNanos - planned.endNanos());
    }

    /** Whether it lagged by more than a tenth of its length: then counting it was not a fair task. */
    public boolean lagged() {
        return lagged(worstLateNanos(), planned);
    }

    static boolean lagged(long lateNanos, Interval planned) {
        return lateNanos > planned.lengthNanos() / 10;
    }
}
