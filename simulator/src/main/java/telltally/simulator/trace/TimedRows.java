package telltally.simulator.trace;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.signal.Seconds;

/**
 * The rows of a CSV file with two columns, of which the first is {@code time_s}. Checks the header, the count of fields
 * and that times rise; what the second column may hold is for the caller to check.
 */
final class TimedRows {
    private static final String TIME = "time_s";
    /** A longer text is no sensible number, and long ones are slow to convert. */
    private static final int LONGEST_NUMBER = 60;

    private final CsvRecords records;
    private final CappedProblems problems;
    private final String valueName;
    private boolean headerIsRow;
    private boolean ended;
    private int rows;
    private long atNanos;

    TimedRows(TextFile source, String valueName) {
        this.records = new CsvRecords(source.text());
        this.problems = new CappedProblems(source.name());
        this.valueName = valueName;
        readHeader();
    }

    /** Moves on to the next row of two fields; others are told of and passed over. */
    boolean next() {
        while (!ended && (headerIsRow || records.next())) {
            headerIsRow = false;
            if (records.unclosed()) {
                tellUnclosed();
            } else if (records.count() == 2) {
                readTime();
                rows++;
                return true;
            } else {
                tellCount();
            }
        }
        return false;
    }

    /** The row's time as the file has it, not shifted; of no use once there was a problem. */
    long atNanos() {
        return atNanos;
    }

    /** The row's second field. */
    String value() {
        return records.field(1);
    }

    /** How many rows of two fields there were so far, this one with them. */
    int rows() {
        return rows;
    }

    /** Whether nothing was wrong so far. */
    boolean clean() {
        return !problems.any();
    }

    /** Tells of this row's second field. */
    void valueProblem(String text) {
        problems.add(records.place(1), valueName, text);
    }

    /** @throws ProblemException with everything that was wrong, fewer than two rows included */
    void finish() throws ProblemException {
        if (clean() && rows == 0) {
            problems.add(records.end(), "", "has no rows; expected at least one at the start and one at the end");
        } else if (clean() && rows == 1) {
            problems.add(records.place(0), "", "is the only row; expected another one at the end");
        }
        problems.throwIfAny();
    }

    /** A decimal number, or null where the text is none. */
    static @Nullable BigDecimal decimal(String text) {
        // Looked at first, since an exception for each row of a large file would take half a minute.
        if (text.length() > LONGEST_NUMBER || !text.chars().allMatch(TimedRows::mayBeInNumber)) {
            return null;
        }
        try {
            return new BigDecimal(text);
        } catch (NumberFormatException e) {
            return null;
        }
    }

    private static boolean mayBeInNumber(int letter) {
        return (letter >= '0' && letter <= '9') || ".-+eE".indexOf(letter) >= 0;
    }

    private void readHeader() {
        String expected = "expected the header " + TIME + "," + valueName;
        records.skipComments();
        if (!records.next()) {
            problems.add("is empty; " + expected);
            ended = true;
            return;
        }
        String first = records.field(0);
        if (records.count() == 2 && first.equals(TIME) && records.field(1).equals(valueName)) {
            return;
        }
        StringBuilder found = new StringBuilder(first);
        for (int i = 1; i < records.count(); i++) {
            found.append(',').append(records.field(i));
        }
        problems.add(records.place(0), "", "is " + Problem.quoted(found.toString()) + "; " + expected);
        // Without a header the rows are looked at all the same; with other columns every one of them would be wrong.
        headerIsRow = decimal(first) != null;
        ended = records.count() != 2 || records.unclosed();
    }

    private void readTime() {
        String text = records.field(0);
        BigDecimal seconds = decimal(text);
        if (seconds == null) {
            timeProblem(text, "a decimal number of seconds");
            return;
        }
        long nanos;
        try {
            nanos = Seconds.nanos(seconds);
        } catch (NumberFormatException e) {
            timeProblem(
                    text,
                    "seconds from -" + Seconds.text(Seconds.MAX_NANOS) + " to " + Seconds.text(Seconds.MAX_NANOS));
            return;
        }
        if (rows > 0 && nanos <= atNanos) {
            timeProblem(text, "more than " + Seconds.text(atNanos) + ", the time of the row before");
        }
        atNanos = nanos;
    }

    private void timeProblem(String found, String expected) {
        problems.add(records.place(0), TIME, "is " + Problem.quoted(found) + "; expected " + expected);
    }

    private void tellCount() {
        String expected = "expected " + TIME + "," + valueName;
        if (records.count() < 2) {
            problems.add(records.end(), valueName, "is missing; " + expected);
        } else {
            problems.add(records.place(2), "", "the row has " + records.count() + " fields; " + expected);
        }
    }

    private void tellUnclosed() {
        int last = records.count() - 1;
        String field = last == 0 ? TIME : last == 1 ? valueName : "";
        problems.add(records.place(last), field, "opens a quote that is never closed; expected another quote");
        ended = true;
    }
}
