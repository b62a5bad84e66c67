package telltally.trainer.mastery;

import java.util.Arrays;

/**
 * What is believed of a hidden quantity: a weight for each of evenly spaced points, moved by evidence. Weights are kept as
 * logarithms, so that much evidence does not lose the unlikely points.
 */
final class Grid {
    private final double least;
    private final double step;
    private final double[] logWeights;
    private final double[] shares;

    private Grid(double least, double step, double[] logWeights) {
        this.least = least;
        this.step = step;
        this.logWeights = logWeights;
        shares = shares(logWeights);
    }

    /** A normal distribution over so many points from the least on. */
    static Grid normal(double least, double step, int points, double mean, double spread) {
        double[] logWeights = new double[points];
        for (int i = 0; i < points; i++) {
            double off = (least + i * step - mean) / spread;
            logWeights[i] = -off * off / 2;
        }
        return new Grid(least, step, logWeights);
    }

    /**
     * Bayes' rule.
     *
     * @param logLikelihoods of what was seen, at each point
     */
    Grid after(double[] logLikelihoods) {
        return fadedAfter(this, 1, logLikelihoods);
    }

    /** Bayes' rule, with what was seen before counting this share of what it counted, and the beginning for the rest. */
    Grid fadedAfter(Grid beginning, double share, double[] logLikelihoods) {
        double[] next = new double[logWeights.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < next.length; i++) {
            next[i] = share * logWeights[i] + (1 - share) * beginning.logWeights[i] + logLikelihoods[i];
            most = Math.max(most, next[i]);
        }
        for (int i = 0; i < next.length; i++) {
            next[i] -= most;
        }
        return new Grid(least, step, next);
    }

    double point(int index) {
        return least + index * step;
    }

    int points() {
        return logWeights.length;
    }

    /** The expectation of something that has these values at the points. */
    double expected(double[] values) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * values[i];
        }
        return sum;
    }

    /** Where the running sum of the shares reaches this one, between points on a straight line. */
    double quantile(double order) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            if (sum + shares[i] >= order) {
                return point(i) - step * (sum + shares[i] - order) / shares[i];
            }
            sum += shares[i];
        }
        return point(shares.length - 1);
    }

    private static double[] shares(double[] logWeights) {
        double[] shares = new double[logWeights.length];
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = StrictMath.exp(logWeights[i]);
            sum += shares[i];
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= sum;
        }
        return shares;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Grid grid && Arrays.equals(logWeights, grid.logWeights);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(logWeights);
    }
}
