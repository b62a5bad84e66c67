package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

/** Sums of cubes (clear beyond three times), longest stretches (beyond five quarters), long rest at both ends. */
class PauseEvidenceTest {
    /** Stretches by turns. */
    private static PulseTrain train(boolean litFirst, int... millis) {
        PulseTrain.Builder train = PulseTrain.builder();
        for (int i = 0; i < millis.length; i++) {
            train.stay(litFirst ^ (i % 2 == 1), millis[i] * Trains.MILLI);
        }
        return train.build();
    }

    private static int forLit(boolean litFirst, int... millis) {
        return new PauseEvidence(train(litFirst, millis)).forLit();
    }

    @Test
    void even_blinking_says_nothing() {
        assertThat(forLit(false, 500, 500, 500, 500, 500, 500, 500)).isZero();
    }

    /** Between the ends: lit 3 s, 27 by its cube; dark 1 s and 2 s, 9 by theirs; the median is 2 s. */
    @Test
    void three_times_the_cubes_is_not_clear_but_a_longer_stretch_and_twice_the_median_at_both_ends_is() {
        assertThat(forLit(true, 4000, 1000, 3000, 2000, 4000)).isEqualTo(2);
        assertThat(forLit(true, 4000, 1000, 3001, 2000, 4000)).isEqualTo(3);
    }

    @Test
    void both_ends_must_be_long() {
        assertThat(forLit(true, 3999, 1000, 3000, 2000, 4000)).isEqualTo(1);
        assertThat(forLit(true, 4000, 1000, 3000, 2000, 3999)).isEqualTo(1);
    }

    @Test
    void the_same_with_dark_and_lit_exchanged_speaks_for_dark() {
        assertThat(forLit(false, 4000, 1000, 3000, 2000, 4000)).isEqualTo(-2);
        assertThat(forLit(false, 4000, 1000, 3001, 2000, 4000)).isEqualTo(-3);
    }

    @Test
    void long_ends_of_different_levels_say_nothing() {
        assertThat(forLit(false, 4000, 1000, 1000, 1000, 1000, 4000)).isZero();
    }

    /** Three cubes of half a second, 0.375, are less than three times two of 0.4 s, 0.384. */
    @Test
    void five_quarters_of_the_longest_is_not_clear_and_a_little_more_is() {
        assertThat(forLit(false, 400, 500, 400, 500, 400, 500, 400)).isZero();
        assertThat(forLit(false, 400, 501, 400, 500, 400, 500, 400)).isEqualTo(1);
        assertThat(forLit(true, 400, 500, 400, 500, 400, 500, 400)).isZero();
        assertThat(forLit(true, 400, 501, 400, 500, 400, 500, 400)).isEqualTo(-1);
    }

    @Test
    void of_four_stretches_the_ends_count_and_of_five_they_do_not() {
        assertThat(forLit(false, 1000, 1000, 1000, 9000)).isEqualTo(2);
        assertThat(forLit(true, 9000, 1000, 1000, 1000, 1000)).isZero();
    }

    @Test
    void two_signs_of_three_are_enough_to_look_inverted() {
        assertThat(Polarity.looksInverted(train(true, 4000, 1000, 3000, 2000, 4000)))
                .isTrue();
        assertThat(Polarity.looksInverted(train(true, 3999, 1000, 3000, 2000, 4000)))
                .isFalse();
    }
}
