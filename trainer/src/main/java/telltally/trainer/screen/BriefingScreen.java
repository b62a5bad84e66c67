package telltally.trainer.screen;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import telltally.simulator.scenario.Display;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.screen.NoticeScreen.Choice;

/** What the learner is told before a lesson. */
public final class BriefingScreen implements Screen {
    /** What is joined to the self-test output where the dash lamp does not work; a story that needs one has no lamp. */
    private static final Set<Display> ON_THE_OUTPUT = EnumSet.of(Display.SOUNDER, Display.TEST_LIGHT, Display.METER);

    private final Trainer trainer;
    private final Lesson lesson;
    private final ObjectProperty<Display> shownBy;

    BriefingScreen(Trainer trainer, Lesson lesson, Display agreed) {
        this.trainer = trainer;
        this.lesson = lesson;
        this.shownBy = new SimpleObjectProperty<>(begin(lesson.scenario().display(), agreed));
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

    /** How codes are sent, in one line. */
    public String signal() {
        return trainer.texts().of("briefing.signal", lesson.scenario().format().title());
    }

    public List<String> cautions() {
        return lesson.cautions().stream()
                .map(caution -> caution.sentence(trainer.texts()))
                .toList();
    }

    /** Every way of showing by which the flashes can be had, by name. */
    public List<Choice> choices() {
        DisplayNames names = new DisplayNames(trainer.texts());
        boolean atTheOutput = ON_THE_OUTPUT.contains(lesson.scenario().display());
        return Stream.of(Display.values())
                .filter(each -> !atTheOutput || ON_THE_OUTPUT.contains(each))
                .map(each -> new Choice(each, names.of(each), ""))
                .toList();
    }

    /** One of the choices; may be changed here. */
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

    /** A lesson may ask for something else than usual; none may bring back a lamp that the learner turned down. */
    private static Display begin(Display asked, Display agreed) {
        boolean turnedDown = agreed == Display.SOUNDER || agreed == Display.METER;
        boolean alreadyHad = asked == Display.LAMP || (asked == Display.LED && agreed == Display.LAMP_AND_SOUNDER);
        return turnedDown || alreadyHad ? agreed : asked;
    }

    private void openSound() {
        if (Trainer.heard(shownBy.get())) {
            trainer.sound();
        }
    }
}
