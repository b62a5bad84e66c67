package telltally.trainer.playback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.signal.PulseTrain;

class PlaybackTest {
    private static final long MILLISECOND = 1_000_000L;
    private static final int FLASHES = 200;

    /** Brightness is a quotient of whole nanoseconds; only rounding may differ. */
    private static final double EXACT = 1e-9;

    /** Half a second lit, half a second dark, the usual timing of the trade (common practice, no source). */
    private final PulseTrain pulses = FlashRateTest.even(1000, FLASHES);

    /** Frame instants counted from the start, not added up, as a screen's own clock does. */
    private static LongStream frames(double hertz) {
        return LongStream.rangeClosed(0, (long) (205 * hertz)).map(frame -> (long) (frame * 1e9 / hertz));
    }

    private static Playback played(PulseTrain pulses, LongStream frames) {
        Playback playback = new Playback(pulses);
        frames.forEach(playback::advanceTo);
        return playback;
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 62.5, 75, 144})
    void no_change_comes_before_its_time_and_none_later_than_a_frame(double hertz) {
        Playback playback = played(pulses, frames(hertz));

        long frameNanos = (long) (1e9 / hertz) + 1;
        assertThat(playback.shown()).hasSize(FLASHES);
        for (ShownFlash flash : playback.shown()) {
            assertThat(flash.shownNanos()).isGreaterThan(flash.planned().startNanos());
            assertThat(flash.goneNanos()).isGreaterThan(flash.planned().endNanos());
            assertThat(flash.worstLateNanos()).isLessThanOrEqualTo(frameNanos);
        }
        assertThat(playback.worstLateNanos()).isLessThanOrEqualTo(frameNanos);
        assertThat(playback.lagged()).isFalse();
        assertThat(playback.ended()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 62.5, 75, 144})
    void the_last_flash_is_no_later_than_the_first_could_be(double hertz) {
        List<ShownFlash> shown = played(pulses, frames(hertz)).shown();

        // Chained pauses would be late by up to 200 half frames here.
        assertThat(shown.get(FLASHES - 1).lateNanos()).isLessThanOrEqualTo((long) (1e9 / hertz) + 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 62.5, 75, 144})
    void the_light_of_all_frames_is_the_light_of_the_train(double hertz) {
        Playback playback = new Playback(pulses);
        List<Double> light = new ArrayList<>();
        frames(hertz).forEach(nanos -> {
            long from = playback.positionNanos();
            playback.advanceTo(nanos);
            light.add(playback.level() * (playback.positionNanos() - from));
        });

        double litNanos = light.stream().mapToDouble(Double::doubleValue).sum();
        assertThat(litNanos).isCloseTo((double) pulses.litNanosBetween(0, pulses.endNanos()), within(1000.0));
    }

    @Test
    void a_frame_is_as_bright_as_the_share_of_it_that_was_lit() {
        Playback playback = new Playback(pulses);
        playback.advanceTo(395 * MILLISECOND);
        assertThat(playback.level()).isZero();
        playback.advanceTo(415 * MILLISECOND);
        assertThat(playback.level()).isCloseTo(0.75, within(EXACT));
        playback.advanceTo(435 * MILLISECOND);
        assertThat(playback.level()).isCloseTo(1, within(EXACT));
        playback.advanceTo(435 * MILLISECOND);
        assertThat(playback.level()).as("the same frame once more").isCloseTo(1, within(EXACT));
    }

    @Nested
    class Dropped_frames {
        @Test
        void one_long_frame_makes_one_flash_late_and_none_that_follow() {
            LongStream frames = frames(60).filter(nanos -> nanos < 1_380 * MILLISECOND || nanos > 1_440 * MILLISECOND);
            Playback playback = played(pulses, frames);

            assertThat(playback.shown().get(1).lateNanos()).isGreaterThan(40 * MILLISECOND);
            assertThat(playback.shown().stream().skip(2).mapToLong(ShownFlash::worstLateNanos))
                    .allMatch(late -> late <= 16_666_668L);
            assertThat(playback.lagged())
                    .as("42 ms are less than a tenth of half a second")
                    .isFalse();
        }

        @Test
        void a_lag_of_more_than_a_tenth_of_a_flash_is_noticed() {
            LongStream frames = frames(60).filter(nanos -> nanos < 1_380 * MILLISECOND || nanos > 1_460 * MILLISECOND);
            Playback playback = played(pulses, frames);

            assertThat(playback.worstLateNanos()).isGreaterThan(50 * MILLISECOND);
            assertThat(playback.lagged()).isTrue();
        }

        @Test
        void flashes_that_fell_between_two_frames_are_noted_as_shown_in_that_one() {
            LongStream frames = frames(60).filter(nanos -> nanos < 2_000 * MILLISECOND || nanos > 6_000 * MILLISECOND);
            Playback playback = played(pulses, frames);

            assertThat(playback.shown()).hasSize(FLASHES);
            assertThat(playback.lagged()).isTrue();
            assertThat(playback.worstLateNanos()).isGreaterThan(3_500 * MILLISECOND);
        }

        @Test
        void a_flash_that_went_out_late_counts_as_late_too() {
            LongStream frames = frames(60).filter(nanos -> nanos < 1_880 * MILLISECOND || nanos > 1_980 * MILLISECOND);

            assertThat(played(pulses, frames).lagged()).isTrue();
        }
    }

    @Nested
    class A_stretch {
        @Test
        void plays_what_lies_in_it_and_ends_dark() {
            Playback playback = stretch(pulses, 10_000 * MILLISECOND, 13_600 * MILLISECOND);
            for (int frame = 0; frame < 300; frame++) {
                playback.advanceTo(16 * MILLISECOND * frame);
            }

            assertThat(playback.ended()).isTrue();
            assertThat(playback.level()).isZero();
            assertThat(playback.positionNanos()).isEqualTo(13_600 * MILLISECOND);
            assertThat(playback.shown())
                    .extracting(flash -> flash.planned().startNanos() / MILLISECOND)
                    .containsExactly(10_400L, 11_400L, 12_400L);
        }

        @Test
        void that_begins_within_a_flash_is_not_late_by_it() {
            Playback playback = stretch(pulses, 10_600 * MILLISECOND, 13_000 * MILLISECOND);
            playback.advanceTo(16 * MILLISECOND);

            assertThat(playback.level()).isEqualTo(1);
            assertThat(playback.worstLateNanos()).isZero();
        }

        @Test
        void outside_the_train_is_refused() {
            assertThatThrownBy(() -> stretch(pulses, 5, 5)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> stretch(pulses, 0, pulses.endNanos() + 1))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void a_clock_that_steps_back_stands_still() {
        Playback playback = new Playback(pulses);
        playback.advanceTo(500 * MILLISECOND);
        playback.advanceTo(300 * MILLISECOND);

        assertThat(playback.positionNanos()).isEqualTo(500 * MILLISECOND);
    }

    private static Playback stretch(PulseTrain pulses, long fromNanos, long toNanos) {
        return new Playback(pulses, fromNanos, toNanos, new Instrument.Diode().showing(pulses));
    }
}
