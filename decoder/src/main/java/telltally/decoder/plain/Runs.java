package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Flashes in runs: within a run there are only gaps as within a digit. Made for one format and one clock scale. */
final class Runs {
    /** A flash this much longer than the longest of the format (as a logarithm: by 60 %) is no flash. */
    private static final double STEADY_FROM = 0.47;

    /** A bulb check lasts a second at least; common practice, no source. */
    private static final double BULB_CHECK_FROM = Lengths.log(1_000_000_000L);

    private static final double MOST_A_LENGTH = 6;

    private final Flashes flashes;
    private final Lengths lengths;
    private final double scale;
    private final boolean kindsApart;
    private final int[] firsts;
    private int size;
    private final int[] kinds;
    private final double[] costs;
    private final double cost;

    Runs(Flashes flashes, Lengths lengths, double scale) {
        this.flashes = flashes;
        this.lengths = lengths;
        this.scale = scale;
        this.kindsApart = lengths.places() > 0;
        this.kinds = new int[flashes.count()];
        this.firsts = new int[flashes.count() + 1];
        this.costs = new double[flashes.count()];
        double digitEnds = lengths.digitEnds();
        for (int i = 0; i < flashes.count(); i++) {
            kinds[i] = kindOf(i);
            if (i == 0 || gapBefore(i) > digitEnds || !sameRun(i)) {
                firsts[size++] = i;
            } else {
                costs[size - 1] += Math.min(MOST_A_LENGTH, Cost.of(gapBefore(i), lengths.within()));
            }
            if (kinds[i] >= 0) {
                costs[size - 1] += Math.min(MOST_A_LENGTH, Cost.of(lit(i), lengths.flash(kinds[i])));
            }
        }
        firsts[size] = flashes.count();
        cost = Arrays.stream(costs).sum();
    }

    private int kindOf(int flash) {
        double lit = lit(flash);
        return lit > lengths.longestFlash() + STEADY_FROM ? -1 : lengths.nearestKind(lit);
    }

    private boolean sameRun(int flash) {
        boolean same = kinds[flash] == kinds[flash - 1];
        return kinds[flash] >= 0 && kinds[flash - 1] >= 0 && (same || !kindsApart);
    }

    int size() {
        return size;
    }

    int first(int run) {
        return firsts[run];
    }

    int last(int run) {
        return firsts[run + 1] - 1;
    }

    /** How many flashes a run has. */
    int count(int run) {
        return firsts[run + 1] - firsts[run];
    }

    /** Whether a run is one light too long for a flash. */
    boolean steady(int run) {
        return kinds[first(run)] < 0;
    }

    /** Whether a run is one light that is short enough for a flash, and long enough for a bulb check. */
    boolean perhapsSteady(int run) {
        return count(run) == 1 && flashes.length(first(run)) > BULB_CHECK_FROM;
    }

    /** The kind of a run's first flash; of all its flashes where digits are counted. */
    int kind(int run) {
        return kinds[first(run)];
    }

    int kindOfFlash(int flash) {
        return kinds[flash];
    }

    List<Integer> kinds(int run) {
        List<Integer> row = new ArrayList<>();
        for (int i = first(run); i <= last(run); i++) {
            row.add(kinds[i]);
        }
        return row;
    }

    /** How long a flash was at nominal clock, as a logarithm. */
    double lit(int flash) {
        return flashes.length(flash) - scale;
    }

    /** How long the gap before a flash other than the first was at nominal clock, as a logarithm. */
    double gapBefore(int flash) {
        return flashes.gap(flash) - scale;
    }

    /** What the lengths of a run's flashes and of the gaps within it cost. */
    double cost(int run) {
        return costs[run];
    }

    /** The same of all runs. */
    double cost() {
        return cost;
    }
}
