package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.inference.AlternativeHypothesis;
import org.hipparchus.stat.inference.BinomialTest;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Distributions are judged by Hipparchus; a fixed seed must not be among the 1 % that look worst. */
class TapTest {
    private final PulseTrain flashes = Trains.flashes(10_000);

    @Test
    void every_press_and_release_lags_by_the_fingers_normal() {
        PulseTrain keyed = new TapAlong(Finger.reacting()).applyTo(flashes, Chance.of(21));
        double[] lags = IntStream.range(0, keyed.edgeCount())
                .mapToDouble(i -> keyed.edgeNanos(i) - flashes.edgeNanos(i))
                .toArray();

        assertThat(lags).hasSize(20_000);
        assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(231e6, 45e6), lags, false))
                .isGreaterThan(0.01);
    }

    @Test
    void missed_taps_are_binomial() {
        PulseTrain keyed = new TapAlong(new Finger(0, 0, 0.04, 0)).applyTo(flashes, Chance.of(22));

        assertThat(new BinomialTest()
                        .binomialTest(10_000, 10_000 - keyed.edgeCount() / 2, 0.04, AlternativeHypothesis.TWO_SIDED))
                .isGreaterThan(0.01);
    }

    @Test
    void a_doubled_hold_lets_go_for_60_ms() {
        PulseTrain keyed = new TapAlong(new Finger(0, 0, 0, 1))
                .applyTo(PulseTrain.of(false, SECOND, 300_000_000, 600_000_000), Chance.of(1));

        assertThat(keyed).isEqualTo(PulseTrain.of(false, SECOND, 300 * MILLI, 400 * MILLI, 460 * MILLI, 600 * MILLI));
    }

    @Test
    void a_key_held_at_the_end_is_held_to_the_end() {
        assertThat(new TapAlong(new Finger(50, 0, 0, 0)).applyTo(PulseTrain.of(true, 1000, 100, 300), Chance.of(1)))
                .isEqualTo(PulseTrain.of(false, 1050, 50, 150, 350));
    }

    @Test
    void short_taps_mark_onsets_whatever_the_flashes_length() {
        PulseTrain keyed = ShortTaps.of(new Finger(200 * MILLI, 0, 0, 0)).applyTo(flashes, Chance.of(23));
        double[] holds = keyed.intervals().stream()
                .filter(Interval::lit)
                .mapToDouble(Interval::lengthNanos)
                .toArray();

        assertThat(holds).hasSize(10_000);
        assertThat(keyed.edgeNanos(0)).isEqualTo(6_200 * MILLI);
        assertThat(keyed.edgeNanos(2)).isEqualTo(7_200 * MILLI);
        assertThat(new KolmogorovSmirnovTest()
                        .kolmogorovSmirnovTest(new NormalDistribution(90e6, 13.5e6), holds, false))
                .isGreaterThan(0.01);
    }

    @Test
    void a_doubled_short_tap_comes_twice() {
        PulseTrain keyed = new ShortTaps(new Finger(0, 0, 0, 1), 90 * MILLI).applyTo(Trains.flashes(5), Chance.of(24));

        assertThat(keyed.edgeCount()).isEqualTo(20);
        assertThat(keyed.edgeNanos(2) - keyed.edgeNanos(1)).isEqualTo(80 * MILLI);
    }

    @Test
    void nobody_taps_for_a_lamp_that_was_lit_before_or_for_every_flash_of_a_burst() {
        PulseTrain.Builder burst = PulseTrain.builder().lit(SECOND).dark(SECOND);
        for (int i = 0; i < 20; i++) {
            burst.lit(5 * MILLI).dark(5 * MILLI);
        }
        PulseTrain keyed = ShortTaps.of(new Finger(0, 0, 0, 0)).applyTo(burst.build(), Chance.of(25));

        // 200 ms of burst hold two taps of about 90 ms with 30 ms between.
        assertThat(keyed.edgeCount()).isEqualTo(4);
        assertThat(keyed.edgeNanos(0)).isEqualTo(2 * SECOND);
    }
}
