package telltally.trainer.view;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import telltally.simulator.scenario.Display;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.logbook.LogbookException;
import telltally.trainer.logbook.SampleLogbook;
import telltally.trainer.screen.BriefingScreen;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.screen.PlayScreen;
import telltally.trainer.screen.ReplayScreen;
import telltally.trainer.screen.SampleRecords;
import telltally.trainer.settings.Ground;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.Theme;

/**
 * Drives the real window through its screens by the keyboard and writes a picture of each, at 1280 by 800 pixels.
 * The first argument is the folder; with a second one, whatever it says, once more in the light theme, in German with
 * text twice as large in either theme, and each display on each ground.
 */
public final class ScreenPictures {
    /** The one where present and stored codes must not be mixed up, counted from 0: codes 41 and 24. */
    private static final int LESSON = 9;

    /** Longer than that lesson takes. */
    private static final double AGES_S = 300;

    /** A bulb does not quite reach its full light within a flash. */
    private static final double BRIGHT = 0.9;

    private final Album album;
    private final OpenWindow window;

    private ScreenPictures(Album album, OpenWindow window) {
        this.album = album;
        this.window = window;
    }

    public static void main(String[] arguments) throws IOException {
        Album.fill(arguments, album -> walkAll(album, arguments.length > 1));
    }

    private static void walkAll(Album album, boolean more) {
        LessonShelf shelf = LessonShelf.of(Optional.empty());
        Settings usual = OpenWindow.english();
        Settings german = usual.withLanguage(Optional.of(Locale.GERMAN));
        walk(album, shelf, usual);
        if (more) {
            walk(album.suffixed("-light"), shelf, usual.withTheme(Theme.LIGHT));
            walk(album.suffixed("-german"), shelf, german);
            walk(album.suffixed("-text-2"), shelf, german.withTextPercent(200));
            walk(
                    album.suffixed("-light-text-2"),
                    shelf,
                    german.withTextPercent(200).withTheme(Theme.LIGHT));
            for (Display display : List.of(Display.LED, Display.TEST_LIGHT, Display.METER, Display.SOUNDER)) {
                display(album, shelf, usual, display, Theme.DARK);
                display(album, shelf, usual, display, Theme.LIGHT);
            }
        }
    }

    private static void walk(Album album, LessonShelf shelf, Settings settings) {
        try (OpenWindow window = new OpenWindow(shelf, settings)) {
            new ScreenPictures(album, window).walk();
        }
        SampleRecords records = new SampleRecords();
        try {
            SampleLogbook.practised(records.folder(), records.records().now().get());
        } catch (LogbookException e) {
            throw new AssertionError(e);
        }
        try (OpenWindow window = new OpenWindow(shelf, settings, records)) {
            new ScreenPictures(album, window).practise();
        }
    }

    /** Somebody who has practised for two weeks looks around. */
    private void practise() {
        window.press(KeyCode.ENTER);
        take("learners");
        Toolkit.run(() -> ((LearnersScreen) window.now()).setDeleting(true));
        window.press(KeyCode.ENTER);
        take("forget");
        window.press(KeyCode.ENTER);
        window.press(KeyCode.DOWN, KeyCode.ENTER);
        take("home");
        Toolkit.run(() -> ((HomeScreen) window.now()).progress());
        take("progress");
        window.press(KeyCode.TAB, KeyCode.ENTER);
        take("progress-table");
        window.press(KeyCode.ESCAPE);
        Toolkit.run(() -> ((HomeScreen) window.now()).open(Skill.COUNT_A_DIGIT));
        take("skill");
    }

    private static void display(Album album, LessonShelf shelf, Settings usual, Display display, Theme theme) {
        Settings settings = usual.withShownBy(display).withTheme(theme).withGround(ground(display, theme));
        String suffix = "-" + display.key() + "-" + theme.name().toLowerCase(Locale.ROOT);
        try (OpenWindow window = new OpenWindow(shelf, settings)) {
            ScreenPictures pictures = new ScreenPictures(album.suffixed(suffix), window);
            Toolkit.run(() -> {
                ((NoticeScreen) window.now()).choiceProperty().set(display);
                ((NoticeScreen) window.now()).goOn();
                ((LearnersScreen) window.now()).goOnAsGuest();
                ((HomeScreen) window.now()).lessons();
                ((LessonsScreen) window.now()).open(LESSON);
                ((BriefingScreen) window.now()).start();
            });
            if (display != Display.SOUNDER) {
                pictures.passUntilLit(20);
            }
            pictures.take("lamp");
        }
    }

    private static Ground ground(Display display, Theme theme) {
        return switch (display) {
            case LED -> theme == Theme.DARK ? Ground.BLACK : Ground.PALE;
            case TEST_LIGHT -> theme == Theme.DARK ? Ground.GREY : Ground.PLATE;
            default -> Ground.PLATE;
        };
    }

    private void walk() {
        take("notice");
        window.press(KeyCode.ENTER);
        take("learners-first");
        Toolkit.run(() -> ((LearnersScreen) window.now()).goOnAsGuest());
        take("home-guest");
        Toolkit.run(() -> ((HomeScreen) window.now()).lessons());
        take("lessons");
        Toolkit.run(() -> ((LessonsScreen) window.now()).openSettings());
        take("settings");
        window.press(KeyCode.ESCAPE);
        for (int i = 0; i < LESSON; i++) {
            window.press(KeyCode.DOWN);
        }
        window.press(KeyCode.ENTER);
        take("briefing");
        window.press(KeyCode.ENTER);
        listen();
        window.pass(AGES_S);
        Toolkit.run(((PlayScreen) window.screen())::mark);
        take("marking");
        window.press(KeyCode.ENTER);
        passUntilThird();
        take("replay");
    }

    /** Writes as people do who take a 1 for a 2, the separator for a code and a stored code for a present one. */
    private void listen() {
        passUntilLit(20);
        window.type("42 1");
        take("lamp");
        window.type(" 24 ");
    }

    private void passUntilLit(double fromSeconds) {
        window.pass(fromSeconds);
        PlayScreen play = window.screen(PlayScreen.class);
        window.passUntil(AGES_S, () -> play.player().levelProperty().get() > BRIGHT);
    }

    /** The third flash of a second digit. */
    private void passUntilThird() {
        ReplayScreen replay = window.screen(ReplayScreen.class);
        window.passUntil(
                AGES_S,
                () -> replay.countProperty().get().equals("3")
                        && replay.digitsProperty().get().length() == 1
                        && replay.player().levelProperty().get() > BRIGHT);
    }

    private void take(String name) {
        album.take(window, name);
    }
}
