package telltally.simulator.channel;

/** The instants of evenly spaced samples, from 0 to before the end of a recording. */
final class SampleClock {
    private static final int MOST_SAMPLES = 500_000_000;
    private final long[] atNanos;

    SampleClock(double samplesPerSecond, long endNanos) {
        Bounds.check("samples per second", samplesPerSecond, 0.001, 10_000_000);
        double period = 1e9 / samplesPerSecond;
        Bounds.check("number of samples", endNanos / period, 0, MOST_SAMPLES);
        int count = (int) StrictMath.ceil(endNanos / period);
        atNanos = new long[count];
        for (int i = 0; i < count; i++) {
            atNanos[i] = (long) (i * period);
        }
    }

    int count() {
        return atNanos.length;
    }

    long atNanos(int index) {
        return atNanos[index];
    }

    long[] all() {
        return atNanos;
    }
}
