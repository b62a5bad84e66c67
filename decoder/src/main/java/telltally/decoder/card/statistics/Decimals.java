package telltally.decoder.card.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: written from whole numbers or exact decimals, so that every Java machine writes the same. */
public final class Decimals {
    private Decimals() {}

    /** A share with so many places, such as {@code 0.9917}; what is not the whole is never rounded to it. */
    public static String share(long part, long all, int places) {
        return scaled(part, all, 1, places);
    }

    /** A share in percent, such as {@code 99.2}; what is not the whole is never rounded to it. */
    public static String percent(long part, long all) {
        return scaled(part, all, 100, 1);
    }

    private static String scaled(long part, long all, int whole, int places) {
        BigDecimal times = BigDecimal.valueOf(part).multiply(BigDecimal.valueOf(whole));
        BigDecimal rounded = times.divide(BigDecimal.valueOf(all), places, RoundingMode.HALF_EVEN);
        boolean overrated = part < all && rounded.compareTo(BigDecimal.valueOf(whole)) == 0;
        return (overrated ? times.divide(BigDecimal.valueOf(all), places, RoundingMode.DOWN) : rounded).toPlainString();
    }

    /** The lower end of an interval, rounded outwards, so that it excludes nothing that the interval holds. */
    public static String down(double value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.FLOOR).toPlainString();
    }

    /** The upper end of an interval, rounded outwards. */
    public static String up(double value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.CEILING).toPlainString();
    }

    public static String fixed(double value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** With a comma for every three digits, such as {@code 16,420}. */
    public static String grouped(long number) {
        StringBuilder text = new StringBuilder(Long.toString(number));
        int first = number < 0 ? 1 : 0;
        for (int at = text.length() - 3; at > first; at -= 3) {
            text.insert(at, ',');
        }
        return text.toString();
    }

    /** A probability of chance, such as {@code 0.013}; {@code below 0.001} where it is smaller still. */
    public static String chance(double p) {
        return p < 0.001 ? "below 0.001" : fixed(p, 3);
    }
}
