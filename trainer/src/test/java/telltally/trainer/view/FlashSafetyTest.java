package telltally.trainer.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.simulator.channel.Bulb;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.playback.FlashRate;
import telltally.trainer.playback.Instrument;
import telltally.trainer.playback.Playback;
import telltally.trainer.settings.Ground;
import telltally.trainer.settings.LampSize;
import telltally.trainer.settings.Settings;
import telltally.trainer.text.Texts;

/** No more than three flashes in any second, and never over a large area (success criterion 2.3.1). */
class FlashSafetyTest {
    private static final long FRAME_NANOS = 16_666_667L;

    /** A quarter of the block of 341 by 256 pixels that stands for ten degrees of sight. */
    private static final double LARGE_AREA_PX = 0.25 * 341 * 256;

    /** The spacings of the reference and what the definition makes of them. */
    @ParameterizedTest
    @CsvSource({"1.0, 1", "0.5, 2", "0.34, 3", "0.25, 4", "0.1, 10"})
    void flashes_are_counted_as_the_guideline_counts_them(double spacingSeconds, int most) {
        GeneralFlashes flashes = new GeneralFlashes();
        for (int step = 0; step < 60; step++) {
            flashes.see((long) (step * spacingSeconds * 5e8), step % 2 == 0 ? 0 : 1);
        }

        assertThat(flashes.mostInAnySecond()).isEqualTo(most);
    }

    @Test
    void a_change_of_less_than_a_tenth_is_no_flash() {
        GeneralFlashes flashes = new GeneralFlashes();
        for (int step = 0; step < 60; step++) {
            flashes.see(step * 50_000_000L, step % 2 == 0 ? 0.4 : 0.49);
        }

        assertThat(flashes.all()).isZero();
    }

    /** Every lesson that ships on every display that flashes, frame by frame, at its brightest. */
    @Test
    void no_lesson_flashes_more_than_three_times_in_any_second_on_any_display() {
        List<Instrument> instruments = List.of(
                new Instrument.Diode(),
                new Instrument.Filament(Bulb.panel(), 12.6),
                new Instrument.Filament(Bulb.testLight(), 12.6));
        int lessons = 0;
        int flashes = 0;
        for (var scenario : LessonShelf.of(Optional.empty()).scenarios()) {
            PulseTrain pulses = Lesson.play(scenario, 7).pulses();
            lessons++;
            if (!FlashRate.mayFlash(pulses)) {
                continue;
            }
            for (Instrument instrument : instruments) {
                GeneralFlashes counted = counted(pulses, instrument);
                assertThat(counted.mostInAnySecond())
                        .as(scenario.id() + " on " + instrument)
                        .isLessThanOrEqualTo(FlashRate.MOST_IN_A_SECOND);
                flashes += counted.all();
            }
        }
        assertThat(lessons).isGreaterThanOrEqualTo(50);
        assertThat(flashes).as("something did flash").isGreaterThan(1000);
    }

    private static GeneralFlashes counted(PulseTrain pulses, Instrument instrument) {
        GeneralFlashes flashes = new GeneralFlashes();
        Playback playback = new Playback(pulses, 0, pulses.endNanos(), instrument.showing(pulses));
        for (long at = 0; !playback.ended(); at += FRAME_NANOS) {
            playback.advanceTo(at);
            // A lens that is lit is brighter than a screen's white in no theme: its level is its luminance at most.
            flashes.see(at, Math.min(1, playback.level()));
        }
        return flashes;
    }

    /** Counted in the picture: whatever changes by a tenth between dark and lit, and for the needle between its ends. */
    @ParameterizedTest
    @EnumSource(Display.class)
    void what_changes_with_the_signal_is_no_large_area_however_large_it_is_set(Display display) {
        Toolkit.require();
        Settings settings = Settings.usual().withLampSize(LampSize.LARGE).withLampPercent(100);
        for (Ground ground : Ground.values()) {
            assertThat(changedPx(display, settings.withGround(ground)))
                    .as(display + " on " + ground)
                    .isLessThan(LARGE_AREA_PX);
        }
    }

    private static double changedPx(Display display, Settings settings) {
        return Toolkit.fx(() -> {
            SimpleDoubleProperty level = new SimpleDoubleProperty(0);
            StackPane root = new StackPane(
                    new SignalPlate(display, level, settings, new SimpleDoubleProperty().asString(), english()));
            root.getStyleClass().add("bench");
            root.setStyle(Colours.of(settings.theme()).style());
            Scene scene = new Scene(root, 600, 600);
            scene.getStylesheets().add(TrainerWindow.styleSheet());
            WritableImage dark = root.snapshot(new SnapshotParameters(), null);
            level.set(1);
            WritableImage lit = root.snapshot(new SnapshotParameters(), null);
            return (double) differing(dark, lit);
        });
    }

    private static Texts english() {
        return Texts.in(Texts.LANGUAGES.get(0));
    }

    private static int differing(WritableImage one, WritableImage other) {
        PixelReader before = one.getPixelReader();
        PixelReader after = other.getPixelReader();
        int differing = 0;
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                Color a = before.getColor(x, y);
                Color b = after.getColor(x, y);
                differing += Math.abs(Luminance.of(a) - Luminance.of(b)) >= 0.1 ? 1 : 0;
            }
        }
        return differing;
    }
}
