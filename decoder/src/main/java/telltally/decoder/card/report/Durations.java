package telltally.decoder.card.report;

import java.math.BigDecimal;
import java.math.MathContext;

/** Lengths of time, to two figures. */
final class Durations {
    private static final long MICROSECOND = 1_000;
    private static final long MILLISECOND = 1_000_000;
    private static final long SECOND = 1_000_000_000;

    private Durations() {}

    /** Such as {@code 86 us}, {@code 1.2 ms}. */
    static String text(long nanos) {
        if (nanos < MILLISECOND) {
            return figures(nanos, MICROSECOND) + " us";
        }
        return nanos < SECOND ? figures(nanos, MILLISECOND) + " ms" : figures(nanos, SECOND) + " s";
    }

    private static String figures(long nanos, long unit) {
        return BigDecimal.valueOf(nanos)
                .divide(BigDecimal.valueOf(unit), new MathContext(2))
                .toPlainString();
    }
}
