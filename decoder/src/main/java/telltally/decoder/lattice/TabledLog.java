package telltally.decoder.lattice;

/** The natural logarithm to six places, tabled so that it costs a few operations and is the same on every processor. */
final class TabledLog {
    private static final int BITS = 11;
    private static final int STEPS = 1 << BITS;
    private static final int MANTISSA_BITS = 52;
    private static final double LN2 = 0.6931471805599453;
    private static final double[] LOG = new double[STEPS + 1];

    static {
        for (int i = 0; i <= STEPS; i++) {
            LOG[i] = StrictMath.log(1 + (double) i / STEPS);
        }
    }

    private TabledLog() {}

    /** @param value greater than 0, and no less than the least normal number */
    static double of(double value) {
        long bits = Double.doubleToRawLongBits(value);
        int exponent = (int) (bits >>> MANTISSA_BITS) - Double.MAX_EXPONENT;
        long mantissa = bits & ((1L << MANTISSA_BITS) - 1);
        int step = (int) (mantissa >>> (MANTISSA_BITS - BITS));
        double part = (mantissa & ((1L << (MANTISSA_BITS - BITS)) - 1)) * 0x1p-41;
        return exponent * LN2 + LOG[step] + (LOG[step + 1] - LOG[step]) * part;
    }
}
