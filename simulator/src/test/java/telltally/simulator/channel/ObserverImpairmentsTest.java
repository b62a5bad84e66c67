package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ExponentialDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.inference.AlternativeHypothesis;
import org.hipparchus.stat.inference.BinomialTest;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Distributions are judged by Hipparchus; a fixed seed must not be among the 1 % that look worst. */
class ObserverImpairmentsTest {
    private static final double WORST = 0.01;

    @Nested
    class Flashes {
        @Test
        void missed_flashes_are_binomial() {
            PulseTrain seen = new MissedFlashes(0.1).applyTo(Trains.flashes(2000), Chance.of(11));

            assertThat(binomial(2000, 2000 - seen.edgeCount() / 2, 0.1)).isGreaterThan(WORST);
        }

        @Test
        void a_missed_flash_leaves_one_gap_of_a_second_and_a_half() {
            PulseTrain seen = new MissedFlashes(0.2).applyTo(Trains.flashes(50), Chance.of(12));

            assertThat(seen.intervals()).anyMatch(gap -> !gap.lit() && gap.lengthNanos() == 1_500 * MILLI);
            assertThat(seen.endNanos()).isEqualTo(Trains.flashes(50).endNanos());
        }

        @Test
        void ghost_flashes_are_binomial_over_gaps() {
            PulseTrain sent = Trains.flashes(2000);
            PulseTrain seen = GhostFlashes.ofReflections(0.05).applyTo(sent, Chance.of(13));

            // 2001 gaps, all with room for the longest ghost.
            assertThat(binomial(2001, (seen.edgeCount() - sent.edgeCount()) / 2, 0.05))
                    .isGreaterThan(WORST);
        }

        @Test
        void ghost_flashes_last_evenly_between_their_limits() {
            PulseTrain seen = GhostFlashes.ofReflections(1).applyTo(Trains.flashes(500), Chance.of(14));
            double[] lengths = flashLengths(seen, length -> length != SECOND / 2);

            assertThat(lengths).hasSize(501);
            assertThat(new KolmogorovSmirnovTest()
                            .kolmogorovSmirnovTest(
                                    new UniformRealDistribution(40 * MILLI, 150 * MILLI), lengths, false))
                    .isGreaterThan(WORST);
        }

        @Test
        void a_gap_too_short_for_a_ghost_stays_dark() {
            PulseTrain burst = PulseTrain.of(true, 30 * MILLI, 10 * MILLI, 20 * MILLI);

            assertThat(GhostFlashes.ofReflections(1).applyTo(burst, Chance.of(15)))
                    .isEqualTo(burst);
        }
    }

    @Nested
    class Watching {
        private final PulseTrain train = PulseTrain.of(false, 100, 20, 40, 60, 80);

        @Test
        void who_comes_late_starts_with_the_level_of_that_instant() {
            assertThat(new LateStart(30).applyTo(train, Chance.of(1))).isEqualTo(PulseTrain.of(true, 70, 10, 30, 50));
        }

        @Test
        void who_comes_after_the_end_still_gets_the_last_tenth() {
            assertThat(new LateStart(SECOND).applyTo(train, Chance.of(1))).isEqualTo(PulseTrain.of(false, 10));
        }

        @Test
        void who_stops_early_loses_the_end() {
            assertThat(new EarlyStop(30).applyTo(train, Chance.of(1))).isEqualTo(PulseTrain.of(false, 70, 20, 40, 60));
            assertThat(new EarlyStop(SECOND).applyTo(train, Chance.of(1))).isEqualTo(PulseTrain.of(false, 10));
        }

        @Test
        void glare_hides_one_stretch_anywhere() {
            PulseTrain steady = PulseTrain.of(true, 10 * SECOND);
            double[] starts = IntStream.range(0, 500)
                    .mapToDouble(seed -> new Glare(2 * SECOND)
                            .applyTo(steady, Chance.of(seed))
                            .edgeNanos(0))
                    .toArray();

            assertThat(new KolmogorovSmirnovTest()
                            .kolmogorovSmirnovTest(new UniformRealDistribution(0, 8 * SECOND), starts, false))
                    .isGreaterThan(WORST);
            assertThat(new Glare(11 * SECOND).applyTo(steady, Chance.of(1)))
                    .isEqualTo(PulseTrain.of(false, 10 * SECOND));
        }

        @Test
        void contact_is_lost_and_comes_back_after_exponential_times() {
            PulseTrain seen = new LooseContact(2, 30 * MILLI).applyTo(PulseTrain.of(true, 600 * SECOND), Chance.of(16));
            double[] losses = lengths(seen, false);
            double[] contacts = lengths(seen, true);

            assertThat(losses.length).isGreaterThan(1000);
            assertThat(new KolmogorovSmirnovTest()
                            .kolmogorovSmirnovTest(new ExponentialDistribution(30 * MILLI), losses, false))
                    .isGreaterThan(WORST);
            assertThat(new KolmogorovSmirnovTest()
                            .kolmogorovSmirnovTest(new ExponentialDistribution(SECOND / 2.0), contacts, false))
                    .isGreaterThan(WORST);
        }
    }

    @Test
    void a_clock_that_drifts_one_percent_a_minute_shows_a_minute_as_60_3_seconds() {
        PulseTrain drifted =
                new ClockDrift(0.01).applyTo(PulseTrain.of(false, 120 * SECOND, 60 * SECOND), Chance.of(1));

        // The integral of 1 + 0.01 t/min: 60 * 1.005 s and 120 * 1.01 s.
        assertThat(drifted).isEqualTo(PulseTrain.of(false, 121_200 * MILLI, 60_300 * MILLI));
    }

    @Test
    void a_drifting_clock_ends_at_half_the_length() {
        PulseTrain drifted = new ClockDrift(-1).applyTo(PulseTrain.of(false, 600 * SECOND, 300 * SECOND), Chance.of(1));

        assertThat(drifted.endNanos() - drifted.edgeNanos(0)).isEqualTo(150 * SECOND);
    }

    @Test
    void a_camera_moves_every_edge_to_a_frame() {
        PulseTrain filmed = new CameraFrames(30, 10 * MILLI, 0.5).applyTo(Trains.flashes(20), Chance.of(17));

        assertThat(filmed.edgeCount()).isEqualTo(40);
        for (Interval stretch : filmed.intervals().subList(1, 40)) {
            // 0.5 s is 15 frames; 2 ns for rounding two instants down.
            assertThat(stretch.lengthNanos()).isBetween(500 * MILLI - 2, 500 * MILLI + 2);
        }
    }

    @Test
    void a_camera_turns_a_burst_faster_than_its_frames_into_nonsense_but_not_into_more_edges_than_frames() {
        PulseTrain.Builder burst = PulseTrain.builder();
        for (int i = 0; i < 100; i++) {
            burst.lit(5 * MILLI).dark(5 * MILLI);
        }
        PulseTrain filmed = new CameraFrames(30, 3 * MILLI, 0.5).applyTo(burst.build(), Chance.of(18));

        assertThat(filmed.edgeCount()).isLessThan(30);
    }

    private static double binomial(int tries, int found, double probability) {
        return new BinomialTest().binomialTest(tries, found, probability, AlternativeHypothesis.TWO_SIDED);
    }

    private static double[] flashLengths(PulseTrain train, java.util.function.LongPredicate wanted) {
        return train.intervals().stream()
                .filter(Interval::lit)
                .mapToLong(Interval::lengthNanos)
                .filter(wanted)
                .asDoubleStream()
                .toArray();
    }

    /** Lengths of one level, without the last stretch, which the end of the recording cuts off. */
    private static double[] lengths(PulseTrain train, boolean lit) {
        return train.intervals().subList(0, train.edgeCount()).stream()
                .filter(stretch -> stretch.lit() == lit)
                .mapToDouble(Interval::lengthNanos)
                .toArray();
    }
}
