package telltally.decoder.lattice;

import java.util.List;

/** A first look at how fast the sender was: every length against all nominal lengths, for a row of clocks. */
final class CoarseClock {
    private static final int BINS_PER_E = Lengths.BINS_PER_E;
    private static final double SHORTEST = Lengths.SHORTEST_SECONDS;
    private static final int BINS = Lengths.BINS;
    private static final int REACH = (int) (0.36 * BINS_PER_E);
    /** Clocks up to a quarter off are usual. */
    private static final int USUAL = (int) (0.223 * BINS_PER_E);

    private static final double UNEXPLAINED = 0.05 / 14;

    private final double[] litScore;
    private final double[] darkScore;

    /** A clock and how well it fits, as a logarithm. */
    record Fit(double scale, double score) {}

    CoarseClock(List<Double> lights, List<Double> gaps) {
        litScore = scores(lights);
        darkScore = scores(gaps);
    }

    private static double[] scores(List<Double> lengths) {
        double[] scores = new double[BINS];
        for (int bin = 0; bin < BINS; bin++) {
            double at = (bin + 0.5) / BINS_PER_E;
            double sum = UNEXPLAINED;
            for (double length : lengths) {
                double wide = 0.12 + 0.05 / length;
                double z = (at - StrictMath.log(length / SHORTEST)) / wide;
                sum = Math.max(sum, StrictMath.exp(-z * z / 2) / wide / 2.5);
            }
            scores[bin] = StrictMath.log(sum);
        }
        return scores;
    }

    /** Clocks that fit best, best first, at most two and well apart; where the best is an unusual one, a usual one too. */
    List<Fit> fits(Lengths lengths) {
        double[] score = new double[2 * REACH + 1];
        for (int shift = -REACH; shift <= REACH; shift++) {
            double off = Math.max(0, Math.abs((double) shift / BINS_PER_E) - 0.2) / 0.05;
            score[shift + REACH] =
                    sum(litScore, lengths.lit, shift) + sum(darkScore, lengths.dark, shift) - off * off / 2;
        }
        int first = best(score, -1);
        int second = best(score, first);
        if (second >= 0 && score[second] >= score[first] - 8 - 0.25 * lengths.flashes) {
            return List.of(fit(first, score), fit(second, score));
        }
        if (Math.abs(first - REACH) > USUAL) {
            return List.of(fit(first, score), fit(bestUsual(score), score));
        }
        return List.of(fit(first, score));
    }

    private static int bestUsual(double[] score) {
        int best = REACH;
        for (int i = REACH - USUAL; i <= REACH + USUAL; i++) {
            best = score[i] > score[best] ? i : best;
        }
        return best;
    }

    private static Fit fit(int index, double[] score) {
        return new Fit(StrictMath.exp((double) (index - REACH) / BINS_PER_E), score[index]);
    }

    /** The best local maximum that is not next to another. */
    private static int best(double[] score, int apartFrom) {
        int best = -1;
        for (int i = 0; i < score.length; i++) {
            boolean top = (i == 0 || score[i] >= score[i - 1]) && (i == score.length - 1 || score[i] >= score[i + 1]);
            if (top
                    && (apartFrom < 0 || Math.abs(i - apartFrom) > BINS_PER_E / 8)
                    && (best < 0 || score[i] > score[best])) {
                best = i;
            }
        }
        return best;
    }

    private static double sum(double[] table, Lengths.Counts counts, int shift) {
        double sum = 0;
        for (int i = 0; i < counts.bins.length; i++) {
            sum += counts.times[i] * table[Math.min(BINS - 1, Math.max(0, counts.bins[i] - shift))];
        }
        return sum;
    }
}
