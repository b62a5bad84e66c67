package telltally.decoder.timeline;

import java.math.BigDecimal;
import java.math.RoundingMode;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * A timeline as SVG 1.1: rows of twenty seconds, a bar for each flash, its number within its group below it, the length
 * of each longer gap between the bars, digits and probability above each group. A doubtful group has a dashed frame and
 * a question mark, a warning a red mark with its text; colour is never the only sign.
 */
public final class TimelineSvg {
    private static final long SECOND = 1_000_000_000L;
    private static final long ROW_NANOS = 20 * SECOND;
    private static final int WIDTH = 1200;
    private static final int MARGIN = 40;
    private static final int ROW_HEIGHT = 110;
    private static final int BAR_TOP = 46;
    private static final int BAR_HEIGHT = 26;

    /** Rows beyond this would make a drawing that no program opens with pleasure: a little over three hours. */
    private static final int MOST_ROWS = 600;

    private static final long LABELLED_GAP_NANOS = 300_000_000L;
    private static final double DOUBTFUL = 0.9;

    private final PulseTrain train;
    private final Reading reading;
    private final StringBuilder svg = new StringBuilder();
    private final int rows;

    private TimelineSvg(PulseTrain train, Reading reading) {
        this.train = train;
        this.reading = reading;
        this.rows = (int) Math.min(MOST_ROWS, (train.endNanos() + ROW_NANOS - 1) / ROW_NANOS);
    }

    /** @param source where the train came from, as a title */
    public static String text(PulseTrain train, Reading reading, String source) {
        return new TimelineSvg(train, reading).drawn(source);
    }

    private String drawn(String source) {
        int height = MARGIN + rows * ROW_HEIGHT + MARGIN;
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(WIDTH)
                .append("\" height=\"")
                .append(height)
                .append("\" font-family=\"sans-serif\" font-size=\"12\">\n")
                .append("<rect width=\"100%\" height=\"100%\" fill=\"#fbfaf6\"/>\n");
        words(
                MARGIN,
                22,
                "#222222",
                "start",
                source + (train.endNanos() > rows * ROW_NANOS ? " (the first part)" : ""));
        for (int row = 0; row < rows; row++) {
            line(row);
        }
        int flashes = 0;
        FlashCount count = new FlashCount(reading.groups());
        for (Interval interval : train.intervals()) {
            if (interval.startNanos() >= rows * ROW_NANOS) {
                break;
            }
            if (interval.lit()) {
                flash(interval, ++flashes, count.next(interval));
            } else {
                gap(interval);
            }
        }
        reading.groups().forEach(this::group);
        reading.warnings().forEach(this::warning);
        return svg.append("</svg>\n").toString();
    }

    private void line(int row) {
        int y = y(row) + BAR_TOP + BAR_HEIGHT;
        svg.append("<path d=\"M")
                .append(MARGIN)
                .append(' ')
                .append(y)
                .append("H")
                .append(WIDTH - MARGIN);
        svg.append("\" stroke=\"#8a8a80\"/>\n");
        words(MARGIN - 4, y, "#55554e", "end", row * (ROW_NANOS / SECOND) + " s");
    }

    /** A flash may go on in the next row. */
    private void flash(Interval flash, int number, int inGroup) {
        for (int row = row(flash.startNanos()); row <= row(flash.endNanos() - 1) && row < rows; row++) {
            double from = x(Math.max(flash.startNanos(), row * ROW_NANOS), row);
            double to = x(Math.min(flash.endNanos(), (row + 1) * ROW_NANOS), row);
            svg.append("<rect x=\"")
                    .append(decimal(from))
                    .append("\" y=\"")
                    .append(y(row) + BAR_TOP)
                    .append("\" width=\"")
                    .append(decimal(Math.max(1, to - from)))
                    .append("\" height=\"")
                    .append(BAR_HEIGHT)
                    .append("\" fill=\"#e0930f\"><title>flash ")
                    .append(number)
                    .append(": ")
                    .append(seconds(flash.startNanos()))
                    .append(" s, lit ")
                    .append(seconds(flash.lengthNanos()))
                    .append(" s</title></rect>\n");
        }
        numbered(flash, inGroup);
    }

    private void numbered(Interval flash, int inGroup) {
        long middle = (flash.startNanos() + flash.endNanos()) / 2;
        if (inGroup > 0 && row(middle) < rows) {
            words(
                    x(middle, row(middle)),
                    y(row(middle)) + BAR_TOP + BAR_HEIGHT + 14,
                    "#55554e",
                    "middle",
                    Integer.toString(inGroup));
        }
    }

    private void gap(Interval gap) {
        long middle = (gap.startNanos() + gap.endNanos()) / 2;
        if (gap.lengthNanos() >= LABELLED_GAP_NANOS && row(middle) < rows) {
            words(
                    x(middle, row(middle)),
                    y(row(middle)) + BAR_TOP + BAR_HEIGHT - 6,
                    "#55554e",
                    "middle",
                    seconds(gap.lengthNanos()));
        }
    }

    private void group(Group group) {
        int row = row(group.startNanos());
        if (row >= rows) {
            return;
        }
        double from = x(group.startNanos(), row) - 4;
        double to = x(Math.min(group.endNanos(), (row + 1) * ROW_NANOS), row) + 4;
        boolean doubtful = group.probability() < DOUBTFUL;
        svg.append("<rect x=\"")
                .append(decimal(from))
                .append("\" y=\"")
                .append(y(row) + 22)
                .append("\" width=\"")
                .append(decimal(Math.max(8, to - from)))
                .append("\" height=\"")
                .append(BAR_TOP + BAR_HEIGHT)
                .append("\" fill=\"none\" stroke=\"")
                .append(doubtful ? "#a3240f\" stroke-dasharray=\"4 3" : "#5a7a8c")
                .append("\"/>\n");
        String digits =
                group.digits().isEmpty() ? group.kind().key() : group.kind().key() + " " + group.digits();
        words(
                from + 4,
                y(row) + 37,
                doubtful ? "#a3240f" : "#222222",
                "start",
                digits
                        + (doubtful ? "? " : " ")
                        + BigDecimal.valueOf(group.probability())
                                .setScale(2, RoundingMode.DOWN)
                                .toPlainString());
    }

    private void warning(Warning warning) {
        int row = row(warning.atNanos());
        if (row < rows) {
            double x = x(warning.atNanos(), row);
            svg.append("<path d=\"M").append(decimal(x)).append(' ').append(y(row) + BAR_TOP - 2);
            svg.append("v32\" stroke=\"#a3240f\" stroke-width=\"2\"/>\n");
            words(x + 4, y(row) + ROW_HEIGHT - 4, "#a3240f", x > WIDTH / 2.0 ? "end" : "start", "! " + warning.text());
        }
    }

    private void words(double x, int y, String colour, String anchor, String text) {
        svg.append("<text x=\"")
                .append(decimal(x))
                .append("\" y=\"")
                .append(y)
                .append("\" fill=\"")
                .append(colour)
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\">")
                .append(escaped(text))
                .append("</text>\n");
    }

    private static int row(long nanos) {
        return (int) Math.min(Integer.MAX_VALUE, nanos / ROW_NANOS);
    }

    private static int y(int row) {
        return MARGIN + row * ROW_HEIGHT;
    }

    private static double x(long nanos, int row) {
        return MARGIN + (nanos - row * ROW_NANOS) * (double) (WIDTH - 2 * MARGIN) / ROW_NANOS;
    }

    private static String seconds(long nanos) {
        return BigDecimal.valueOf(nanos, 9)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String decimal(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** Text as XML takes it; control characters, which it does not take at all, become blanks. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                default -> escaped.append(letter < ' ' || letter == '\uFFFE' || letter == '\uFFFF' ? ' ' : letter);
            }
        }
        return escaped.toString();
    }
}
