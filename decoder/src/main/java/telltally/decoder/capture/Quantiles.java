package telltally.decoder.capture;

import java.util.Arrays;

/** Quantiles of many values, from an even selection of them where there are very many. */
final class Quantiles {
    private static final int ENOUGH = 20_000;
    /** Median absolute deviation to standard deviation of a normal distribution: 1 over its upper quartile. */
    private static final double MAD_TO_DEVIATION = 1.4826;

    private final double[] sorted;

    /** @throws IllegalArgumentException if there is no value */
    Quantiles(double[] values) {
        this(values, values.length);
    }

    /** Of the first values only. */
    Quantiles(double[] values, int count) {
        if (count == 0) {
            throw new IllegalArgumentException("a quantile of nothing");
        }
        int stride = Math.max(1, count / ENOUGH);
        sorted = new double[(count + stride - 1) / stride];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = values[i * stride];
        }
        Arrays.sort(sorted);
    }

    /** The value below which about this share lies. */
    double at(double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    double median() {
        return at(0.5);
    }

    /** The standard deviation that a normal distribution of this median absolute deviation would have. */
    double deviation() {
        double median = median();
        double[] off = new double[sorted.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(sorted[i] - median);
        }
        Arrays.sort(off);
        return MAD_TO_DEVIATION * off[off.length / 2];
    }
}
