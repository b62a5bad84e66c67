package telltally.decoder.lattice;

import java.util.Arrays;

/** How often each length was seen, among the flashes and among the gaps, in bins of equal ratio. */
final class Lengths {
    static final int BINS_PER_E = 32;
    static final double SHORTEST_SECONDS = 1e-3;
    static final int BINS = 14 * BINS_PER_E;
    private static final int MOST_FLASHES = 300;
    /** The least length of each bin: tabled, so that no logarithm is needed for each length. */
    private static final double[] LEAST = new double[BINS];

    static {
        for (int bin = 0; bin < BINS; bin++) {
            LEAST[bin] = SHORTEST_SECONDS * StrictMath.exp((double) bin / BINS_PER_E);
        }
    }

    /** Bins in which anything was seen, and how often. */
    static final class Counts {
        final int[] bins;
        final int[] times;

        private Counts(int[] bins, int[] times) {
            this.bins = bins;
            this.times = times;
        }
    }

    final int flashes;
    final Counts lit;
    final Counts dark;

    Lengths(Flashes seen) {
        flashes = Math.min(seen.count, MOST_FLASHES);
        int[] times = new int[BINS];
        for (int i = 0; i < flashes; i++) {
            times[bin(seen.lit(i))]++;
        }
        lit = counts(times);
        Arrays.fill(times, 0);
        for (int i = 0; i + 1 < flashes; i++) {
            times[bin(seen.start[i + 1] - seen.end[i])]++;
        }
        dark = counts(times);
    }

    private static int bin(double seconds) {
        int at = Arrays.binarySearch(LEAST, seconds);
        return Math.max(0, at >= 0 ? at : -at - 2);
    }

    private static Counts counts(int[] times) {
        int different = 0;
        for (int each : times) {
            different += each > 0 ? 1 : 0;
        }
        int[] bins = new int[different];
        int[] counted = new int[different];
        for (int bin = 0; bin < BINS; bin++) {
            if (times[bin] > 0) {
                bins[--different] = bin;
                counted[different] = times[bin];
            }
        }
        return new Counts(bins, counted);
    }
}
