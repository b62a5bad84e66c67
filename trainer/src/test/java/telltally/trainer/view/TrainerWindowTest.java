package telltally.trainer.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.SampleLessons;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.SampleLogbook;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.MarkingScreen;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.screen.SampleRecords;
import telltally.trainer.screen.SettingsScreen;
import telltally.trainer.settings.LampSize;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.Theme;

/** The real window, driven by real keys. The first sample lesson sends 34 and 42 as present and 15 as stored. */
class TrainerWindowTest {
    private final List<OpenWindow> opened = new ArrayList<>();

    @BeforeAll
    static void a_toolkit_is_needed() {
        Toolkit.require();
    }

    @AfterEach
    void close() {
        opened.forEach(OpenWindow::close);
    }

    private OpenWindow open(Settings settings) {
        OpenWindow window = new OpenWindow(SampleLessons.shelf(), settings);
        opened.add(window);
        return window;
    }

    private OpenWindow open(double textScale) {
        OpenWindow window = new OpenWindow(SampleLessons.shelf(), textScale);
        opened.add(window);
        return window;
    }

    @Test
    void a_lesson_is_done_from_notice_to_replay_by_the_keyboard_alone() {
        OpenWindow window = open(1);
        assertThat(window.screen()).isInstanceOf(NoticeScreen.class);
        window.goToLessons();
        assertThat(window.screen()).isInstanceOf(LessonsScreen.class);
        window.press(KeyCode.DOWN, KeyCode.UP, KeyCode.SPACE);
        assertThat(window.screen()).isInstanceOf(BriefingScreen.class);
        window.press(KeyCode.ENTER);

        PlayScreen play = window.screen(PlayScreen.class);
        window.pass(20);
        window.type("35 4");
        window.press(KeyCode.BACK_SPACE);
        window.type("42 ");
        window.press(KeyCode.TAB);
        window.type("15");
        window.pass(150);
        assertThat(play.player().ended()).isTrue();
        window.pressWithAlt(KeyCode.M);

        MarkingScreen marking = window.screen(MarkingScreen.class);
        assertThat(marking.headline()).isEqualTo("2 of 3 codes right, one error.");
        assertThat(marking.notScored()).isEmpty();
        assertThat(marking.lines(Segment.PRESENT).get(0).sentences())
                .containsExactly("34: the second digit was 4 flashes; you wrote 5, one too many.");
        window.press(KeyCode.ENTER);
        ReplayScreen replay = window.screen(ReplayScreen.class);
        window.pass(8);
        assertThat(replay.countProperty().get()).isNotEmpty();
        window.press(KeyCode.ESCAPE);
        assertThat(window.screen()).isSameAs(marking);
    }

    @Test
    void enter_on_a_marked_code_replays_that_code() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        window.type("34 ");
        window.pressWithAlt(KeyCode.M);
        focus(window, RowButton.class, 1);
        window.press(KeyCode.ENTER);

        assertThat(window.screen(ReplayScreen.class).title()).isEqualTo("Code 42 again");
    }

    @Test
    void enter_on_the_last_empty_line_leads_to_the_marking() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        window.type("34 ");
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        assertThat(window.screen()).as("the button has the keyboard, and waits").isInstanceOf(PlayScreen.class);
        window.press(KeyCode.ENTER);

        assertThat(window.screen()).isInstanceOf(MarkingScreen.class);
    }

    @Test
    void arrows_change_the_column_and_escape_goes_back() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER, KeyCode.RIGHT);
        window.type("15");
        window.press(KeyCode.LEFT);
        window.type("34");
        PlayScreen play = window.screen(PlayScreen.class);
        assertThat(play.sheet().answers().codes(Segment.PRESENT)).containsExactly("34");
        assertThat(play.sheet().answers().codes(Segment.STORED)).containsExactly("15");

        window.press(KeyCode.ESCAPE);
        assertThat(window.screen()).isInstanceOf(BriefingScreen.class);
        window.press(KeyCode.ESCAPE, KeyCode.ESCAPE, KeyCode.ESCAPE, KeyCode.ESCAPE, KeyCode.ESCAPE);
        assertThat(window.screen()).isInstanceOf(NoticeScreen.class);
    }

    @Test
    void playing_again_leaves_the_keyboard_on_the_sheet() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        window.type("3");
        window.pass(10);
        window.pressWithAlt(KeyCode.P);
        window.type("4");

        PlayScreen play = window.screen(PlayScreen.class);
        assertThat(play.sheet().answers().codes(Segment.PRESENT)).containsExactly("34");
        assertThat(play.player().playback().positionNanos()).isLessThan(1_000_000_000L);
    }

    @Test
    void the_sounder_can_be_chosen_by_arrow_keys_and_a_missing_device_is_told() {
        OpenWindow window = open(1);
        window.press(KeyCode.RIGHT);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        window.pass(3);

        PlayScreen play = window.screen(PlayScreen.class);
        assertThat(play.player().shownBy()).isEqualTo(Display.SOUNDER);
        assertThat(play.remarkProperty().get()).startsWith("No sound:");
        assertThat(found(window, Lamp.class)).isEmpty();
    }

    @Test
    void a_stall_of_the_computer_is_told_on_the_marked_sheet() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        window.pass(1);
        window.stall(20);
        window.pressWithAlt(KeyCode.M);

        assertThat(window.screen(MarkingScreen.class).notScored()).isPresent();
    }

    @Test
    void the_lamp_says_the_same_whether_it_is_lit_or_not() {
        OpenWindow window = open(1);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        Set<String> said = new TreeSet<>();
        Set<Boolean> lit = new TreeSet<>();
        PlayScreen play = window.screen(PlayScreen.class);
        for (int i = 0; i < 20; i++) {
            window.pass(0.45);
            said.add(Toolkit.fx(() -> found(window, Lamp.class).get(0).getAccessibleText()));
            lit.add(play.player().levelProperty().get() > 0.5);
        }

        assertThat(lit).containsExactly(false, true);
        assertThat(said).containsExactly("Signal lamp");
    }

    @ParameterizedTest
    @CsvSource({"100, en, DARK", "200, en, LIGHT", "100, de, LIGHT", "200, de, DARK"})
    void nothing_is_cut_off_and_everything_that_the_keyboard_reaches_can_be_heard(
            int textPercent, String language, Theme theme) {
        OpenWindow window = open(Settings.usual()
                .withLanguage(Optional.of(Locale.forLanguageTag(language)))
                .withTextPercent(textPercent)
                .withTheme(theme));
        List<String> complaints = new ArrayList<>();
        look(window, complaints);
        Toolkit.run(() -> ((NoticeScreen) window.now()).openSettings());
        look(window, complaints);
        window.press(KeyCode.ESCAPE);
        assertThat(window.screen()).isInstanceOf(NoticeScreen.class);
        window.press(KeyCode.ENTER);
        look(window, complaints);
        window.pressWithAlt(KeyCode.G);
        look(window, complaints);
        window.pressWithAlt(KeyCode.L);
        look(window, complaints);
        window.press(KeyCode.ENTER);
        look(window, complaints);
        window.press(KeyCode.ENTER);
        window.pass(8);
        window.type("35 42 1 77 12 ");
        look(window, complaints);
        Toolkit.run(((PlayScreen) window.screen())::mark);
        look(window, complaints);
        window.press(KeyCode.ENTER);
        window.pass(30);
        look(window, complaints);

        assertThat(complaints).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 200})
    void whoever_has_practised_can_read_and_hear_how_it_is_going(int textPercent) throws LogbookException {
        SampleRecords records = new SampleRecords();
        SampleLogbook.practised(records.folder(), records.records().now().get());
        OpenWindow window = new OpenWindow(
                SampleLessons.shelf(),
                OpenWindow.english().withLanguage(Optional.of(Locale.GERMAN)).withTextPercent(textPercent),
                records);
        opened.add(window);
        List<String> complaints = new ArrayList<>();
        window.press(KeyCode.ENTER);
        look(window, complaints);
        window.press(KeyCode.DOWN, KeyCode.ENTER);
        look(window, complaints);
        Toolkit.run(() -> ((HomeScreen) window.now()).progress());
        look(window, complaints);
        window.press(KeyCode.TAB, KeyCode.ENTER);
        look(window, complaints);
        window.press(KeyCode.ESCAPE);
        Toolkit.run(() -> ((HomeScreen) window.now()).open(Skill.COUNT_A_DIGIT));
        look(window, complaints);
        window.press(KeyCode.ENTER);

        assertThat(window.screen()).isInstanceOf(DrillScreen.class);
        assertThat(complaints).isEmpty();
    }

    @Test
    void a_learner_is_enrolled_and_deleted_by_the_keyboard_alone() {
        OpenWindow window = open(1);
        window.press(KeyCode.ENTER);
        window.press(KeyCode.E, KeyCode.V, KeyCode.E, KeyCode.ENTER);
        assertThat(window.screen(HomeScreen.class).title()).isEqualToIgnoringCase("eve");
        window.press(KeyCode.ESCAPE);
        window.pressWithAlt(KeyCode.D);
        Toolkit.settle();
        window.press(KeyCode.ENTER, KeyCode.TAB, KeyCode.ENTER);

        assertThat(window.screen(LearnersScreen.class).state().learners()).isEmpty();
    }

    /** Where these find room, the others do: the shipped lessons with the most to say, in large text. */
    @Test
    void arrow_keys_go_along_the_path_as_it_lies() {
        OpenWindow window = open(1);
        window.press(KeyCode.ENTER);
        window.pressWithAlt(KeyCode.G);
        focus(window, RowButton.class, 0);
        List<String> names = new ArrayList<>();
        for (KeyCode key : List.of(KeyCode.RIGHT, KeyCode.DOWN, KeyCode.LEFT, KeyCode.UP, KeyCode.END, KeyCode.HOME)) {
            window.press(key);
            names.add(Toolkit.fx(() -> window.scene().getFocusOwner().getAccessibleText()));
        }

        assertThat(names)
                .extracting(name -> name.replaceAll("[^0-9]", ""))
                .containsExactly("2", "5", "4", "1", "23", "1");
    }

    @Test
    void the_wordiest_lessons_find_room_on_their_pages_in_large_text() {
        List<Scenario> wordiest = wordiest();
        OpenWindow window = new OpenWindow(
                new LessonShelf(wordiest.stream()
                        .<LessonShelf.Entry>map(each -> new LessonShelf.Entry.Ready(each.id() + ".json", each))
                        .toList()),
                2);
        opened.add(window);
        List<String> complaints = new ArrayList<>();
        for (int lesson = 0; lesson < wordiest.size(); lesson++) {
            int now = lesson;
            complaints.addAll(Toolkit.fx(() -> walkedThrough(window, now)));
        }

        assertThat(complaints).isEmpty();
    }

    private static List<Scenario> wordiest() {
        List<Scenario> all = LessonShelf.of(Optional.empty()).scenarios();
        List<ToIntFunction<Scenario>> sizes = List.of(
                each -> String.join("", each.briefing()).length(),
                each -> each.title().length(),
                each -> each.task().length(),
                each -> Lesson.play(each, 7).segments().size());
        return sizes.stream()
                .map(size -> all.stream().max(Comparator.comparingInt(size)).orElseThrow())
                .distinct()
                .toList();
    }

    private static List<String> walkedThrough(OpenWindow window, int lesson) {
        List<String> found = new ArrayList<>();
        if (window.now() instanceof NoticeScreen notice) {
            notice.goOn();
            ((LearnersScreen) window.now()).goOnAsGuest();
            ((HomeScreen) window.now()).lessons();
        }
        ((LessonsScreen) window.now()).open(lesson);
        found.addAll(Looks.cutOff(window.scene()));
        ((BriefingScreen) window.now()).start();
        found.addAll(Looks.cutOff(window.scene()));
        ((PlayScreen) window.now()).mark();
        found.addAll(Looks.cutOff(window.scene()));
        window.now().back();
        return found;
    }

    @Test
    void settings_are_chosen_by_arrow_keys_and_hold_at_once() {
        OpenWindow window = open(1);
        window.pressWithAlt(KeyCode.S);
        SettingsScreen settings = window.screen(SettingsScreen.class);
        window.press(KeyCode.DOWN);
        assertThat(settings.title()).as("the third language of the row").isEqualTo("Einstellungen");
        assertThat(window.screen()).as("the page is drawn anew").isSameAs(settings);
        window.press(KeyCode.TAB, KeyCode.RIGHT);
        assertThat(settings.settings().theme()).isEqualTo(Theme.LIGHT);
        assertThat(Toolkit.fx(() -> window.scene().getRoot().getStyle()))
                .contains(Colours.of(Theme.LIGHT).style());
        window.press(KeyCode.TAB, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.RIGHT);
        assertThat(settings.settings().textPercent()).isEqualTo(200);
        window.press(KeyCode.ESCAPE);

        assertThat(window.screen(NoticeScreen.class).title()).isEqualTo("Vor dem ersten Blinken");
    }

    @Test
    void each_display_is_shown_as_what_it_is() {
        Map<Display, Class<? extends Face>> faces = Map.of(
                Display.LAMP, Lamp.class,
                Display.LAMP_AND_SOUNDER, Lamp.class,
                Display.LED, Diode.class,
                Display.TEST_LIGHT, TestLight.class,
                Display.METER, Meter.class);
        OpenWindow window = open(1);
        window.goToLessons();
        faces.forEach((display, face) -> {
            Toolkit.run(() -> {
                ((LessonsScreen) window.now()).open(0);
                ((BriefingScreen) window.now()).shownByProperty().set(display);
                ((BriefingScreen) window.now()).start();
            });
            window.pass(1);
            assertThat(Toolkit.fx(() -> found(window, Face.class)))
                    .as(display.key())
                    .hasExactlyElementsOfTypes(face);
            window.press(KeyCode.ESCAPE, KeyCode.ESCAPE);
        });
    }

    @Test
    void large_text_keeps_the_lamp_as_small_as_it_has_to_be() {
        OpenWindow window = open(2);
        window.goToLessons();
        window.press(KeyCode.ENTER, KeyCode.ENTER);

        Bounds lamp = Toolkit.fx(() -> {
            Node node = found(window, Lamp.class).get(0);
            return node.localToScene(node.getLayoutBounds());
        });
        assertThat(lamp.getWidth()).isEqualTo(LampSize.LARGE.widthPx());
        assertThat(lamp.getMinX()).isPositive();
        assertThat(lamp.getMaxY()).as("in sight without scrolling").isLessThan(700);
    }

    @Test
    void where_the_keyboard_is_can_be_seen_on_every_page() {
        OpenWindow window = open(1);
        ringsAreSeen(window);
        Toolkit.run(window.screen(NoticeScreen.class)::goOn);
        ringsAreSeen(window);
        window.pressWithAlt(KeyCode.G);
        ringsAreSeen(window);
        window.pressWithAlt(KeyCode.L);
        ringsAreSeen(window);
        focus(window, RowButton.class, 0);
        window.press(KeyCode.ENTER);
        ringsAreSeen(window);
        Toolkit.run(window.screen(BriefingScreen.class)::start);
        ringsAreSeen(window);
        Toolkit.run(window.screen(PlayScreen.class)::mark);
        ringsAreSeen(window);
    }

    /** Each step of the Tab key must change what is seen around the node that it leads to. */
    private static void ringsAreSeen(OpenWindow window) {
        WritableImage before = picture(window);
        for (int step = 0; step < 6; step++) {
            window.press(KeyCode.TAB);
            WritableImage after = picture(window);
            Bounds where = Toolkit.fx(() -> {
                Node owner = Objects.requireNonNull(window.scene().getFocusOwner());
                return owner.localToScene(owner.getLayoutBounds());
            });
            assertThat(changed(before, after, where)).as(where.toString()).isGreaterThan(50);
            before = after;
        }
    }

    private static int changed(WritableImage before, WritableImage after, Bounds where) {
        PixelReader one = before.getPixelReader();
        PixelReader other = after.getPixelReader();
        int changed = 0;
        for (int x = (int) Math.max(0, where.getMinX() - 6);
                x < Math.min(before.getWidth(), where.getMaxX() + 6);
                x++) {
            for (int y = (int) Math.max(0, where.getMinY() - 6);
                    y < Math.min(before.getHeight(), where.getMaxY() + 6);
                    y++) {
                changed += one.getArgb(x, y) == other.getArgb(x, y) ? 0 : 1;
            }
        }
        return changed;
    }

    private static WritableImage picture(OpenWindow window) {
        return Toolkit.fx(() -> window.scene().snapshot(null));
    }

    private static void look(OpenWindow window, List<String> complaints) {
        Toolkit.settle();
        Scene scene = window.scene();
        String page = window.screen().getClass().getSimpleName();
        Toolkit.fx(() -> Looks.cutOff(scene)).forEach(text -> complaints.add(page + " " + text));
        Toolkit.fx(() -> Looks.mute(scene)).forEach(text -> complaints.add(page + " mute: " + text));
        Toolkit.fx(() -> Looks.sharedLetters(scene)).forEach(text -> complaints.add(page + " Alt and " + text));
    }

    private static <T extends Node> List<T> found(OpenWindow window, Class<T> type) {
        return Looks.find(window.scene(), type);
    }

    private static void focus(OpenWindow window, Class<? extends Node> type, int index) {
        Toolkit.run(() -> found(window, type).get(index).requestFocus());
        Toolkit.settle();
    }
}
