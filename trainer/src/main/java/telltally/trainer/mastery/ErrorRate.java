package telltally.trainer.mastery;

import java.util.Arrays;
import telltally.trainer.drill.Level;

/**
 * What is believed of how many errors somebody would make in a drill at full level: a distribution over a grid, moved by
 * every answer. This is the method of QUEST (Watson and Pelli 1983, Perception and Psychophysics 33:113-120) with its
 * psychometric function, guess + (1 - guess - lapse) exp(-rate exposure): a right answer is one without any slip, and
 * slips come as often as there is occasion for them. Between answers the learner may have learnt, which QUEST does not
 * know: the distribution drifts towards fewer errors and spreads.
 */
public final class ErrorRate {
    private static final int POINTS = 48;
    private static final double LEAST_LOG = -4.6;
    private static final double MOST_LOG = 2.1;
    private static final double STEP = (MOST_LOG - LEAST_LOG) / (POINTS - 1);
    private static final double GUESS = 0.01;
    private static final double LAPSE = 0.01;

    /** Beginners are taken to get most drills at full level right, with great doubt, so that the full level is tried first. Common practice, no source. */
    private static final double BEGINNERS_LOG = -1.6;

    private static final double BEGINNERS_SPREAD = 1.5;

    /** How easily one answer's learning moves a point down or back. Common practice, no source. */
    private static final double LEARNT = 0.3;

    private static final double UNLEARNT = 0.05;

    /** How much less occasion for slips the easiest level gives. The last level adds only repeats. */
    private static final double LEAST_EXPOSURE = 0.15;

    private static final double[][] CHANCES = chances();

    private final double[] weights;

    private ErrorRate(double[] weights) {
        this.weights = weights;
    }

    /** Of somebody who has not answered yet. */
    public static ErrorRate ofBeginners() {
        double[] weights = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double off = (LEAST_LOG + i * STEP - BEGINNERS_LOG) / BEGINNERS_SPREAD;
            weights[i] = StrictMath.exp(-off * off / 2);
        }
        return new ErrorRate(normalised(weights));
    }

    public ErrorRate after(Level level, boolean right) {
        double[] chances = CHANCES[level.value() - Level.LOWEST];
        double[] seen = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            seen[i] = weights[i] * (right ? chances[i] : 1 - chances[i]);
        }
        return new ErrorRate(drifted(normalised(seen)));
    }

    /** The chance of a right answer. */
    public double chanceRight(Level level) {
        double[] chances = CHANCES[level.value() - Level.LOWEST];
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += weights[i] * chances[i];
        }
        return Math.min(sum, 1);
    }

    private static double[] drifted(double[] weights) {
        double[] next = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            next[Math.max(i - 1, 0)] += LEARNT * weights[i];
            next[Math.min(i + 1, POINTS - 1)] += UNLEARNT * weights[i];
            next[i] += (1 - LEARNT - UNLEARNT) * weights[i];
        }
        return next;
    }

    private static double[] normalised(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        double[] shares = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            shares[i] = weights[i] / sum;
        }
        return shares;
    }

    private static double[][] chances() {
        double[][] chances = new double[Level.HIGHEST - Level.LOWEST + 1][POINTS];
        for (int level = 0; level < chances.length; level++) {
            double share = Math.min(1, (double) level / (chances.length - 2));
            double exposure = LEAST_EXPOSURE + (1 - LEAST_EXPOSURE) * share;
            for (int i = 0; i < POINTS; i++) {
                double rate = StrictMath.exp(LEAST_LOG + i * STEP);
                chances[level][i] = GUESS + (1 - GUESS - LAPSE) * StrictMath.exp(-rate * exposure);
            }
        }
        return chances;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ErrorRate rate && Arrays.equals(weights, rate.weights);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(weights);
    }
}
