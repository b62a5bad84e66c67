package telltally.decoder.card.statistics;

/**
 * Where the true share lies with 95 % confidence, as Wilson's score interval has it: Wilson 1927, Journal of the American
 * Statistical Association 22:209-212; formula as in the NIST/SEMATECH handbook, 7.2.4.1. Unlike the interval of the
 * normal law it does not shrink to nothing where all are right.
 *
 * @param low 0 to 1
 * @param high 0 to 1
 */
public record WilsonInterval(double low, double high) {
    /** 97.5 % of a normal law lie below this many standard deviations. */
    private static final double Z = 1.959963984540054;

    /**
     * @param right from 0 to all of them
     * @throws IllegalArgumentException if that is not so; of nothing, the share may be anything from 0 to 1
     */
    public static WilsonInterval of(long right, long all) {
        if (right < 0 || right > all) {
            throw new IllegalArgumentException(right + " of " + all);
        }
        if (all == 0) {
            return new WilsonInterval(0, 1);
        }
        double share = (double) right / all;
        double middle = share + Z * Z / (2 * all);
        double reach = Z * Math.sqrt(share * (1 - share) / all + Z * Z / (4.0 * all * all));
        double scale = 1 + Z * Z / all;
        double low = right == 0 ? 0 : Math.max(0, (middle - reach) / scale);
        double high = right == all ? 1 : Math.min(1, (middle + reach) / scale);
        return new WilsonInterval(low, high);
    }
}
