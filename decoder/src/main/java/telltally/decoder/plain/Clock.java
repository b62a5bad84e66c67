package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much slower than nominal a sender was. A scale is the logarithm of the factor: 0 is nominal, 0.05 about 5 % slow.
 *
 * <p>For every scale of a grid, each length costs what it is off the nearest nominal length; lengths that are near none
 * count the same everywhere. The cheapest scales are tried in full. Lengths are counted in narrow bins first, so that
 * the effort does not grow with the size of the grid.
 */
final class Clock {
    /** As wide as senders stray in practice, and a little more: 0.74 to 1.34. */
    private static final double WIDEST = 0.30;

    private static final double STEP = 0.02;

    /** Most clocks are within some 10 % of nominal; common practice, no source. */
    private static final double USUAL = 0.10;

    private static final double BIN = 0.01;
    private static final int BINS = 4500;
    private static final double STRANGE = 4.5;
    private static final int MOST_TRIED = 3;

    /** A scale that costs this much more than the cheapest is not worth a try. */
    private static final double HOPELESS = 25;

    private final Lengths lengths;
    private final int[] lit = new int[BINS];
    private final int[] dark = new int[BINS];
    private final int[] litBins;
    private final int[] darkBins;

    Clock(Flashes flashes, Lengths lengths) {
        this.lengths = lengths;
        for (int i = 0; i < flashes.count(); i++) {
            lit[bin(flashes.length(i))]++;
            if (i > 0) {
                dark[bin(flashes.gap(i))]++;
            }
        }
        litBins = IntStream.range(0, BINS).filter(bin -> lit[bin] > 0).toArray();
        darkBins = IntStream.range(0, BINS).filter(bin -> dark[bin] > 0).toArray();
    }

    /** What it costs to assume this scale before anything was seen. */
    static double cost(double scale) {
        return scale * scale / (2 * USUAL * USUAL);
    }

    /**
     * The most probable scale once lengths were seen: their mean, drawn towards nominal the more the fewer they are.
     *
     * @param mean of what the lengths are off nominal, as a logarithm
     */
    static double refined(double mean, int lengths) {
        double weight = lengths / (lengths + Cost.SPREAD * Cost.SPREAD / (USUAL * USUAL));
        return Math.max(-WIDEST, Math.min(WIDEST, mean * weight));
    }

    /** The scales worth trying, the cheapest first: those that are cheaper than their neighbours. */
    List<Double> scales() {
        int steps = (int) Math.round(2 * WIDEST / STEP) + 1;
        double[] costs = new double[steps];
        for (int i = 0; i < steps; i++) {
            costs[i] = costOfAll(scale(i));
        }
        List<Integer> best = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            boolean fallsBefore = i == 0 || costs[i] < costs[i - 1];
            boolean risesAfter = i == steps - 1 || costs[i] <= costs[i + 1];
            if (fallsBefore && risesAfter) {
                best.add(i);
            }
        }
        double least = Arrays.stream(costs).min().orElse(0);
        return best.stream()
                .filter(i -> costs[i] <= least + HOPELESS)
                .sorted(Comparator.comparingDouble(i -> costs[i]))
                .limit(MOST_TRIED)
                .map(Clock::scale)
                .toList();
    }

    private static double scale(int step) {
        return step * STEP - WIDEST;
    }

    private double costOfAll(double scale) {
        return cost(scale) + cost(lit, litBins, lengths.lit(), scale) + cost(dark, darkBins, lengths.dark(), scale);
    }

    private static double cost(int[] counts, int[] bins, double[] nominal, double scale) {
        double sum = 0;
        for (int bin : bins) {
            double cheapest = STRANGE;
            for (double each : nominal) {
                cheapest = Math.min(cheapest, Cost.of((bin + 0.5) * BIN, each + scale));
            }
            sum += counts[bin] * cheapest;
        }
        return sum;
    }

    private static int bin(double length) {
        return (int) (length / BIN);
    }
}
