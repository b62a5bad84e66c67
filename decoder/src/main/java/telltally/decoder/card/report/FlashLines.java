package telltally.decoder.card.report;

import java.util.Locale;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** A pulse train in letters, ten seconds a line, ten letters a second. */
final class FlashLines {
    private static final long CELL_NANOS = 100_000_000;
    private static final int CELLS = 100;

    /** Three quarters of an hour; nobody reads on beyond that. */
    private static final int MOST_LINES = 270;

    private FlashLines() {}

    /** {@code #} is lit, {@code .} dark, {@code +} both within a tenth of a second. */
    static String text(PulseTrain train) {
        StringBuilder text = new StringBuilder();
        long lines = (train.endNanos() + CELLS * CELL_NANOS - 1) / (CELLS * CELL_NANOS);
        long dark = 0;
        for (int line = 0; line < Math.min(MOST_LINES, lines); line++) {
            String letters = letters(train, line * (CELLS * CELL_NANOS));
            dark = letters.matches("[.]+") ? dark + 1 : 0;
            if (dark < 2) {
                text.append(String.format(Locale.ROOT, "  %5d s  ", line * CELLS / 10))
                        .append(letters)
                        .append('\n');
            } else if (dark == 2) {
                text.append("           and dark on\n");
            }
        }
        if (lines > MOST_LINES) {
            text.append("  and so on, to ")
                    .append(Seconds.text(train.endNanos()))
                    .append(" s\n");
        }
        return text.toString();
    }

    private static String letters(PulseTrain train, long fromNanos) {
        StringBuilder letters = new StringBuilder();
        long end = Math.min(train.endNanos(), fromNanos + CELLS * CELL_NANOS);
        for (long at = fromNanos; at < end; at += CELL_NANOS) {
            letters.append(letter(train, at, Math.min(train.endNanos(), at + CELL_NANOS)));
        }
        return letters.toString();
    }

    private static char letter(PulseTrain train, long fromNanos, long toNanos) {
        long lit = train.litNanosBetween(fromNanos, toNanos);
        long all = toNanos - fromNanos;
        // An edge within a tenth of a second is no news; a whole flash or gap within one is.
        int edges = 0;
        for (long at = train.nextEdgeAfter(fromNanos); at < toNanos && edges < 2; at = train.nextEdgeAfter(at)) {
            edges++;
        }
        if (edges > 1) {
            return '+';
        }
        return lit * 2 >= all ? '#' : '.';
    }
}
