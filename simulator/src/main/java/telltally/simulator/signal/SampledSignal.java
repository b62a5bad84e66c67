package telltally.simulator.signal;

import java.util.Arrays;

/** Values at instants: light level, volts, sound. Immutable; instants strictly increase and may be uneven. */
public final class SampledSignal {
    private final long[] atNanos;
    private final double[] values;

    private SampledSignal(long[] atNanos, double[] values) {
        this.atNanos = atNanos;
        this.values = values;
    }

    /**
     * @param atNanos instants of the samples, strictly increasing
     * @param values one finite value for each instant, in any unit
     * @throws IllegalArgumentException if the lengths differ, the instants do not increase or a value is not finite
     */
    public static SampledSignal of(long[] atNanos, double[] values) {
        if (atNanos.length != values.length) {
            throw new IllegalArgumentException(atNanos.length + " instants for " + values.length + " values");
        }
        for (int i = 0; i < values.length; i++) {
            if (i > 0 && atNanos[i] <= atNanos[i - 1]) {
                throw new IllegalArgumentException(
                        "sample " + i + " at " + atNanos[i] + " ns is not after the one before");
            }
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("sample " + i + " is " + values[i]);
            }
        }
        return new SampledSignal(atNanos.clone(), values.clone());
    }

    public int size() {
        return values.length;
    }

    public long atNanos(int index) {
        return atNanos[index];
    }

    public double value(int index) {
        return values[index];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SampledSignal that
                && Arrays.equals(atNanos, that.atNanos)
                && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(atNanos) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return size() + " samples";
    }
}
