package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;

class BlinkingTest {
    private static final FlashFormat LOOP = Trains.shipped("pair-loop");

    private static Optional<Attempt> of(String darkAndLitSeconds) {
        return Blinking.read(new Flashes(Trains.of(darkAndLitSeconds), new Lengths(LOOP)), LOOP);
    }

    private static String blinks(int count) {
        return "0.25 ".repeat(2 * count - 1) + "1";
    }

    @Test
    void four_even_flashes_are_blinking_and_three_are_not() {
        assertThat(of("2 " + blinks(3))).isEmpty();
        Attempt attempt = of("2 " + blinks(4)).orElseThrow();
        assertThat(attempt.codes()).isEqualTo(Map.of(Segment.CODES, List.of()));
        assertThat(attempt.scale()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_format_without_blinking_has_none() {
        FlashFormat even = Trains.shipped("pair-even");
        assertThat(Blinking.read(new Flashes(Trains.of("2 " + blinks(9)), new Lengths(even)), even))
                .isEmpty();
    }

    /** Each length is worth what chance would have cost; how many there are is worth nothing; the steadiness is. */
    @Test
    void the_gain_grows_with_every_length_that_fits() {
        double steady = 6 * Math.log(4);
        assertThat(of("2 " + blinks(4)).orElseThrow().gain()).isCloseTo(7 * Cost.CHANCE - 2.7 + steady, within(1e-6));
        double each = Cost.CHANCE + Math.log(4);
        assertThat(of("2 " + blinks(5)).orElseThrow().gain())
                .isCloseTo(of("2 " + blinks(4)).orElseThrow().gain() + 2 * each, within(1e-6));
    }

    @Test
    void a_strange_length_costs_so_much_and_no_more() {
        String odd = "2 0.25 0.25 0.25 9 0.25 0.25 0.25 0.25 0.25 1";
        // One of nine lengths is an accident: its gain is lost, and six nats with it.
        double eight = 8 * Cost.CHANCE - 2.7 + 7 * Math.log(4);
        assertThat(of(odd).orElseThrow().gain()).isCloseTo(eight + Cost.CHANCE - 6, within(1e-6));
    }

    @Test
    void a_slow_clock_is_measured_on_what_blinks() {
        Attempt attempt = of("2 " + "0.275 ".repeat(39) + "1").orElseThrow();
        assertThat(attempt.scale()).isCloseTo(Math.log(1.1), within(0.003));
        // The clock is measured on lengths that can be blinks: a light of half a second, twice as long, is none.
        Attempt disturbed = of("2 0.55 " + "0.275 ".repeat(39) + "0.55 0.275 9").orElseThrow();
        assertThat(disturbed.scale()).isCloseTo(Math.log(1.1), within(0.003));
    }

    @Test
    void a_bulb_check_before_it_is_steady_light_of_its_own() {
        Attempt attempt = of("0.5 2.0 1 " + blinks(6)).orElseThrow();
        List<Group> groups = attempt.transcript().get().groups();
        assertThat(groups).hasSize(2);
        assertThat(groups.get(0).startNanos()).isEqualTo(500_000_000L);
        assertThat(groups.get(0).endNanos()).isEqualTo(2_500_000_000L);
        assertThat(groups.get(1).startNanos()).isEqualTo(3_500_000_000L);
        assertThat(groups.get(1).endNanos()).isEqualTo(3_500_000_000L + 11 * 250_000_000L);
        assertThat(groups.get(1).probability()).isBetween(0.999, 0.9997);
        assertThat(groups.get(1).digits()).isEmpty();
    }

    /** Three times as long, as a logarithm 1.1: 0.751 s. */
    @Test
    void a_light_before_it_that_is_only_three_times_as_long_is_one_of_the_blinks() {
        assertThat(of("1 0.74 0.25 " + blinks(4))
                        .orElseThrow()
                        .transcript()
                        .get()
                        .groups())
                .hasSize(1);
        assertThat(of("1 0.76 0.25 " + blinks(4))
                        .orElseThrow()
                        .transcript()
                        .get()
                        .groups())
                .hasSize(2);
        assertThat(of("1 0.76 0.25 " + blinks(3))).isEmpty();
    }

    @Test
    void what_is_hardly_better_than_chance_is_not_sure() {
        Attempt attempt = of("1 0.3 0.37 0.2 0.34 0.31 0.2 0.3 1").orElseThrow();
        Group group = attempt.transcript().get().groups().get(0);
        assertThat(attempt.gain()).isBetween(-3.0, 3.0);
        assertThat(group.probability()).isCloseTo(0.9997 / (1 + Math.exp(-attempt.gain())), within(1e-9));
    }
}
