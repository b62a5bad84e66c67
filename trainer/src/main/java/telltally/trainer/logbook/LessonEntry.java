package telltally.trainer.logbook;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Slip;

/**
 * One lesson answered and marked.
 *
 * @param lesson the scenario's id
 * @param codesSent how many codes were sent
 * @param codesRight how many of them are written, right and in their place
 * @param lines what was written, laid under what was sent
 */
public record LessonEntry(
        UUID id,
        Instant answeredAt,
        String lesson,
        Circumstances circumstances,
        int codesSent,
        int codesRight,
        boolean right,
        boolean scored,
        List<Line> lines)
        implements Entry {
    public LessonEntry {
        lines = List.copyOf(lines);
    }

    /**
     * One code.
     *
     * @param sent empty where nothing was sent
     * @param written empty where nothing was written
     * @param errors their names, such as {@code miscounted-digit}, with blanks between; empty where it is right
     */
    public record Line(Segment segment, String sent, String written, String errors) {
        static Line of(Marking.Row row) {
            return new Line(
                    row.segment(),
                    row.sent().orElse(""),
                    row.written().orElse(""),
                    row.slips().stream().map(LessonEntry::name).collect(Collectors.joining(" ")));
        }

        private String text(Function<Line, String> which) {
            String code = which.apply(this);
            return code.isEmpty() ? "" : segment.key() + ":" + code;
        }
    }

    /** A lesson as it was marked. */
    public static LessonEntry of(
            UUID id, Instant answeredAt, String lesson, Circumstances with, Marking marking, boolean scored) {
        return new LessonEntry(
                id,
                answeredAt,
                lesson,
                with,
                marking.codesSent(),
                marking.codesRight(),
                marking.allRight(),
                scored,
                marking.rows().stream().map(Line::of).toList());
    }

    /** The codes that were sent: {@code present:34 stored:15}. */
    public String sentText() {
        return text(Line::sent);
    }

    /** The codes that were written, likewise. */
    public String writtenText() {
        return text(Line::written);
    }

    private String text(Function<Line, String> which) {
        return lines.stream()
                .map(line -> line.text(which))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** The name that the file keeps; what a learner is told may be worded otherwise. */
    private static String name(Slip slip) {
        return slip.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }
}
