package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChannelTest {
    private static final Channel USUAL = new Channel(1.25, 0.01, 0.04, 0.03, 0.002, 0.004);

    /** Var(s (L1 + L2) (1 + jitter) + blur) for independent lengths of 0.3 and 0.4 s: their squares add up to 0.25. */
    @Test
    void jitter_grows_with_the_lengths_that_make_up_a_gap_and_blur_does_not() {
        double jitter = 0.04 * 1.25;
        assertThat(USUAL.variance(0.25)).isCloseTo(jitter * jitter * 0.25 + 0.03 * 0.03, within(1e-15));
        assertThat(USUAL.deviation(0.25)).isCloseTo(Math.sqrt(0.000625 + 0.0009), within(1e-15));
        assertThat(USUAL.deviation(0)).isCloseTo(0.03, within(1e-15));
    }

    @Test
    void flashes_are_unseen_independently() {
        double[] missed = new Channel(1, 0, 0.05, 0.01, 0.125, 0).missedInARow(3);
        assertThat(missed).containsExactly(1, 0.125, 0.015625, 0.001953125);
    }

    /** Each row changes one number by a little less, or a little more, than matters. */
    @ParameterizedTest
    @CsvSource({
        "1.2549, 0.01, 0.04, 0.03, 0.002, 0.004, true",
        "1.2451, 0.01, 0.04, 0.03, 0.002, 0.004, true",
        "1.2551, 0.01, 0.04, 0.03, 0.002, 0.004, false",
        "1.2449, 0.01, 0.04, 0.03, 0.002, 0.004, false",
        "1.25, 0.0159, 0.04, 0.03, 0.002, 0.004, true",
        "1.25, 0.0041, 0.04, 0.03, 0.002, 0.004, true",
        "1.25, 0.0161, 0.04, 0.03, 0.002, 0.004, false",
        "1.25, 0.0039, 0.04, 0.03, 0.002, 0.004, false",
        "1.25, 0.01, 0.067, 0.03, 0.002, 0.004, true",
        "1.25, 0.01, 0.069, 0.03, 0.002, 0.004, false",
        "1.25, 0.01, 0.024, 0.03, 0.002, 0.004, true",
        "1.25, 0.01, 0.023, 0.03, 0.002, 0.004, false",
        "1.25, 0.01, 0.04, 0.059, 0.002, 0.004, true",
        "1.25, 0.01, 0.04, 0.061, 0.002, 0.004, false",
        "1.25, 0.01, 0.04, 0.016, 0.002, 0.004, true",
        "1.25, 0.01, 0.04, 0.014, 0.002, 0.004, false",
        "1.25, 0.01, 0.04, 0.03, 0.0039, 0.004, true",
        "1.25, 0.01, 0.04, 0.03, 0.0041, 0.004, false",
        "1.25, 0.01, 0.04, 0.03, 0.0011, 0.004, true",
        "1.25, 0.01, 0.04, 0.03, 0.0009, 0.004, false",
        "1.25, 0.01, 0.04, 0.03, 0.002, 0.0079, true",
        "1.25, 0.01, 0.04, 0.03, 0.002, 0.0081, false",
        "1.25, 0.01, 0.04, 0.03, 0.002, 0.0021, true",
        "1.25, 0.01, 0.04, 0.03, 0.002, 0.0019, false"
    })
    void is_near_another_where_none_of_its_numbers_would_weigh_lengths_otherwise(
            double scale, double bias, double jitter, double blur, double missed, double ghost, boolean near) {
        assertThat(USUAL.nearly(new Channel(scale, bias, jitter, blur, missed, ghost)))
                .isEqualTo(near);
    }

    @Test
    void a_steady_sender_is_held_to_its_clock_no_closer_than_one_of_two_hundredths() {
        Channel steady = new Channel(1, 0, 0.01, 0.03, 0.002, 0.004);
        assertThat(steady.nearly(new Channel(1.0019, 0, 0.01, 0.03, 0.002, 0.004)))
                .isTrue();
        assertThat(steady.nearly(new Channel(1.0021, 0, 0.01, 0.03, 0.002, 0.004)))
                .isFalse();
    }

    @Test
    void numbers_at_the_very_border_are_not_near() {
        Channel one = new Channel(1, 0, 0.04, 0.25, 0.25, 0.25);
        assertThat(one.nearly(new Channel(1, 0, 0.04, 0.5, 0.25, 0.25))).isFalse();
        assertThat(one.nearly(new Channel(1, 0, 0.04, 0.125, 0.25, 0.25))).isFalse();
    }

    @Test
    void a_first_guess_takes_the_clock_and_an_unsteady_sender() {
        assertThat(Channel.firstGuess(0.8)).isEqualTo(new Channel(0.8, 0, 0.07, 0.045, 0.003, 0.003));
    }

    @Test
    void what_is_known_of_the_noise_takes_the_place_of_what_was_fitted() {
        assertThat(KnownNoise.NOTHING.in(USUAL)).isEqualTo(USUAL);
        KnownNoise all = new KnownNoise(
                OptionalDouble.of(0.9), OptionalDouble.of(0.1), OptionalDouble.of(0.2), OptionalDouble.of(0.3));
        assertThat(all.in(USUAL)).isEqualTo(new Channel(0.9, 0.01, 0.1, 0.03, 0.2, 0.3));
    }
}
