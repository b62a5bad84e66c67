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
    private static final double[] DENSITY = new double[(int) (REACH * STEPS) + 2];
    private static final double[] BEYOND = new double[(int) (2 * REACH * STEPS) + 2];

    static {
        for (int i = 0; i < DENSITY.length; i++) {
            DENSITY[i] = law((double) i / STEPS);
        }
        for (int i = BEYOND.length - 2; i >= 0; i--) {
            double z = (double) i / STEPS - REACH;
            BEYOND[i] = BEYOND[i + 1] + (law(z) + law(z + 1.0 / STEPS)) / (2 * STEPS);
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
        if (!(at < REACH * STEPS)) {
            return 0;
        }
        int step = (int) at;
        double part = at - step;
        return DENSITY[step] * (1 - part) + DENSITY[step + 1] * part;
    }

    /** Probability of more than z standard deviations above the mean. */
    static double beyond(double z) {
        if (!(z > -REACH)) {
            return 1;
        }
        if (z >= REACH) {
            return 0;
        }
        double at = (z + REACH) * STEPS;
        int step = (int) at;
        double part = at - step;
        return BEYOND[step] * (1 - part) + BEYOND[step + 1] * part;
    }
}
