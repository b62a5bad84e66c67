package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.text.Texts;

/**
 * A pulse train as text, for where nothing can blink: a sign for each quarter of a second, {@code #} lit and {@code .}
 * dark. Every flash and gap has at least one sign, so that none is lost.
 */
public final class FlashStrip {
    private static final long SIGN_NANOS = 250_000_000L;
    private static final int LINE_SIGNS = 72;

    /** A gap longer than this is written as its seconds. */
    private static final long LONGEST_DRAWN_NANOS = 10_000_000_000L;

    private FlashStrip() {}

    /** Lines of at most about 72 signs, broken within gaps where that is possible. */
    public static List<String> lines(PulseTrain pulses, Texts texts) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (Interval interval : pulses.intervals()) {
            String text = text(interval, texts);
            if (line.length() > 0 && line.length() + text.length() > LINE_SIGNS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(text);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String text(Interval interval, Texts texts) {
        if (!interval.lit() && interval.lengthNanos() > LONGEST_DRAWN_NANOS) {
            return " (" + texts.of("terminal.dark-for", interval.lengthNanos() / 1_000_000_000L) + ") ";
        }
        long signs = Math.max(1, (interval.lengthNanos() + SIGN_NANOS / 2) / SIGN_NANOS);
        return (interval.lit() ? "#" : ".").repeat((int) signs);
    }
}
