package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class LengthsTest {
    private static Flashes flashes(double... darkAndLitSeconds) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < darkAndLitSeconds.length; i++) {
            long nanos = (long) (1e9 * darkAndLitSeconds[i]);
            if (i % 2 == 0) {
                pulses.dark(nanos);
            } else {
                pulses.lit(nanos);
            }
        }
        return Flashes.of(pulses.build(), true, 1_000_000, 1_000_000, 1000);
    }

    @Test
    void counts_like_lengths_together_flashes_apart_from_gaps() {
        Lengths lengths = new Lengths(flashes(1, 0.5, 0.5, 0.501, 2, 0.5, 0.5, 0.5, 1));
        assertThat(lengths.flashes).isEqualTo(4);
        assertThat(lengths.lit.times).containsExactly(4);
        assertThat(lengths.dark.times).containsExactlyInAnyOrder(2, 1);
    }

    @Property
    void a_length_stands_in_the_bin_of_its_logarithm(
            @ForAll @DoubleRange(min = 0.002, max = 900) @Scale(6) double seconds) {
        Lengths lengths = new Lengths(flashes(1, seconds, 1));
        int bin = lengths.lit.bins[0];
        double seen = ((long) (1e9 * seconds)) * 1e-9;
        double place = StrictMath.log(seen / Lengths.SHORTEST_SECONDS) * Lengths.BINS_PER_E;
        assertThat(place).isBetween(bin - 1e-6, bin + 1 + 1e-6);
    }

    @Test
    void what_lies_beyond_the_bins_stands_in_the_last() {
        Lengths lengths = new Lengths(flashes(1, 0.5, 5e6, 0.5, 1));
        assertThat(lengths.dark.bins).containsExactly(Lengths.BINS - 1);
    }

    @Test
    void of_many_flashes_the_first_three_hundred_are_counted() {
        double[] many = new double[2 * 305];
        for (int i = 0; i < many.length; i++) {
            many[i] = i < 2 * 300 ? 0.5 : 5;
        }
        Lengths lengths = new Lengths(flashes(many));

        assertThat(lengths.flashes).isEqualTo(300);
        assertThat(lengths.lit.times).containsExactly(300);
        assertThat(lengths.dark.times).containsExactly(299);
    }

    @Test
    void what_is_shorter_than_the_bins_stands_in_the_first() {
        PulseTrain train = PulseTrain.builder()
                .dark(1_000_000_000)
                .lit(10)
                .dark(1_000_000_000)
                .build();

        assertThat(new Lengths(Flashes.of(train, true, 1, 1, 10)).lit.bins).containsExactly(0);
    }
}
