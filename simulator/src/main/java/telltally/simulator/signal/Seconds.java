package telltally.simulator.signal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Seconds as files write them, nanoseconds as the program counts them. Written from integers, so that the text is the
 * same on every JDK.
 */
public final class Seconds {
    /** The longest time that Telltally reads: about 31 years. */
    public static final long MAX_NANOS = 1_000_000_000_000_000_000L;

    private Seconds() {}

    /** Decimal seconds without trailing zeros, at least one digit after the point: {@code 0.0}, {@code 12.5}. */
    public static String text(long nanos) {
        StringBuilder text = new StringBuilder(24);
        if (nanos < 0) {
            text.append('-');
        }
        // Long.MIN_VALUE has no positive twin; remainders keep it right.
        text.append(Math.abs(nanos / 1_000_000_000L)).append('.');
        String fraction = Long.toString(Math.abs(nanos % 1_000_000_000L));
        String padded = "0".repeat(9 - fraction.length()) + fraction;
        int end = 9;
        while (end > 1 && padded.charAt(end - 1) == '0') {
            end--;
        }
        return text.append(padded, 0, end).toString();
    }

    /**
     * Reads a decimal number of seconds, rounded half up to a nanosecond.
     *
     * @throws NumberFormatException if the text is no decimal number, or its size is beyond {@link #MAX_NANOS}
     */
    public static long parseNanos(String text) {
        return nanos(new BigDecimal(text));
    }

    /**
     * Rounds seconds half up to a nanosecond.
     *
     * @throws NumberFormatException if the size is beyond {@link #MAX_NANOS}
     */
    public static long nanos(BigDecimal seconds) {
        // A look at the exponent first: 1e999999999 must not be multiplied out.
        if (seconds.signum() != 0 && (long) seconds.precision() - seconds.scale() > 10) {
            throw new NumberFormatException("more than " + MAX_NANOS / 1_000_000_000L + " s");
        }
        if (seconds.signum() != 0 && (long) seconds.precision() - seconds.scale() < -10) {
            return 0;
        }
        long nanos = seconds.movePointRight(9).setScale(0, RoundingMode.HALF_UP).longValueExact();
        if (nanos > MAX_NANOS || nanos < -MAX_NANOS) {
            throw new NumberFormatException("more than " + MAX_NANOS / 1_000_000_000L + " s");
        }
        return nanos;
    }
}
