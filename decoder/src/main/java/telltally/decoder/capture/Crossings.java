package telltally.decoder.capture;

import java.util.Arrays;

/** Where values cross a threshold for good: samples beyond it that go on to be beyond it by a margin. */
final class Crossings {
    private final double[] values;
    private final double threshold;
    private final int[] found;

    Crossings(double[] values, double threshold, double margin) {
        this.values = values;
        this.threshold = threshold;
        int[] places = new int[values.length];
        int count = 0;
        int side = 0;
        int crossed = 0;
        for (int i = 0; i < values.length; i++) {
            if (i > 0 && above(i) != above(i - 1)) {
                crossed = i;
            }
            double off = values[i] - threshold;
            int now = off > margin ? 1 : off < -margin ? -1 : side;
            if (side != 0 && now != side) {
                places[count++] = crossed;
            }
            side = now;
        }
        found = Arrays.copyOf(places, count);
    }

    int count() {
        return found.length;
    }

    boolean aboveAtStart() {
        return found.length == 0 ? above(0) : !above(found[0]);
    }

    /** The instants on straight lines between samples, each after the sample before it. */
    long[] instants(long[] atNanos) {
        long[] instants = new long[found.length];
        for (int i = 0; i < found.length; i++) {
            int after = found[i];
            double share = (threshold - values[after - 1]) / (values[after] - values[after - 1]);
            long from = atNanos[after - 1];
            long step = atNanos[after] - from;
            instants[i] = from + Math.max(1, Math.min(step, Math.round(step * share)));
        }
        return instants;
    }

    /** Whether one stretch lasts for one sample only, among long ones. */
    boolean hasSpikes() {
        if (found.length < 3) {
            return false;
        }
        double[] lengths = new double[found.length - 1];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = found[i + 1] - found[i];
        }
        Quantiles quantiles = new Quantiles(lengths);
        return quantiles.at(0) == 1 && quantiles.at(0.75) >= 5;
    }

    private boolean above(int index) {
        return values[index] >= threshold;
    }
}
