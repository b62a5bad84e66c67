package telltally.simulator.trace;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.signal.Seconds;

/** Sample CSV: values at rising instants as RFC 4180 text under the header {@code time_s,value}, in any unit. */
public final class SampleCsv {
    private static final String LINE_END = "\r\n";

    private SampleCsv() {}

    /**
     * Times stay as the file has them, negative ones too. Lines that begin with {@code #} before the header are
     * comments; a record may end with LF alone.
     *
     * @throws ProblemException if the text is not so, or has fewer than two rows
     */
    public static SampledSignal read(TextFile source) throws ProblemException {
        TimedRows rows = new TimedRows(source, "value");
        long[] atNanos = new long[1024];
        double[] values = new double[1024];
        int size = 0;
        while (rows.next()) {
            double value = value(rows);
            if (rows.clean()) {
                if (size == values.length) {
                    atNanos = Arrays.copyOf(atNanos, 2 * size);
                    values = Arrays.copyOf(values, 2 * size);
                }
                atNanos[size] = rows.atNanos();
                values[size++] = value;
            }
        }
        rows.finish();
        return SampledSignal.of(Arrays.copyOf(atNanos, size), Arrays.copyOf(values, size));
    }

    /**
     * @param decimals how many digits each value has after the point; rounded half up, sizes alike
     * @throws IllegalArgumentException if decimals is negative
     */
    public static String text(SampledSignal signal, int decimals) {
        StringBuilder text = new StringBuilder("time_s,value").append(LINE_END);
        for (int i = 0; i < signal.size(); i++) {
            text.append(Seconds.text(signal.atNanos(i)))
                    .append(',')
                    .append(decimal(signal.value(i), decimals))
                    .append(LINE_END);
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException if decimals is negative */
    public static void write(SampledSignal signal, int decimals, Appendable out) throws IOException {
        out.append(text(signal, decimals));
    }

    /** From the exact value of the bits: the text of a double differs between JDKs, this does not. */
    static String decimal(double value, int decimals) {
        if (decimals < 0) {
            throw new IllegalArgumentException("a value cannot have " + decimals + " digits after the point");
        }
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    private static double value(TimedRows rows) {
        BigDecimal number = TimedRows.decimal(rows.value());
        double value = number == null ? Double.NaN : number.doubleValue();
        if (!Double.isFinite(value)) {
            rows.valueProblem("is " + Problem.quoted(rows.value()) + "; expected a decimal number");
            return 0;
        }
        return value;
    }
}
