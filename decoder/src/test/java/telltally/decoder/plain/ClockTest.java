package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.signal.PulseTrain;

class ClockTest {
    private static List<Double> scales(PulseTrain train, String format) {
        Lengths lengths = new Lengths(Trains.shipped(format));
        return new Clock(new Flashes(train, lengths), lengths).scales();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.80, 0.85, 0.93, 1.0, 1.07, 1.18, 1.25})
    void the_cheapest_scale_is_the_nearest_of_the_grid(double factor) {
        PulseTrain train = Impairment.slowed(Trains.even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), factor);

        // The grid is 2 % wide.
        assertThat(scales(train, "pair-even").get(0)).isCloseTo(StrictMath.log(factor), within(0.0101));
    }

    @Test
    void one_length_is_drawn_towards_nominal_and_many_are_not() {
        assertThat(Clock.refined(0.1, 1)).isCloseTo(0.061, within(0.001));
        assertThat(Clock.refined(0.1, 200)).isCloseTo(0.0997, within(0.0001));
    }

    @Test
    void nominal_costs_nothing_and_a_tenth_off_half_a_nat() {
        assertThat(Clock.cost(0)).isZero();
        assertThat(Clock.cost(0.1)).isCloseTo(0.5, within(1e-9));
        assertThat(Clock.cost(-0.1)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void no_clock_is_believed_that_is_further_off_than_any_sender() {
        assertThat(Clock.refined(0.9, 1000)).isEqualTo(0.3);
        assertThat(Clock.refined(-0.9, 1000)).isEqualTo(-0.3);
    }

    @Test
    void of_several_likely_scales_three_at_most_are_tried_the_cheapest_first() {
        assertThat(scales(Trains.even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even"))
                .hasSize(1);
        // One gap that may be each of several kinds at some clock.
        PulseTrain strange = Trains.of("1 0.38 3.3 0.38 1");
        assertThat(scales(strange, "pair-even")).hasSizeBetween(2, 3);
        assertThat(scales(strange, "long-short").get(0)).isCloseTo(0, within(0.13));
    }

    @Test
    void the_widest_scales_are_tried_as_well() {
        PulseTrain fast = Impairment.slowed(Trains.even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), 0.742);
        PulseTrain slow = Impairment.slowed(Trains.even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), 1.348);

        assertThat(scales(fast, "pair-even").get(0)).isCloseTo(-0.3, within(1e-9));
        assertThat(scales(slow, "pair-even").get(0)).isCloseTo(0.3, within(1e-9));
    }
}
