package telltally.decoder.lattice;

/**
 * How lengths scatter: a normal law with a share of outliers of thrice the width, tabled so that it costs a few
 * operations and is the same on every processor.
 */
final class Noise {
    /** Lengths further off than this many standard deviations are taken for impossible. */
    static final double REACH = 9;

    private static final int STEPS = 128;
    private static final double OUTLIERS = 0.01;
    private static final int END = (int) (REACH * STEPS);
    private static final double[] DENSITY = new double[END + 1];
    /** The area under the densities, from each step to the end of their reach. */
    private static final double[] BEYOND = new double[END + 1];

    static {
        for (int i = 0; i <= END; i++) {
            DENSITY[i] = law((double) i / STEPS);
        }
        for (int i = END - 1; i >= 0; i--) {
            BEYOND[i] = BEYOND[i + 1] + (DENSITY[i] + DENSITY[i + 1]) / (2 * STEPS);
        }
    }

    private Noise() {}

    private static double law(double z) {
        return (1 - OUTLIERS) * normal(z) + OUTLIERS * normal(z / 3) / 3;
    }

    private static double normal(double z) {
        return 0.3989422804014327 * StrictMath.exp(-z * z / 2);
    }

    /** Density at z standard deviations from the mean, of a law with standard deviation 1. */
    static double density(double z) {
        double at = Math.abs(z) * STEPS;
        if (!(at < END)) {
            return 0;
        }
        int step = (int) at;
        double part = at - step;
        return DENSITY[step] * (1 - part) + DENSITY[step + 1] * part;
    }

    /** Probability of more than z standard deviations above the mean: the area under {@link #density}. */
    static double beyond(double z) {
        if (!(z > -REACH)) {
            return 1;
        }
        if (z >= REACH) {
            return 0;
        }
        double at = Math.abs(z) * STEPS;
        int next = (int) at + 1;
        double upTo = (next - at) * (density(z) + DENSITY[next]) / (2 * STEPS);
        double tail = BEYOND[next] + upTo;
        return z < 0 ? 2 * BEYOND[0] - tail : tail;
    }
}
