package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

class SenderImpairmentsTest {
    @Test
    void a_slow_clock_stretches_every_instant() {
        assertThat(new ClockScale(1.02).applyTo(PulseTrain.of(false, 300, 100, 150), Chance.of(1)))
                .isEqualTo(PulseTrain.of(false, 306, 102, 153));
    }

    @Test
    void a_clock_that_stands_still_is_refused() {
        assertThatThrownBy(() -> new ClockScale(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("from 0.1 to 10");
        assertThatThrownBy(() -> new Jitter(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void jittered_lengths_are_normal_about_the_true_length() {
        PulseTrain jittered = new Jitter(0.08).applyTo(Trains.flashes(10_000), Chance.of(2));
        double[] lengths = jittered.intervals().subList(1, jittered.edgeCount()).stream()
                .mapToDouble(Interval::lengthNanos)
                .toArray();

        // Hipparchus says how likely a worse fit would be; 1 % with a fixed seed.
        assertThat(new KolmogorovSmirnovTest()
                        .kolmogorovSmirnovTest(new NormalDistribution(0.5e9, 0.04e9), lengths, false))
                .isGreaterThan(0.01);
    }

    @Test
    void jitter_leaves_the_dark_before_and_after_alone() {
        PulseTrain jittered = new Jitter(0.3).applyTo(Trains.flashes(50), Chance.of(3));

        assertThat(jittered.edgeNanos(0)).isEqualTo(6 * Trains.SECOND);
        assertThat(jittered.endNanos() - jittered.edgeNanos(99)).isEqualTo(6 * Trains.SECOND);
    }

    @Test
    void a_wild_jitter_leaves_a_fifth_of_every_stretch() {
        PulseTrain jittered = new Jitter(1).applyTo(Trains.flashes(500), Chance.of(4));
        long shortest = jittered.intervals().stream()
                .mapToLong(Interval::lengthNanos)
                .min()
                .orElseThrow();

        assertThat(jittered.edgeCount()).isEqualTo(1000);
        assertThat(shortest).isEqualTo(Trains.SECOND / 10);
    }

    @Test
    void a_bounce_is_over_in_time_and_ends_at_the_right_level() {
        PulseTrain clean = Trains.flashes(200);
        PulseTrain bounced = new ContactBounce(10 * Trains.MILLI, 4).applyTo(clean, Chance.of(5));

        assertThat(bounced.edgeCount()).isGreaterThan(clean.edgeCount() * 4);
        for (Interval stretch : clean.intervals()) {
            boolean first = stretch.startNanos() == 0;
            long settled = stretch.startNanos() + (first ? 0 : 10 * Trains.MILLI);
            long lit = bounced.litNanosBetween(settled, stretch.endNanos());
            assertThat(lit).isEqualTo(stretch.lit() ? stretch.endNanos() - settled : 0);
        }
    }

    @Test
    void the_number_of_bounces_is_evenly_spread() {
        PulseTrain clean = Trains.flashes(2000);
        PulseTrain bounced = new ContactBounce(10 * Trains.MILLI, 4).applyTo(clean, Chance.of(6));
        double meanContacts = (bounced.edgeCount() - clean.edgeCount()) / (2.0 * clean.edgeCount());

        // Evenly from 0 to 4: mean 2, variance 2; four standard errors over 4000 edges.
        assertThat(meanContacts).isBetween(2 - 4 * Math.sqrt(2 / 4000.0), 2 + 4 * Math.sqrt(2 / 4000.0));
    }
}
