package telltally.trainer.playback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.lesson.Lesson;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.SampleLessons;

class FlashRateTest {
    private static final long MILLISECOND = 1_000_000L;

    static PulseTrain even(long spacingMillis, int flashes) {
        PulseTrain.Builder train = PulseTrain.builder().dark(400 * MILLISECOND);
        for (int i = 0; i < flashes; i++) {
            train.lit(spacingMillis * MILLISECOND / 2).dark(spacingMillis * MILLISECOND / 2);
        }
        return train.build();
    }

    /** Worked from the rule of WCAG 2.x, success criterion 2.3.1: no more than three flashes in any one second. */
    @ParameterizedTest
    @CsvSource({"1000, 1, true", "500, 2, true", "340, 3, true", "250, 4, false", "100, 10, false"})
    void flashes_at_an_even_spacing_count_as_the_guideline_counts(long spacingMillis, int most, boolean may) {
        assertThat(FlashRate.mostInAnySecond(even(spacingMillis, 40))).isEqualTo(most);
        assertThat(FlashRate.mayFlash(even(spacingMillis, 40))).isEqualTo(may);
    }

    @Test
    void a_short_flurry_in_a_slow_train_is_found() {
        PulseTrain.Builder train = PulseTrain.builder().dark(1);
        for (int i = 0; i < 50; i++) {
            long lengthMillis = i >= 30 && i < 34 ? 60 : 500;
            train.lit(lengthMillis * MILLISECOND).dark(lengthMillis * MILLISECOND);
        }

        assertThat(FlashRate.mostInAnySecond(train.build())).isGreaterThan(FlashRate.MOST_IN_A_SECOND);
    }

    @Test
    void light_that_never_goes_out_is_one_flash() {
        assertThat(FlashRate.mostInAnySecond(
                        PulseTrain.builder().lit(5_000 * MILLISECOND).build()))
                .isEqualTo(1);
    }

    /** A lamp format that cannot be shown as a lamp would be a mistake in the format file. */
    @Test
    void every_shipped_format_may_flash_on_the_lamp_and_none_with_a_burst_on_the_wire() {
        int seen = 0;
        for (FlashFormat format : FormatCatalog.shipped().all()) {
            Lesson lesson = SampleLessons.in(format.id(), longest(format));
            assertThat(FlashRate.mayFlash(lesson.pulses())).as(format.id()).isTrue();
            if (format.burst().isPresent()) {
                assertThat(FlashRate.mayFlash(lesson.recording().pin()))
                        .as(format.id())
                        .isFalse();
            }
            seen++;
        }
        assertThat(seen).isEqualTo(7);
    }

    @Test
    void every_shipped_lesson_may_flash_on_the_lamp() {
        assertThat(LessonShelf.of(Optional.empty()).scenarios())
                .hasSizeGreaterThanOrEqualTo(50)
                .allSatisfy(scenario -> assertThat(FlashRate.mostInAnySecond(
                                Lesson.play(scenario, 7).pulses()))
                        .as(scenario.id())
                        .isLessThanOrEqualTo(FlashRate.MOST_IN_A_SECOND));
    }

    private static Message longest(FlashFormat format) {
        String nine =
                "9".repeat(format.id().startsWith("triple") ? 3 : format.id().startsWith("quad") ? 4 : 2);
        List<String> codes = List.of(format.refusal(nine).isEmpty() ? nine : "9");
        return format.sessions().isPresent() ? new Message.KeyOn(codes, codes) : new Message.Codes(codes);
    }
}
