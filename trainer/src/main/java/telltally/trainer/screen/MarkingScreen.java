package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.scenario.Display;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.Marking;
import telltally.trainer.lesson.Slip;
import telltally.trainer.lesson.Words;
import telltally.trainer.text.Texts;

/** What was written, laid under what was sent. */
public final class MarkingScreen implements Screen {
    private final Trainer trainer;
    private final Lesson lesson;
    private final Display shownBy;
    private final Optional<String> notScored;
    private final Marking marking;
    private final Texts texts;

    MarkingScreen(Trainer trainer, Lesson lesson, AnswerSheet sheet, Display shownBy, Optional<String> notScored) {
        this.trainer = trainer;
        this.lesson = lesson;
        this.shownBy = shownBy;
        this.notScored = notScored;
        this.marking = lesson.mark(sheet);
        this.texts = trainer.texts();
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
    }

    /** A line for somebody who hears it. */
    public String spoken(Line line) {
        String sent = line.sent().isEmpty()
                ? texts.of("marking.spoken-not-sent")
                : texts.of("marking.spoken-sent", line.sent());
        String both = line.written().isEmpty()
                ? texts.of("marking.spoken-not-written", sent)
                : texts.of("marking.spoken-written", sent, line.written());
        return line.right()
                ? texts.of("marking.spoken-right", both, line.meaning())
                : texts.of("marking.spoken-wrong", both, String.join(" ", line.sentences()), line.meaning());
    }

    /** What stands over the lines of a segment. */
    public String heading(Segment segment) {
        return new Words(texts).heading(segment);
    }

    @Override
    public String title() {
        return lesson.scenario().title();
    }

    /** How it went, in one line. */
    public String headline() {
        int sent = marking.codesSent();
        if (sent == 0) {
            return texts.of(marking.allRight() ? "marking.nothing-right" : "marking.nothing-sent");
        }
        if (marking.allRight()) {
            return texts.of("marking.all-right", sent);
        }
        return texts.of(
                "marking.some-right",
                marking.codesRight(),
                sent,
                marking.slips().size());
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
        replay(Optional.empty());
    }

    /** One code again, with a running count; nothing happens for a code that was never sent. */
    public void replay(Line line) {
        line.at().ifPresent(group -> replay(Optional.of(group)));
    }

    private void replay(Optional<SentGroup> only) {
        trainer.show(new ReplayScreen(trainer, this, Showing.of(lesson, shownBy), only));
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

    /** A misfiled code is explained where it was written and only hinted at where it is missing. */
    private String sentence(Marking.Row row, Slip slip) {
        return slip instanceof Slip.WrongSegment misfiled && row.written().isEmpty()
                ? misfiled.hint(texts)
                : slip.sentence(texts);
    }

    private String capital(String text) {
        return text.substring(0, 1).toUpperCase(texts.language()) + text.substring(1);
    }

    private Line line(Marking.Row row) {
        Optional<SentGroup> at = row.sent().flatMap(code -> lesson.firstSent(row.segment(), code));
        return new Line(
                row.segment(),
                row.sent().orElse(""),
                row.written().orElse(""),
                row.slips().stream().map(slip -> capital(slip.title(texts))).toList(),
                row.slips().stream().map(slip -> sentence(row, slip)).toList(),
                row.sent().flatMap(lesson::meaning).orElse(""),
                at);
    }
}
