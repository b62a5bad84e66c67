package telltally.decoder.capture;

import java.util.Arrays;
import telltally.simulator.signal.SampledSignal;

/**
 * Samples as the fitting works on them: instants from 0, values in about -1 to 1. Not to be changed once built.
 *
 * <p>A value here times {@code unit} is one of the recording.
 */
final class Series {
    /** Of five thousand samples one at either end may be a spike that says nothing about the levels. */
    private static final int SPIKES_ONE_IN = 5000;

    final long[] atNanos;
    final double[] values;
    final double unit;

    Series(long[] atNanos, double[] values, double unit) {
        this.atNanos = atNanos;
        this.values = values;
        this.unit = unit;
    }

    /** Instants must span less than 63 bits. */
    static Series of(SampledSignal signal) {
        long[] atNanos = new long[signal.size()];
        double[] values = new double[signal.size()];
        double unit = 0;
        for (int i = 0; i < values.length; i++) {
            atNanos[i] = signal.atNanos(i) - signal.atNanos(0);
            unit = Math.max(unit, Math.abs(signal.value(i)));
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = unit == 0 ? 0 : signal.value(i) / unit;
        }
        return new Series(atNanos, limited(values), unit);
    }

    private static double[] limited(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int spikes = values.length / SPIKES_ONE_IN;
        double low = sorted[spikes];
        double high = sorted[sorted.length - 1 - spikes];
        if (low < high) {
            for (int i = 0; i < values.length; i++) {
                values[i] = Math.max(low, Math.min(high, values[i]));
            }
        }
        return values;
    }

    int size() {
        return values.length;
    }

    boolean steady() {
        return Arrays.stream(values).allMatch(value -> value == values[0]);
    }

    /** The median distance of neighbouring samples, at least 1. */
    long spacingNanos() {
        double[] steps = new double[size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = atNanos[i + 1] - atNanos[i];
        }
        return Math.max(1, (long) new Quantiles(steps).median());
    }

    /** Without what lasts for one sample only, at either end too. */
    Series despiked() {
        if (size() < 3) {
            return this;
        }
        double[] out = new double[size()];
        for (int i = 0; i < out.length; i++) {
            double one = values[i == 0 ? 2 : i - 1];
            double other = values[i == size() - 1 ? i - 2 : i + 1];
            out[i] = Math.max(Math.min(one, other), Math.min(Math.max(one, other), values[i]));
        }
        return new Series(atNanos, out, unit);
    }

    /** The mean over an odd number of neighbours; at the ends over those that are there on both sides. */
    Series averaged(int width) {
        double[] sums = new double[size() + 1];
        for (int i = 0; i < size(); i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        double[] out = new double[size()];
        for (int i = 0; i < size(); i++) {
            int reach = Math.min(width / 2, Math.min(i, size() - 1 - i));
            out[i] = (sums[i + reach + 1] - sums[i - reach]) / (2 * reach + 1);
        }
        return new Series(atNanos, out, unit);
    }
}
