package telltally.trainer.screen;

import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import telltally.decoder.reading.Decoder;
import telltally.simulator.format.SentGroup;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.playback.Sound;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.SettingsStore;
import telltally.trainer.text.Texts;

/** The way from screen to screen. */
public final class Trainer implements AutoCloseable {
    /**
     * What lies outside the program: the time, chance, sound, and what the learner has chosen before.
     *
     * @param tapReader says what codes were tapped
     */
    public record Surroundings(
            LongSupplier clockNanos,
            LongSupplier seeds,
            Supplier<Sound> sound,
            SettingsStore settings,
            Decoder tapReader) {}

    private final Supplier<LessonShelf> shelf;
    private final Surroundings surroundings;
    private final Optional<String> startLesson;
    private final ReadOnlyObjectWrapper<Screen> screen;
    private final ReadOnlyObjectWrapper<Settings> settings;
    private Texts texts;
    private Display agreed;
    private @Nullable Sound sound;

    /**
     * @param shelf waits for the lessons where they are not read yet; asked from the notice on
     * @param startLesson the id of the lesson to begin with, once the notice has been read
     */
    public Trainer(Supplier<LessonShelf> shelf, Surroundings surroundings, Optional<String> startLesson) {
        this.shelf = shelf;
        this.surroundings = surroundings;
        this.settings = new ReadOnlyObjectWrapper<>(surroundings.settings().load());
        this.texts = texts(settings());
        this.agreed = settings().shownBy();
        this.startLesson = startLesson;
        this.screen = new ReadOnlyObjectWrapper<>(new NoticeScreen(this, agreed));
    }

    public ReadOnlyObjectProperty<Screen> screenProperty() {
        return screen.getReadOnlyProperty();
    }

    public Screen screen() {
        return screen.get();
    }

    /** What screens and pages say. */
    public Texts texts() {
        return texts;
    }

    /** What the learner has chosen; follows every change. */
    public ReadOnlyObjectProperty<Settings> settingsProperty() {
        return settings.getReadOnlyProperty();
    }

    public Settings settings() {
        return settings.get();
    }

    /** Passes a frame on to the screen that is shown. */
    public void advanceTo(long nowNanos) {
        screen().advanceTo(nowNanos);
    }

    @Override
    public void close() {
        screen().leave();
        if (sound != null) {
            sound.close();
        }
    }

    void agree(Display display) {
        agreed = display;
        Optional<Scenario> first = startLesson.flatMap(id -> shelf.get().find(id));
        if (first.isPresent()) {
            briefing(first.get());
        } else {
            show(new LessonsScreen(this, shelf.get(), startLesson.map(id -> texts.of("lessons.none-called", id)), 0));
        }
    }

    void notice() {
        show(new NoticeScreen(this, agreed));
    }

    void lessons(Optional<Scenario> last) {
        int index = last.map(scenario -> Math.max(0, LessonsScreen.indexOf(shelf.get(), scenario)))
                .orElse(0);
        show(new LessonsScreen(this, shelf.get(), Optional.empty(), index));
    }

    void briefing(Scenario scenario) {
        show(new BriefingScreen(this, Lesson.play(scenario, surroundings.seeds().getAsLong()), agreed));
    }

    /** Another go at the same scenario, with a seed of its own. */
    void playAnew(Scenario scenario, Display shownBy) {
        play(Lesson.play(scenario, surroundings.seeds().getAsLong()), shownBy);
    }

    void play(Lesson lesson, Display shownBy) {
        show(new PlayScreen(this, lesson, shownBy));
    }

    void mark(Lesson lesson, AnswerSheet sheet, Display shownBy, Optional<String> notScored) {
        show(new MarkingScreen(this, lesson, sheet, shownBy, notScored));
    }

    void replay(MarkingScreen from, Optional<SentGroup> only) {
        show(new ReplayScreen(this, from, only));
    }

    /** Opens the settings; from there the way leads back to the present screen. */
    void openSettings() {
        show(new SettingsScreen(this, screen()));
    }

    /** Takes new settings up and keeps them. */
    void change(Settings chosen) {
        surroundings.settings().save(chosen);
        agreed = chosen.shownBy() == settings().shownBy() ? agreed : chosen.shownBy();
        texts = texts(chosen);
        settings.set(chosen);
    }

    private static Texts texts(Settings chosen) {
        return Texts.in(chosen.language().orElse(Locale.getDefault()));
    }

    void show(Screen next) {
        screen().leave();
        screen.set(next);
    }

    LongSupplier clockNanos() {
        return surroundings.clockNanos();
    }

    /** Opened when it is first asked for, which is well before the first beep. */
    Sound sound() {
        Sound open = sound;
        if (open == null) {
            open = surroundings.sound().get();
            sound = open;
        }
        return open;
    }

    Decoder tapReader() {
        return surroundings.tapReader();
    }

    static boolean heard(Display display) {
        return display == Display.SOUNDER || display == Display.LAMP_AND_SOUNDER;
    }

    static boolean seen(Display display) {
        return display != Display.SOUNDER;
    }
}
