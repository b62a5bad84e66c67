package telltally.trainer.logbook;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import telltally.trainer.drill.Credit;

/**
 * Answers as comma-separated values (RFC 4180): a line for each drill and each lesson answered. A cell that a
 * spreadsheet would take for a formula, or that begins with an apostrophe, gets an apostrophe in front.
 */
public final class CsvExport {
    private static final List<String> COLUMNS = List.of(
            "id",
            "learner",
            "answered_at",
            "kind",
            "name",
            "level",
            "item",
            "right",
            "scored",
            "codes_sent",
            "codes_right",
            "sent",
            "expected",
            "given",
            "credits",
            "answer_s",
            "lamp_s",
            "lag_s",
            "format",
            "display",
            "seed",
            "generator",
            "program");

    private final Appendable out;

    public CsvExport(Appendable out) {
        this.out = out;
    }

    public void header() throws IOException {
        line(COLUMNS);
    }

    public void drill(Learner learner, DrillEntry drill) throws IOException {
        Circumstances with = drill.circumstances();
        line(List.of(
                drill.id().toString(),
                learner.name(),
                EntryTable.text(drill.answeredAt()),
                "drill",
                EntryTable.key(drill.skill()),
                Integer.toString(drill.level().value()),
                drill.item(),
                yes(drill.right()),
                yes(drill.scored()),
                "",
                "",
                drill.sent(),
                drill.expected(),
                drill.given(),
                drill.credits().stream().map(CsvExport::credit).collect(Collectors.joining("; ")),
                seconds(drill.timing().answerNanos()),
                seconds(drill.timing().lampNanos()),
                seconds(drill.timing().lagNanos()),
                with.format(),
                with.display(),
                Long.toString(with.seed()),
                Integer.toString(with.generator()),
                with.program()));
    }

    public void lesson(Learner learner, LessonEntry lesson) throws IOException {
        Circumstances with = lesson.circumstances();
        line(List.of(
                lesson.id().toString(),
                learner.name(),
                EntryTable.text(lesson.answeredAt()),
                "lesson",
                lesson.lesson(),
                "",
                "",
                yes(lesson.right()),
                yes(lesson.scored()),
                Integer.toString(lesson.codesSent()),
                Integer.toString(lesson.codesRight()),
                "",
                lesson.sentText(),
                lesson.writtenText(),
                "",
                "",
                "",
                "",
                with.format(),
                with.display(),
                Long.toString(with.seed()),
                Integer.toString(with.generator()),
                with.program()));
    }

    private void line(List<String> cells) throws IOException {
        out.append(cells.stream().map(CsvExport::cell).collect(Collectors.joining(",", "", "\r\n")));
    }

    /** {@code count-a-digit 4 9 right}; the item is left out where there is none. */
    private static String credit(Credit credit) {
        return EntryTable.key(credit.skill()) + " " + credit.level().value()
                + (credit.item().isEmpty() ? "" : " " + credit.item()) + (credit.right() ? " right" : " wrong");
    }

    private static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t\r'".indexOf(text.charAt(0)) >= 0 && !number(text) ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(letter -> ",\"\r\n".indexOf(letter) >= 0);
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    private static boolean number(String text) {
        return text.matches("-[0-9]+(\\.[0-9]+)?");
    }

    private static String yes(boolean so) {
        return so ? "yes" : "no";
    }

    private static String seconds(long nanos) {
        long millis = Math.round(nanos / 1e6);
        return millis / 1000 + "." + String.format(Locale.ROOT, "%03d", millis % 1000);
    }
}
