package telltally.simulator.format;

/**
 * What a format leaves open: how long a recording waits before the first flash and after the last, and how often a
 * looping list is seen.
 *
 * @param loops how often a list that loops until the key is off is sent, at least once
 */
public record Pacing(long leadNanos, long tailNanos, int loops) {
    public Pacing {
        if (leadNanos <= 0 || tailNanos <= 0 || loops < 1) {
            throw new IllegalArgumentException("a wait before, a wait after and a loop are needed: " + leadNanos + ", "
                    + tailNanos + ", " + loops);
        }
    }

    /** Three seconds before, eight after (longer than any gap inside a list), two loops. */
    public static Pacing usual() {
        return new Pacing(3_000_000_000L, 8_000_000_000L, 2);
    }

    public Pacing withLoops(int times) {
        return new Pacing(leadNanos, tailNanos, times);
    }
}
