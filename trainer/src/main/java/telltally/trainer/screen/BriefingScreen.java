package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.scenario.Display;
import telltally.trainer.lesson.Lesson;

/** What the learner is told before a lesson. */
public final class BriefingScreen implements Screen {
    private final Trainer trainer;
    private final Lesson lesson;
    private final ObjectProperty<Display> shownBy;

    BriefingScreen(Trainer trainer, Lesson lesson, Display agreed) {
        this.trainer = trainer;
        this.lesson = lesson;
        // A lesson may ask for the sounder; no lesson may bring back a lamp that the learner turned down.
        Display asked = standsIn(lesson.scenario().display())
                ? Display.LAMP
                : lesson.scenario().display();
        this.shownBy = new SimpleObjectProperty<>(agreed == Display.LAMP ? asked : agreed);
        openSound();
        shownBy.addListener((property, before, after) -> openSound());
    }

    @Override
    public String title() {
        return lesson.scenario().title();
    }

    public List<String> paragraphs() {
        return lesson.scenario().briefing();
    }

    public String task() {
        return lesson.scenario().task();
    }

    /** How codes are sent and shown, in one line. */
    public String signal() {
        String key = switch (lesson.scenario().display()) {
            case METER -> "briefing.signal-meter";
            case TEST_LIGHT -> "briefing.signal-test-light";
            default -> "briefing.signal";
        };
        return trainer.texts().of(key, lesson.scenario().format().title());
    }

    public List<String> cautions() {
        return lesson.cautions().stream()
                .map(caution -> caution.sentence(trainer.texts()))
                .toList();
    }

    /** Lamp, sounder or both; may be changed here. */
    public ObjectProperty<Display> shownByProperty() {
        return shownBy;
    }

    public void start() {
        trainer.play(lesson, shownBy.get());
    }

    @Override
    public void back() {
        trainer.lessons(Optional.of(lesson.scenario()));
    }

    /** There is one lamp on this bench; it blinks where a test light would and where a needle would sweep. */
    private static boolean standsIn(Display display) {
        return display == Display.TEST_LIGHT || display == Display.METER;
    }

    private void openSound() {
        if (Trainer.heard(shownBy.get())) {
            trainer.sound();
        }
    }
}
