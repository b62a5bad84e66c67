package telltally.simulator.trace;

import java.io.IOException;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/**
 * Edge CSV: a pulse train as RFC 4180 text under the header {@code time_s,level}. The first row has the level at the
 * start, then comes a row per change, and the last row repeats the level at the end. Level 1 is lit.
 */
public final class EdgeCsv {
    private static final String LINE_END = "\r\n";

    private EdgeCsv() {}

    /**
     * Times count from that of the first row, which may be any. Rows that repeat the level change nothing. Lines that
     * begin with {@code #} before the header are comments; a record may end with LF alone.
     *
     * @throws ProblemException if the text is not so; a last row that changes the level is refused too, since how long
     *     that level held was lost
     */
    public static PulseTrain read(TextFile source) throws ProblemException {
        TimedRows rows = new TimedRows(source, "level");
        PulseTrain.Builder train = PulseTrain.builder();
        boolean lit = false;
        boolean changed = false;
        long beforeNanos = 0;
        while (rows.next()) {
            boolean now = level(rows);
            if (rows.rows() > 1 && rows.clean()) {
                train.stay(lit, rows.atNanos() - beforeNanos);
                changed = now != lit;
            }
            lit = now;
            beforeNanos = rows.atNanos();
        }
        if (changed && rows.clean()) {
            rows.valueProblem("changes in the last row; expected a last row that repeats the level at the end");
        }
        rows.finish();
        return train.build();
    }

    public static String text(PulseTrain train) {
        StringBuilder text = new StringBuilder("time_s,level").append(LINE_END);
        boolean lit = train.litAtStart();
        row(text, 0, lit);
        for (int i = 0; i < train.edgeCount(); i++) {
            lit = !lit;
            row(text, train.edgeNanos(i), lit);
        }
        row(text, train.endNanos(), lit);
        return text.toString();
    }

    public static void write(PulseTrain train, Appendable out) throws IOException {
        out.append(text(train));
    }

    private static boolean level(TimedRows rows) {
        String level = rows.value();
        boolean lit = level.equals("1");
        if (!lit && !level.equals("0")) {
            rows.valueProblem("is " + Problem.quoted(level) + "; expected 0 (dark) or 1 (lit)");
        }
        return lit;
    }

    private static void row(StringBuilder text, long atNanos, boolean lit) {
        text.append(Seconds.text(atNanos)).append(lit ? ",1" : ",0").append(LINE_END);
    }
}
