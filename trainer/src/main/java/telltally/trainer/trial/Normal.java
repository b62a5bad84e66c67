package telltally.trainer.trial;

/** The standard normal distribution. */
final class Normal {
    private static final double ROOT_TWO_PI = 2.5066282746310002;
    private static final double FAR = 8;

    private Normal() {}

    /** By its Taylor series (Marsaglia 2004, "Evaluating the normal distribution", Journal of Statistical Software 11). */
    static double below(double x) {
        if (Math.abs(x) > FAR) {
            return x < 0 ? 0 : 1;
        }
        double sum = x;
        double term = x;
        for (int odd = 3; Math.abs(term) > 1e-17; odd += 2) {
            term *= x * x / odd;
            sum += term;
        }
        return 0.5 + sum * StrictMath.exp(-x * x / 2) / ROOT_TWO_PI;
    }

    /** Below which value so much of the distribution lies. */
    static double quantile(double chance) {
        double low = -FAR;
        double high = FAR;
        for (int halving = 0; halving < 60; halving++) {
            double middle = (low + high) / 2;
            if (below(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
