package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;

/** Where a sound rises far above its floor and falls again. */
final class Bursts {
    /** Closer ones belong together: the contacts of a relay bounce. */
    private static final int APART_BLOCKS = 15;

    /** What is softer than this share of the louder clicks is no click on release; no source. */
    private static final double SOFTEST_SHARE = 0.25;

    private static final double LEAST_OVER_FLOOR = 1.5;
    private static final double SHORT_BLOCKS = 25;

    /**
     * @param firstBlock where the burst rises above the threshold
     * @param loudBlocks how many blocks are above half of its peak
     */
    record Burst(int firstBlock, double peak, int loudBlocks) {}

    final double floor;
    final List<Burst> all;

    /** @throws IllegalArgumentException if there is no block */
    Bursts(double[] loudness) {
        Quantiles quantiles = new Quantiles(loudness);
        floor = quantiles.median() + 3 * quantiles.deviation();
        List<Burst> candidates = found(loudness, LEAST_OVER_FLOOR * floor);
        all = found(loudness, threshold(candidates));
    }

    /**
     * Within the widest gap, by ratio, between noise that sticks out and clicks. Clicks on release are softer than those
     * on pulling in; a gap above what may be one lies between these two kinds and does not count.
     */
    private double threshold(List<Burst> candidates) {
        double softest = SOFTEST_SHARE * peak(candidates, 0.75);
        double before = LEAST_OVER_FLOOR * floor;
        double threshold = before;
        double widest = 1;
        for (double peak : candidates.stream().mapToDouble(Burst::peak).sorted().toArray()) {
            if (before < softest && peak > widest * before) {
                widest = peak / before;
                threshold = Math.sqrt(peak * before);
            }
            before = peak;
        }
        return threshold;
    }

    /** Whether there are at least two and most are as short as clicks. */
    boolean areClicks() {
        return all.size() >= 2
                && new Quantiles(all.stream().mapToDouble(Burst::loudBlocks).toArray()).median() <= SHORT_BLOCKS;
    }

    double usualPeak() {
        return peak(all, 0.5);
    }

    private static double peak(List<Burst> bursts, double share) {
        return bursts.isEmpty()
                ? 0
                : new Quantiles(bursts.stream().mapToDouble(Burst::peak).toArray()).at(share);
    }

    private static List<Burst> found(double[] loudness, double threshold) {
        List<Burst> found = new ArrayList<>();
        int first = -1;
        int last = 0;
        for (int block = 0; block < loudness.length; block++) {
            if (first >= 0 && block - last > APART_BLOCKS) {
                found.add(burst(loudness, first, last));
                first = -1;
            }
            if (loudness[block] > threshold) {
                first = first < 0 ? block : first;
                last = block;
            }
        }
        if (first >= 0) {
            found.add(burst(loudness, first, last));
        }
        return found;
    }

    private static Burst burst(double[] loudness, int first, int last) {
        double peak = 0;
        for (int block = first; block <= last; block++) {
            peak = Math.max(peak, loudness[block]);
        }
        int loud = 0;
        for (int block = first; block <= last; block++) {
            if (loudness[block] > peak / 2) {
                loud++;
            }
        }
        return new Burst(first, peak, loud);
    }
}
