package telltally.trainer.view;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.settings.Settings;

/**
 * Writes a picture of what is told before the first drill of every skill, of a drill while it runs and after a wrong
 * answer, of tapping along and of a code shown again, at 1280 by 800 pixels. The first argument is the folder; with a
 * second one, whatever it says, once more with text twice as large; with a third one, in German.
 */
public final class DrillPictures {
    private static final DrillMaker MAKER = DrillMaker.shipped();
    private static final int LEVEL = 7;
    private static final long SEED = 5;

    private final Album album;
    private final OpenWindow window;

    private DrillPictures(Album album, OpenWindow window) {
        this.album = album;
        this.window = window;
    }

    public static void main(String[] arguments) throws IOException {
        Locale language = arguments.length > 2 ? Locale.GERMAN : Locale.ENGLISH;
        Album.fill(arguments, album -> {
            walk(album, 1, language);
            if (arguments.length > 1) {
                walk(album.suffixed("-text-2"), 2, language);
            }
        });
    }

    private static void walk(Album album, int scale, Locale language) {
        try (OpenWindow window = new OpenWindow(
                LessonShelf.of(Optional.empty()),
                Settings.usual().withLanguage(Optional.of(language)).withTextPercent(100 * scale))) {
            DrillPictures pictures = new DrillPictures(album, window);
            window.goHomeAsGuest();
            for (Skill skill : Skill.values()) {
                pictures.advice(skill);
            }
            for (Skill skill : Skill.values()) {
                pictures.skill(skill);
            }
            pictures.tapped();
        }
    }

    private void advice(Skill skill) {
        window.openAdvice(skill);
        take(skill.key() + "-advice");
        window.press(KeyCode.ESCAPE);
    }

    private void skill(Skill skill) {
        Drill drill = MAKER.make(skill, new Level(LEVEL), SEED);
        window.open(drill, Display.LAMP);
        double lampS = drill.lampNanos() / 1e9;
        double middleS =
                drill.interruption().map(asked -> asked.fromNanos() / 1e9 + 0.3).orElse(lampS / 2);
        window.pass(middleS);
        take(skill.key() + "-running");
        window.pass(lampS - middleS + 0.1);
        window.type("35 12 1");
        window.press(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        window.pressWithAlt(KeyCode.A);
        take(skill.key() + "-marked");
    }

    /** Taps a little late. */
    private void tapped() {
        Drill drill = MAKER.make(Skill.HOLD_TWO_DIGITS, new Level(LEVEL), SEED);
        window.open(drill, Display.LAMP);
        DrillScreen screen = window.screen(DrillScreen.class);
        Toolkit.run(() -> screen.meansProperty().set(Means.TAPPED));
        Toolkit.settle();
        List<Interval> flashes =
                drill.pulses().intervals().stream().filter(Interval::lit).toList();
        double nowS = 0;
        for (int i = 0; i < flashes.size(); i++) {
            double atS = flashes.get(i).startNanos() / 1e9 + 0.06;
            window.pass(atS - nowS);
            window.hold(KeyCode.SPACE, true);
            if (i == 2) {
                take("tapping");
            }
            window.pass(0.4);
            window.hold(KeyCode.SPACE, false);
            nowS = atS + 0.4;
        }
        window.pass(drill.lampNanos() / 1e9);
        window.pressWithAlt(KeyCode.A);
        take("tapped-marked");
        window.pressWithAlt(KeyCode.S);
        window.pass(6);
        take("replay-drill");
    }

    private void take(String name) {
        album.take(window, name);
    }
}
