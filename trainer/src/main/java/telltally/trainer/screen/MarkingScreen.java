package telltally.trainer.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.scenario.Display;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Slip;

/** What was written, laid under what was sent. */
public final class MarkingScreen implements Screen {
    private final Trainer trainer;
    private final Lesson lesson;
    private final Display shownBy;
    private final Optional<String> notScored;
    private final Marking marking;

    MarkingScreen(Trainer trainer, Lesson lesson, AnswerSheet sheet, Display shownBy, Optional<String> notScored) {
        this.trainer = trainer;
        this.lesson = lesson;
        this.shownBy = shownBy;
        this.notScored = notScored;
        this.marking = lesson.mark(sheet);
    }

    /**
     * One code.
     *
     * @param sent empty where nothing was sent
     * @param written empty where nothing was written
     * @param errors names of the errors
     * @param sentences an explanation for each of them
     * @param meaning what the code that was sent means; empty where nothing is known
     * @param at where it was sent, to be shown again; empty where it never was
     */
    public record Line(
            Segment segment,
            String sent,
            String written,
            List<String> errors,
            List<String> sentences,
            String meaning,
            Optional<SentGroup> at) {
        public boolean right() {
            return errors.isEmpty();
        }

        /** For somebody who hears it. */
        public String spoken() {
            String codes = (sent.isEmpty() ? "Nothing sent" : "Sent " + sent)
                    + (written.isEmpty() ? ", nothing written" : ", written " + written);
            return codes + (right() ? ", right. " : ". " + String.join(" ", sentences) + " ") + meaning;
        }
    }

    @Override
    public String title() {
        return lesson.scenario().title();
    }

    /** How it went, in one line. */
    public String headline() {
        int sent = marking.codesSent();
        if (sent == 0) {
            return marking.allRight() ? "Nothing was sent, and nothing is written: right." : "Nothing was sent.";
        }
        if (marking.allRight()) {
            return sent == 1 ? "Right." : "All " + sent + " codes right.";
        }
        int errors = marking.slips().size();
        return marking.codesRight() + " of " + sent + (sent == 1 ? " code right, " : " codes right, ")
                + (errors == 1 ? "one error." : errors + " errors.");
    }

    /** From 0 to 1. */
    public double shareRight() {
        return marking.shareRight();
    }

    public boolean allRight() {
        return marking.allRight();
    }

    /** Why this run does not count. */
    public Optional<String> notScored() {
        return notScored;
    }

    public List<Segment> segments() {
        return marking.rows().stream().map(Marking.Row::segment).distinct().toList();
    }

    public List<Line> lines(Segment segment) {
        return marking.rows(segment).stream().map(this::line).toList();
    }

    /** The whole lesson again, with a running count. */
    public void replayAll() {
        trainer.replay(this, Optional.empty());
    }

    /** One code again, with a running count; nothing happens for a code that was never sent. */
    public void replay(Line line) {
        line.at().ifPresent(group -> trainer.replay(this, Optional.of(group)));
    }

    /** A fresh sheet for the same lesson; the wait before the first flash is another one. */
    public void playAgain() {
        trainer.playAnew(lesson.scenario(), shownBy);
    }

    public void lessons() {
        trainer.lessons(Optional.of(lesson.scenario()));
    }

    @Override
    public void back() {
        lessons();
    }

    Lesson lesson() {
        return lesson;
    }

    Display shownBy() {
        return shownBy;
    }

    /** A misfiled code is explained where it was written and only hinted at where it is missing. */
    private static String sentence(Marking.Row row, Slip slip) {
        return slip instanceof Slip.WrongSegment misfiled && row.written().isEmpty()
                ? misfiled.hint()
                : slip.sentence();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Line line(Marking.Row row) {
        Optional<SentGroup> at = row.sent().flatMap(code -> lesson.firstSent(row.segment(), code));
        return new Line(
                row.segment(),
                row.sent().orElse(""),
                row.written().orElse(""),
                row.slips().stream().map(slip -> capital(slip.title())).toList(),
                row.slips().stream().map(slip -> sentence(row, slip)).toList(),
                row.sent().flatMap(lesson::meaning).orElse(""),
                at);
    }
}
