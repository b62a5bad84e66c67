package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class RunsTest {
    private static Runs of(PulseTrain train, String format, double scale) {
        Lengths lengths = new Lengths(Trains.shipped(format));
        return new Runs(new Flashes(train, lengths), lengths, scale);
    }

    @Test
    void flashes_with_gaps_as_within_a_digit_stand_together() {
        Runs runs = of(Trains.even("3 / 4 (4) 1"), "pair-even", 0);

        assertThat(runs.size()).isEqualTo(3);
        assertThat(runs.count(0)).isEqualTo(3);
        assertThat(runs.first(1)).isEqualTo(3);
        assertThat(runs.last(1)).isEqualTo(6);
        assertThat(runs.count(2)).isEqualTo(1);
        assertThat(runs.cost()).isZero();
    }

    /** Between 0.5 s and 1.5 s, where a flash is hidden, lies 0.866 s. */
    @Test
    void a_gap_beyond_half_way_ends_a_digit() {
        assertThat(of(Trains.of("1 0.5 0.86 0.5 1"), "pair-even", 0).size()).isEqualTo(1);
        assertThat(of(Trains.of("1 0.5 0.87 0.5 1"), "pair-even", 0).size()).isEqualTo(2);
        double tenthSlow = StrictMath.log(1.1);
        assertThat(of(Trains.of("1 0.55 0.946 0.55 1"), "pair-even", tenthSlow).size())
                .isEqualTo(1);
    }

    @Test
    void lengths_are_those_at_nominal_clock() {
        Runs runs = of(Trains.of("1 0.55 0.55 0.55 1"), "pair-even", StrictMath.log(1.1));

        assertThat(runs.lit(0)).isCloseTo(StrictMath.log(5e8), within(1e-9));
        assertThat(runs.gapBefore(1)).isCloseTo(StrictMath.log(5e8), within(1e-9));
        assertThat(runs.cost()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_run_costs_what_its_flashes_and_gaps_are_off_each_up_to_a_limit() {
        // 8 % is one spread: half a nat each for the second gap and the third flash.
        double off = 0.5 * StrictMath.exp(0.08);
        Runs runs = of(Trains.of("1 0.5 0.5 0.5 " + off + " " + off + " 2 0.5 1"), "pair-even", 0);
        assertThat(runs.cost(0)).isCloseTo(1.0, within(1e-6));
        assertThat(runs.cost(1)).isZero();
        assertThat(runs.cost()).isCloseTo(1.0, within(1e-6));
        // 0.22 s is ten spreads off.
        assertThat(of(Trains.of("1 0.22 1"), "pair-even", 0).cost()).isEqualTo(6);
        assertThat(of(Trains.of("1 0.5 0.22 0.5 1"), "pair-even", 0).cost()).isEqualTo(6);
    }

    /** Sixty percent, as a logarithm 0.47, beyond half a second: 0.8 s. */
    @Test
    void light_too_long_for_any_flash_is_a_run_of_its_own() {
        Runs runs = of(Trains.of("1 0.5 0.5 0.81 0.5 0.5 1"), "pair-even", 0);

        assertThat(runs.size()).isEqualTo(3);
        assertThat(runs.steady(0)).isFalse();
        assertThat(runs.steady(1)).isTrue();
        assertThat(runs.steady(2)).isFalse();
        assertThat(runs.cost()).isZero();
        assertThat(of(Trains.of("1 0.5 0.5 0.79 0.5 0.5 1"), "pair-even", 0).size())
                .isEqualTo(1);
    }

    @Test
    void a_single_light_of_more_than_a_second_may_be_a_bulb_check() {
        assertThat(of(Trains.of("1 1.01 1"), "long-short", 0).perhapsSteady(0)).isTrue();
        assertThat(of(Trains.of("1 1.0 1"), "long-short", 0).perhapsSteady(0)).isFalse();
        assertThat(of(Trains.of("1 1.2 0.4 1.2 1"), "long-short", 0).perhapsSteady(0))
                .isFalse();
    }

    @Test
    void where_digits_are_counted_kinds_do_not_mix_in_a_run() {
        Runs runs = of(Trains.of("1 1.2 0.4 1.2 0.4 0.4 1"), "long-short", 0);

        assertThat(runs.size()).isEqualTo(2);
        assertThat(runs.kinds(0)).containsExactly(runs.kind(0), runs.kind(0));
        assertThat(runs.kind(1)).isNotEqualTo(runs.kind(0)).isEqualTo(runs.kindOfFlash(2));
    }
}
