package telltally.trainer.view;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import telltally.decoder.plain.PlainDecoder;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.playback.Sound;
import telltally.trainer.playback.Voice;
import telltally.trainer.screen.DrillDoor;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.SampleRecords;
import telltally.trainer.screen.Screen;
import telltally.trainer.screen.SkillScreen;
import telltally.trainer.screen.Trainer;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.SettingsStore;

/** A real window with a clock that moves only when it is told to, so that minutes pass in no time and no frame is late. */
final class OpenWindow implements AutoCloseable {
    private static final long FRAME_NANOS = 16_000_000L;

    private final AtomicLong clockNanos = new AtomicLong(1_000_000_000L);
    private final TrainerWindow window;
    private final Robot robot;

    /** In English, with text as large as is said. */
    OpenWindow(LessonShelf shelf, double textScale) {
        this(shelf, english().withTextPercent((int) (textScale * 100)));
    }

    OpenWindow(LessonShelf shelf, Settings settings) {
        this(shelf, settings, new SampleRecords());
    }

    OpenWindow(LessonShelf shelf, Settings settings, SampleRecords records) {
        window = Toolkit.fx(() -> {
            Trainer.Surroundings surroundings = new Trainer.Surroundings(
                    clockNanos::get,
                    () -> 7,
                    NoDevice::new,
                    SettingsStore.forgetful(settings),
                    new PlainDecoder(),
                    records.records());
            Trainer trainer = new Trainer(() -> shelf, surroundings, Optional.empty());
            TrainerWindow made = new TrainerWindow(new Stage(), trainer, clockNanos::get);
            made.show();
            return made;
        });
        robot = Toolkit.fx(Robot::new);
        Toolkit.settle();
    }

    /** Goes straight to a drill. */
    DrillDoor open(Drill drill, Display agreed) {
        DrillDoor door = new DrillDoor();
        Toolkit.run(() -> door.open(window.trainer(), drill, agreed));
        Toolkit.settle();
        return door;
    }

    /** The usual settings in English. */
    static Settings english() {
        return Settings.usual().withLanguage(Optional.of(Locale.ENGLISH));
    }

    /** Ask on the toolkit's thread. */
    Screen now() {
        return window.trainer().screen();
    }

    Screen screen() {
        return Toolkit.fx(this::now);
    }

    <T extends Screen> T screen(Class<T> expected) {
        return expected.cast(screen());
    }

    Scene scene() {
        return window.stage().getScene();
    }

    /** Lets time pass, frame by frame. */
    void pass(double seconds) {
        passUntil(seconds, () -> false);
    }

    /** Lets time pass, frame by frame, until something is so or the time is up. */
    void passUntil(double seconds, BooleanSupplier so) {
        Toolkit.run(() -> {
            window.frame();
            long endNanos = clockNanos.get() + (long) (seconds * 1e9);
            while (clockNanos.get() < endNanos && !so.getAsBoolean()) {
                clockNanos.set(Math.min(endNanos, clockNanos.get() + FRAME_NANOS));
                window.frame();
            }
        });
        Toolkit.settle();
    }

    /** Lets time pass at once, as if the computer had stood still. */
    void stall(double seconds) {
        Toolkit.run(() -> {
            clockNanos.addAndGet((long) (seconds * 1e9));
            window.frame();
        });
    }

    /** From the notice, as a guest, to the lessons. */
    void goToLessons() {
        press(KeyCode.ENTER);
        pressWithAlt(KeyCode.G);
        pressWithAlt(KeyCode.L);
    }

    /** From the notice. */
    void goHomeAsGuest() {
        press(KeyCode.ENTER);
        Toolkit.run(() -> ((LearnersScreen) now()).goOnAsGuest());
    }

    /** From home, where the skill was never practised, to what is told before its first drill. */
    void openAdvice(Skill skill) {
        Toolkit.run(() -> ((HomeScreen) now()).open(skill));
        Toolkit.run(() -> ((SkillScreen) now()).begin());
        Toolkit.settle();
    }

    void press(KeyCode... keys) {
        for (KeyCode key : keys) {
            Toolkit.run(() -> robot.keyType(key));
            Toolkit.settle();
        }
    }

    void pressWithAlt(KeyCode key) {
        Toolkit.run(() -> {
            robot.keyPress(KeyCode.ALT);
            robot.keyType(key);
            robot.keyRelease(KeyCode.ALT);
        });
        Toolkit.settle();
    }

    void hold(KeyCode key, boolean down) {
        Toolkit.run(() -> {
            if (down) {
                robot.keyPress(key);
            } else {
                robot.keyRelease(key);
            }
        });
        Toolkit.settle();
    }

    /** Digits by the keyboard; a space stands for Enter. */
    void type(String digits) {
        Toolkit.run(() -> {
            for (int i = 0; i < digits.length(); i++) {
                char digit = digits.charAt(i);
                robot.keyType(digit == ' ' ? KeyCode.ENTER : KeyCode.valueOf("DIGIT" + digit));
            }
        });
        Toolkit.settle();
    }

    @Override
    public void close() {
        Toolkit.run(() -> window.stage().close());
    }

    /** A computer without a sound device. */
    private static final class NoDevice implements Sound {
        @Override
        public void play(PulseTrain pulses, Voice voice, LongSupplier positionNanos) {}

        @Override
        public void stop() {}

        @Override
        public Optional<Trouble> trouble() {
            return Optional.of(Trouble.NO_DEVICE);
        }

        @Override
        public long worstOffNanos() {
            return 0;
        }

        @Override
        public void close() {}
    }
}
