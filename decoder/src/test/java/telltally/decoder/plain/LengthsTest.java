package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LengthsTest {
    private static Lengths of(String format) {
        return new Lengths(Trains.shipped(format));
    }

    private static double seconds(double log) {
        return StrictMath.exp(log) / 1e9;
    }

    @Test
    void a_length_is_the_logarithm_of_nanoseconds_and_nothing_counts_as_one() {
        assertThat(Lengths.log(1_000_000_000L)).isCloseTo(20.723, within(0.001));
        assertThat(Lengths.log(0)).isZero();
    }

    @Test
    void every_gap_of_a_format_is_known_once() {
        assertThat(of("pair-even").dark()).hasSize(4);
        assertThat(seconds(of("pair-even").dark()[3])).isCloseTo(6.0, within(1e-6));
        assertThat(of("quad-lead").dark()).hasSize(2);
        assertThat(of("count-loop").dark()).hasSize(2);
        assertThat(seconds(of("count-loop").betweenDigits())).isCloseTo(0.3, within(1e-6));
        assertThat(seconds(of("pair-loop").beforeRepeat())).isCloseTo(4.5, within(1e-6));
    }

    @Test
    void a_lead_in_is_light_of_its_own_length() {
        assertThat(of("quad-lead").lit()).hasSize(2);
        assertThat(seconds(of("quad-lead").lit()[1])).isCloseTo(2.5, within(1e-6));
        assertThat(of("pair-even").lit()).hasSize(1);
    }

    @Test
    void a_flash_is_of_the_kind_that_it_comes_nearest_to() {
        Lengths lengths = of("long-short");

        assertThat(lengths.kinds()).isEqualTo(2);
        assertThat(seconds(lengths.longestFlash())).isCloseTo(1.2, within(1e-6));
        // Half way between 0.4 s and 1.2 s, as a ratio, is 0.693 s.
        int shorter = lengths.nearestKind(Lengths.log(690_000_000L));
        int longer = lengths.nearestKind(Lengths.log(696_000_000L));
        assertThat(seconds(lengths.flash(shorter))).isCloseTo(0.4, within(1e-6));
        assertThat(seconds(lengths.flash(longer))).isCloseTo(1.2, within(1e-6));
    }

    @Test
    void a_gap_that_hides_a_flash_is_two_gaps_and_the_flash() {
        assertThat(seconds(of("pair-even").unseen(0))).isCloseTo(1.5, within(1e-6));
    }

    /** Half way, as a ratio, to what is longer next: a hidden flash, 1.5 s, or the gap between digits. */
    @Test
    void a_digit_ends_half_way_to_the_next_longer_gap() {
        assertThat(seconds(of("pair-even").digitEnds())).isCloseTo(Math.sqrt(0.5 * 1.5), within(1e-6));
        assertThat(seconds(of("long-short").digitEnds())).isCloseTo(Math.sqrt(0.4 * 1.0), within(1e-6));
    }

    @Test
    void what_is_shorter_than_two_fifths_of_the_shortest_is_none() {
        assertThat(of("pair-even").tooShortFlashNanos()).isEqualTo(200_000_000L);
        assertThat(of("pair-even").tooShortGapNanos()).isEqualTo(200_000_000L);
        // Even blinking of a quarter of a second is shorter than flashes and gaps.
        assertThat(of("pair-loop").tooShortFlashNanos()).isEqualTo(100_000_000L);
        assertThat(of("pair-loop").tooShortGapNanos()).isEqualTo(100_000_000L);
    }

    @Test
    void places_are_those_of_a_code() {
        assertThat(of("triple-even").places()).isEqualTo(3);
    }
}
