package telltally.trainer.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.screen.DrillDoor;
import telltally.trainer.screen.DrillInput;
import telltally.trainer.screen.DrillMarkedScreen;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.Theme;

/** Drills in the real window, by keys. */
class DrillWindowTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();
    private static final Set<Skill> ANSWERED_TOO =
            EnumSet.of(Skill.END_OF_A_CODE, Skill.SEPARATOR_PAUSE, Skill.SEGMENTS_APART, Skill.GHOST_FLASH);
    private static final LessonShelf NO_LESSONS = new LessonShelf(List.of());

    @BeforeAll
    static void toolkit() {
        Toolkit.require();
    }

    @Test
    void a_code_is_typed_and_marked_and_the_next_drill_asked_for_by_the_keyboard_alone() {
        Drill drill = MAKER.make(Skill.HOLD_TWO_DIGITS, new Level(4), 3);
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            DrillDoor door = window.open(drill, Display.LAMP);
            window.pass(drill.lampNanos() / 1e9 + 0.1);
            window.type(drill.truth().codes().get(Segment.CODES).get(0) + " ");
            window.press(KeyCode.ENTER, KeyCode.ENTER);
            assertThat(door.kept)
                    .singleElement()
                    .matches(answered -> answered.marked().right());
            window.screen(DrillMarkedScreen.class);
            window.press(KeyCode.ENTER);
            assertThat(door.ways).containsExactly("next");
        }
    }

    @Test
    void an_option_is_chosen_by_its_number_and_given_by_enter() {
        Drill drill = MAKER.make(Skill.SEPARATOR_PAUSE, new Level(4), 3);
        int right = ((Answer.Chosen) drill.perfectAnswer()).option();
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            DrillDoor door = window.open(drill, Display.LAMP);
            window.type(Integer.toString(right + 1));
            window.press(KeyCode.ENTER);
            assertThat(door.kept)
                    .singleElement()
                    .matches(answered -> answered.marked().right());
        }
    }

    @Test
    void a_number_is_typed_and_given_by_enter() {
        Drill drill = LongStream.range(0, 100)
                .mapToObj(seed -> MAKER.make(Skill.END_OF_A_CODE, new Level(1), seed))
                .filter(each -> each.perfectAnswer() instanceof Answer.Counted)
                .findFirst()
                .orElseThrow();
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            DrillDoor door = window.open(drill, Display.LAMP);
            window.type("9");
            window.press(KeyCode.BACK_SPACE);
            window.type(Integer.toString(((Answer.Counted) drill.perfectAnswer()).number()));
            window.press(KeyCode.ENTER);
            assertThat(door.kept)
                    .singleElement()
                    .matches(answered -> answered.marked().right());
        }
    }

    @Test
    void the_space_bar_is_tapped_along_and_read_as_the_code() {
        Drill drill = MAKER.make(Skill.HOLD_TWO_DIGITS, new Level(4), 3);
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            DrillDoor door = window.open(drill, Display.LAMP);
            Toolkit.run(() -> Looks.find(window.scene(), RadioButton.class).stream()
                    .filter(button -> button.getUserData() == Means.TAPPED)
                    .forEach(RadioButton::fire));
            Toolkit.settle();
            double nowS = 0;
            for (Interval flash :
                    drill.pulses().intervals().stream().filter(Interval::lit).toList()) {
                window.pass(flash.startNanos() / 1e9 + 0.08 - nowS);
                window.hold(KeyCode.SPACE, true);
                window.pass(flash.lengthNanos() / 1e9);
                window.hold(KeyCode.SPACE, false);
                nowS = flash.endNanos() / 1e9 + 0.08;
            }
            window.pass(drill.lampNanos() / 1e9);
            window.pressWithAlt(KeyCode.A);
            assertThat(door.kept)
                    .singleElement()
                    .matches(answered -> answered.marked().right());
        }
    }

    @Test
    void whoever_paused_goes_on_tapping_with_the_keyboard_where_it_was() {
        Drill drill = MAKER.make(Skill.HOLD_TWO_DIGITS, new Level(4), 3);
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            window.open(drill, Display.LAMP);
            Toolkit.run(() -> ((DrillScreen) window.now()).meansProperty().set(Means.TAPPED));
            window.pass(1);
            window.pressWithAlt(KeyCode.P);
            window.pressWithAlt(KeyCode.G);
            window.hold(KeyCode.SPACE, true);
            assertThat(window.screen(DrillScreen.class).tappingProperty().get()).isTrue();
            window.hold(KeyCode.SPACE, false);
        }
    }

    @Test
    void nothing_is_cut_off_or_mute_on_any_drill_in_either_language_with_text_of_any_size() {
        List<String> complaints = new ArrayList<>();
        Settings usual = Settings.usual();
        Settings large = usual.withLanguage(Optional.of(Locale.GERMAN))
                .withTheme(Theme.LIGHT)
                .withTextPercent(200);
        for (Settings settings : List.of(usual, large)) {
            try (OpenWindow window = new OpenWindow(NO_LESSONS, settings)) {
                for (Skill skill : Skill.values()) {
                    Drill drill = MAKER.make(skill, new Level(8), 2);
                    window.open(drill, Display.LAMP);
                    look(window, skill, complaints);
                    if (ANSWERED_TOO.contains(skill)) {
                        Toolkit.run(() -> ((DrillScreen) window.now()).answer());
                        look(window, skill, complaints);
                    }
                }
                Toolkit.run(() -> ((DrillScreen) window.now()).answer());
                Toolkit.run(() -> ((DrillMarkedScreen) window.now()).replayAll());
                window.screen(ReplayScreen.class);
                look(window, Skill.CODE_MEANING, complaints);
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void the_advice_before_any_skill_finds_room_in_either_language_with_text_of_any_size() {
        List<String> complaints = new ArrayList<>();
        Settings large =
                Settings.usual().withLanguage(Optional.of(Locale.GERMAN)).withTextPercent(200);
        for (Settings settings : List.of(OpenWindow.english(), large)) {
            try (OpenWindow window = new OpenWindow(NO_LESSONS, settings)) {
                window.goHomeAsGuest();
                for (Skill skill : Skill.values()) {
                    window.openAdvice(skill);
                    look(window, skill, complaints);
                    window.press(KeyCode.ESCAPE);
                }
                window.openAdvice(Skill.BULB_CHECK);
                window.press(KeyCode.ENTER);
                window.screen(DrillScreen.class);
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void where_the_keyboard_is_after_a_drill_was_turned_to_is_where_its_answer_goes() {
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            for (Skill skill : List.of(Skill.COUNT_A_DIGIT, Skill.SEPARATOR, Skill.SEGMENTS_APART)) {
                window.open(MAKER.make(skill, new Level(5), 4), Display.LAMP);
                Node owner = Toolkit.fx(() -> window.scene().getFocusOwner());
                assertThat(owner).as(skill.key()).isInstanceOfAny(ColumnField.class, RadioButton.class);
            }
        }
    }

    @Test
    void a_page_that_is_outgrown_begins_to_scroll_and_leaves_the_keyboard_where_it_is() {
        try (OpenWindow window = new OpenWindow(NO_LESSONS, 1)) {
            window.open(MAKER.make(Skill.WRITE_AT_ONCE, new Level(5), 4), Display.LAMP);
            assertThat(Toolkit.fx(() -> Looks.find(window.scene(), ScrollPane.class)))
                    .isEmpty();
            window.type("11 12 13 14 15 21 22 23 24 25 31 32 33 34 35 ");
            assertThat(Toolkit.fx(() -> Looks.find(window.scene(), ScrollPane.class)))
                    .hasSize(1);
            window.type("4");
            DrillInput.Sheet sheet =
                    (DrillInput.Sheet) window.screen(DrillScreen.class).answerInput();
            assertThat(sheet.sheet().columns().get(0).typingProperty().get()).isEqualTo("4");
        }
    }

    private static void look(OpenWindow window, Skill skill, List<String> complaints) {
        Toolkit.settle();
        Scene scene = window.scene();
        String page = skill + " " + Toolkit.fx(() -> window.now().getClass().getSimpleName());
        Toolkit.fx(() -> Looks.cutOff(scene)).forEach(text -> complaints.add(page + " " + text));
        Toolkit.fx(() -> Looks.mute(scene)).forEach(text -> complaints.add(page + " mute: " + text));
        Toolkit.fx(() -> Looks.sharedLetters(scene)).forEach(text -> complaints.add(page + " Alt and " + text));
    }
}
