package telltally.decoder.capture;

/**
 * The threshold that parts a histogram into two classes with the greatest variance between them, which is
 * {@code w0 w1 (m0 - m1)^2} with the shares w and means m of the classes (N. Otsu, "A threshold selection method from
 * gray-level histograms", IEEE Transactions on Systems, Man and Cybernetics 9, 1979).
 */
final class Otsu {
    private static final int BINS = 256;

    private Otsu() {}

    /** The last bin of the lower class; the first such where several are as good; 0 where all lies in one bin. */
    static int lastLowBin(int... counts) {
        double all = 0;
        double sum = 0;
        for (int bin = 0; bin < counts.length; bin++) {
            all += counts[bin];
            sum += (double) bin * counts[bin];
        }
        int best = 0;
        double most = 0;
        double below = 0;
        double belowSum = 0;
        for (int bin = 0; bin < counts.length - 1; bin++) {
            below += counts[bin];
            belowSum += (double) bin * counts[bin];
            double above = all - below;
            if (below > 0 && above > 0) {
                double apart = belowSum / below - (sum - belowSum) / above;
                double between = below * above * apart * apart;
                if (between > most) {
                    most = between;
                    best = bin;
                }
            }
        }
        return best;
    }

    /** The threshold for some values, between the outermost of them. */
    static double threshold(double[] values, int count) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            low = Math.min(low, values[i]);
            high = Math.max(high, values[i]);
        }
        if (!(low < high)) {
            return low;
        }
        int[] counts = new int[BINS];
        for (int i = 0; i < count; i++) {
            counts[Math.min(BINS - 1, (int) ((values[i] - low) / (high - low) * BINS))]++;
        }
        return low + (lastLowBin(counts) + 1) * (high - low) / BINS;
    }
}
