package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Slip;
import telltally.trainer.lesson.Words;
import telltally.trainer.text.Texts;

/** A marking as lines of text: what was written under what was sent, and every error in words. */
public final class MarkedSheet {
    private static final String NOTHING = "-";

    private MarkedSheet() {}

    public static List<String> lines(Texts texts, Lesson lesson, Marking marking) {
        List<String> lines = new ArrayList<>();
        for (Segment segment : Segment.values()) {
            List<Marking.Row> rows = marking.rows(segment);
            if (!rows.isEmpty()) {
                segment(lines, texts, new Words(texts).title(segment), rows);
            }
        }
        for (Slip slip : marking.slips()) {
            lines.add("  " + slip.title(texts) + ": " + slip.sentence(texts));
        }
        lines.add(
                marking.allRight()
                        ? texts.of("terminal.all-right")
                        : texts.of("terminal.some-right", marking.codesRight(), marking.codesSent()));
        marking.rows().stream()
                .flatMap(row -> row.sent().stream())
                .distinct()
                .forEach(code -> lesson.meaning(code).ifPresent(meaning -> lines.add("  " + code + "  " + meaning)));
        return lines;
    }

    private static void segment(List<String> lines, Texts texts, String title, List<Marking.Row> rows) {
        String above = texts.of("terminal.sent");
        String below = texts.of("terminal.written");
        int before = Math.max(above.length(), below.length()) + 2;
        StringBuilder sent = new StringBuilder("  ");
        StringBuilder written = new StringBuilder("  ");
        StringBuilder marks = new StringBuilder("  ");
        pad(sent, above, before);
        pad(written, below, before);
        pad(marks, "", before);
        for (Marking.Row row : rows) {
            String code = row.sent().orElse(NOTHING);
            String entry = row.written().orElse(NOTHING);
            int width = Math.max(code.length(), entry.length()) + 2;
            pad(sent, code, width);
            pad(written, entry, width);
            pad(marks, row.right() ? "" : "^", width);
        }
        lines.add(title);
        lines.add(sent.toString().stripTrailing());
        lines.add(written.toString().stripTrailing());
        if (!marks.toString().isBlank()) {
            lines.add(marks.toString().stripTrailing());
        }
    }

    private static void pad(StringBuilder line, String text, int width) {
        line.append(text).append(" ".repeat(width - text.length()));
    }
}
