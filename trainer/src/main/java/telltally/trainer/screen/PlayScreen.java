package telltally.trainer.screen;

import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import telltally.simulator.scenario.Display;
import telltally.trainer.lesson.Lesson;

/** The lamp plays and the learner writes. */
public final class PlayScreen implements Screen {
    private final Trainer trainer;
    private final Lesson lesson;
    private final Display shownBy;
    private final Player player;
    private final WorkSheet sheet;
    private final ReadOnlyStringWrapper caption = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
    private Optional<String> notScored = Optional.empty();

    PlayScreen(Trainer trainer, Lesson lesson, Display shownBy) {
        this.trainer = trainer;
        this.lesson = lesson;
        this.shownBy = shownBy;
        this.player =
                new Player(trainer, lesson.pulses(), 0, lesson.pulses().endNanos(), shownBy, Instruments.of(lesson));
        this.sheet = new WorkSheet(trainer.texts(), lesson.scenario().format(), lesson.segments());
    }

    @Override
    public String title() {
        return lesson.scenario().title();
    }

    public String task() {
        return lesson.scenario().task();
    }

    public Player player() {
        return player;
    }

    public WorkSheet sheet() {
        return sheet;
    }

    /** Where the run stands, without giving anything away. */
    public ReadOnlyStringProperty captionProperty() {
        return caption.getReadOnlyProperty();
    }

    /** Something about lamp or sound that is not as expected; empty most of the time. */
    public ReadOnlyStringProperty remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    @Override
    public void advanceTo(long nowNanos) {
        player.advanceTo(nowNanos);
        remark.set(player.remark());
        caption.set(trainer.texts()
                .of(player.ended() ? "play.ended" : player.playback().anyShown() ? "play.running" : "play.waiting"));
        player.notScored().ifPresent(reason -> notScored = Optional.of(reason));
    }

    /** From the beginning; what was written stays. */
    public void playAgain() {
        player.restart();
        notScored = Optional.empty();
    }

    public void mark() {
        trainer.mark(lesson, sheet.answers(), shownBy, notScored);
    }

    @Override
    public void back() {
        trainer.briefing(lesson.scenario());
    }

    @Override
    public void leave() {
        player.stop();
    }
}
