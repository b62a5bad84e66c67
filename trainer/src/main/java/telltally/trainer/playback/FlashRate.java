package telltally.trainer.playback;

import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * How fast a train flashes, counted as the guideline on flashing light counts: flashes in any one-second period (Web
 * Content Accessibility Guidelines, success criterion 2.3.1).
 */
public final class FlashRate {
    /** The most flashes in any second that may be drawn as a flashing lamp. */
    public static final int MOST_IN_A_SECOND = 3;

    private static final long SECOND = 1_000_000_000L;

    private FlashRate() {}

    /** The most flashes that begin within any second; the second's own end is not part of it. */
    public static int mostInAnySecond(PulseTrain pulses) {
        long[] begins = pulses.intervals().stream()
                .filter(Interval::lit)
                .mapToLong(Interval::startNanos)
                .toArray();
        int most = 0;
        int first = 0;
        for (int last = 0; last < begins.length; last++) {
            while (begins[last] - begins[first] >= SECOND) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return most;
    }

    /** Whether a lamp may be seen flashing like this. */
    public static boolean mayFlash(PulseTrain pulses) {
        return mostInAnySecond(pulses) <= MOST_IN_A_SECOND;
    }
}
