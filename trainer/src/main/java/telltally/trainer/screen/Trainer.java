package telltally.trainer.screen;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import telltally.decoder.reading.Decoder;
import telltally.simulator.chance.Chance;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.AnswerSheet;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.Marking;
import telltally.trainer.logbook.Circumstances;
import telltally.trainer.logbook.LessonEntry;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.mastery.Choice;
import telltally.trainer.playback.Sound;
import telltally.trainer.settings.ByEar;
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
            Decoder tapReader,
            Records records) {}

    private final Surroundings surroundings;
    private final Optional<String> startLesson;
    private final ReadOnlyObjectWrapper<Screen> screen;
    private final ReadOnlyObjectWrapper<Settings> settings;
    private Texts texts;
    private Library library;
    private Display agreed;
    private @Nullable Practice practice;
    private @Nullable Sound sound;

    /**
     * @param shelf waits for the lessons where they are not read yet; asked from the notice on
     * @param startLesson the id of the lesson to begin with, once the notice has been read
     */
    public Trainer(Supplier<LessonShelf> shelf, Surroundings surroundings, Optional<String> startLesson) {
        this.surroundings = surroundings;
        this.settings = new ReadOnlyObjectWrapper<>(surroundings.settings().load());
        this.texts = texts(settings());
        this.library = new Library(shelf, texts.language());
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
        records().keeper().close();
    }

    void agree(Display display) {
        agreed = display;
        Optional<Scenario> first = startLesson.flatMap(id -> library.lessons().find(id));
        if (first.isPresent()) {
            briefing(first.get());
        } else if (startLesson.isPresent()) {
            show(new LessonsScreen(this, startLesson.map(id -> texts.of("lessons.none-called", id)), 0));
        } else {
            learners();
        }
    }

    /** Who is practising? */
    void learners() {
        LearnersScreen next = new LearnersScreen(this);
        show(next);
        next.look();
    }

    /** A guest, until somebody begins. */
    private Practice practice() {
        Practice known = practice;
        if (known == null) {
            known = Practice.ofGuest(records().keeper(), library.facts());
            practice = known;
        }
        return known;
    }

    /** Somebody begins to practise. */
    void begin(Practice somebody) {
        practice = somebody;
        home();
    }

    void home() {
        show(new HomeScreen(this, practice(), Optional.empty()));
    }

    void drill(DrillCourse course, Choice choice) {
        String reason = choice.why().leavesThePath() ? choice.said().in(texts()) : "";
        show(new DrillScreen(this, course.ask(choice), agreed, course, reason));
    }

    void notice() {
        show(new NoticeScreen(this, agreed));
    }

    void lessons(Optional<Scenario> last) {
        int index = last.map(scenario -> Math.max(0, LessonsScreen.indexOf(library.lessons(), scenario)))
                .orElse(0);
        show(new LessonsScreen(this, Optional.empty(), index));
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
        Optional<String> notKept = keep(lesson, lesson.mark(sheet), shownBy, notScored.isEmpty());
        Optional<String> remark =
                Stream.concat(notScored.stream(), notKept.stream()).reduce((one, other) -> one + " " + other);
        show(new MarkingScreen(this, lesson, sheet, shownBy, remark));
    }

    /** Writes a lesson down before anything of its marks is seen. */
    private Optional<String> keep(Lesson lesson, Marking marking, Display shownBy, boolean scored) {
        Circumstances with = new Circumstances(
                lesson.recording().seed(),
                lesson.recording().generatorVersion(),
                records().program(),
                lesson.scenario().format().id(),
                shownBy.key());
        LessonEntry entry = LessonEntry.of(
                UUID.randomUUID(), records().now().get(), lesson.scenario().id(), with, marking, scored);
        return practice().keep(entry).map(reason -> texts.of("learners.not-kept", told(reason)));
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
        library = library.in(texts.language());
        settings.set(chosen);
    }

    private static Texts texts(Settings chosen) {
        return Texts.in(chosen.language().orElse(Locale.getDefault()));
    }

    void show(Screen next) {
        screen().leave();
        screen.set(next);
    }

    Records records() {
        return surroundings.records();
    }

    /** How flashes are perceived unless something else is chosen. */
    Display agreed() {
        return agreed;
    }

    long nextSeed() {
        return surroundings.seeds().getAsLong();
    }

    /** What comes next for somebody; nothing that they have left out, or that could not be heard here. */
    Choice proposal(Practice practice) {
        Chance chance = Chance.of(nextSeed()).stream("tutor");
        return practice.tutor().leavingOut(leftOut()).next(records().now().get(), chance);
    }

    /** What is not proposed. */
    Set<Skill> leftOut() {
        boolean unheard = sound != null && sound.trouble().isPresent();
        return unheard || settings().byEar() == ByEar.LEFT_OUT ? Set.of(Skill.BY_EAR) : Set.of();
    }

    /** What there is to practise. */
    Library library() {
        return library;
    }

    /** What a skill is called. */
    String name(Skill skill) {
        return texts.of("drill.skill-" + skill.key());
    }

    String levelTold(Level level) {
        return level.full() ? texts.of("drill.full-level") : texts.of("drill.level", level.value());
    }

    /** Why the logbook cannot be used. */
    String told(LogbookException reason) {
        return texts.of("learners.reason-" + LearnersScreen.key(reason.reason().name()), reason.file());
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
