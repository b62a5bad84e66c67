package telltally.decoder.lattice;

/**
 * What stands between sender and observer, as far as lengths go.
 *
 * @param scale how much longer than nominal everything is
 * @param biasSeconds by how much flashes are longer, and gaps shorter, than the scale makes them
 * @param jitter standard deviation of each length relative to it
 * @param blurSeconds standard deviation of each observed length that does not grow with it
 * @param missed probability that a flash is not seen
 * @param ghost probability that a gap holds a flash that was not sent
 */
record Channel(double scale, double biasSeconds, double jitter, double blurSeconds, double missed, double ghost) {
    static Channel firstGuess(double scale) {
        return new Channel(scale, 0, 0.07, 0.045, 0.003, 0.003);
    }

    /** Whether another channel would hardly weigh lengths otherwise. */
    boolean nearly(Channel other) {
        return Math.abs(scale / other.scale - 1) < 0.1 * Math.max(jitter, 0.02)
                && Math.abs(biasSeconds - other.biasSeconds) < 0.2 * blurSeconds
                && near(jitter, other.jitter, 1.7)
                && near(blurSeconds, other.blurSeconds, 2)
                && near(missed, other.missed, 2)
                && near(ghost, other.ghost, 2);
    }

    private static boolean near(double one, double other, double times) {
        return one < times * other && other < times * one;
    }

    /** Variance of an observed length made up of sent lengths whose squares add up to this. */
    double variance(double squares) {
        return jitter * jitter * scale * scale * squares + blurSeconds * blurSeconds;
    }

    /** Standard deviation of the same. */
    double deviation(double squares) {
        return Math.sqrt(variance(squares));
    }

    /** The probabilities that none, one, two, and up to so many flashes in a row are not seen. */
    double[] missedInARow(int most) {
        double[] powers = new double[most + 1];
        powers[0] = 1;
        for (int i = 1; i <= most; i++) {
            powers[i] = powers[i - 1] * missed;
        }
        return powers;
    }
}
