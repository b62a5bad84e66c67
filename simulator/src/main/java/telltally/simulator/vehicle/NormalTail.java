package telltally.simulator.vehicle;

/** The share of a normal distribution that lies beyond so many standard deviations. */
final class NormalTail {
    /** Where the series has lost as much to cancellation as the fraction to slow convergence. */
    private static final double SERIES_UP_TO = 3;

    private static final int FRACTION_DEPTH = 80;

    private NormalTail() {}

    /** Q(z) = P(Z > z). Relative error below 1e-10 up to z = 30. */
    static double beyond(double z) {
        if (z < 0) {
            return 1 - beyond(-z);
        }
        double density = StrictMath.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        return z < SERIES_UP_TO ? 0.5 - density * series(z) : density / fraction(z);
    }

    /** z + z^3/3 + z^5/(3*5) + ... (Abramowitz and Stegun, "Handbook of Mathematical Functions", 26.2.11). */
    private static double series(double z) {
        double term = z;
        double sum = z;
        for (int odd = 3; term > 1e-17 * sum; odd += 2) {
            term *= z * z / odd;
            sum += term;
        }
        return sum;
    }

    /** z + 1/(z + 2/(z + 3/(z + ...))) (the same, 26.2.14). */
    private static double fraction(double z) {
        double tail = z;
        for (int depth = FRACTION_DEPTH; depth > 0; depth--) {
            tail = z + depth / tail;
        }
        return tail;
    }
}
