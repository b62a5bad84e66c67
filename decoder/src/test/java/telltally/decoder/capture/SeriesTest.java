package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.SampledSignal;

class SeriesTest {
    private static Series of(double... values) {
        long[] atNanos = new long[values.length];
        Arrays.setAll(atNanos, i -> 100L * i);
        return new Series(atNanos, values, 1);
    }

    private static Series scaled(double... values) {
        long[] atNanos = new long[values.length];
        Arrays.setAll(atNanos, i -> 100L * i);
        return Series.of(SampledSignal.of(atNanos, values));
    }

    @Test
    void time_counts_from_the_first_sample_and_the_greatest_size_becomes_1() {
        Series series = Series.of(SampledSignal.of(new long[] {-50, 0, 70}, new double[] {2, -8, 4}));
        assertThat(series.atNanos).containsExactly(0, 50, 120);
        assertThat(series.values).containsExactly(0.25, -1, 0.5);
        assertThat(series.unit).isEqualTo(8);
    }

    @Test
    void nothing_but_zeros_stays_zeros() {
        Series series = scaled(0, 0, 0);
        assertThat(series.values).containsExactly(0, 0, 0);
        assertThat(series.unit).isZero();
        assertThat(series.steady()).isTrue();
    }

    @Test
    void one_other_value_is_not_steady() {
        assertThat(of(0.5, 0.5, 0.25).steady()).isFalse();
        assertThat(of(0.5, 0.5, 0.5).steady()).isTrue();
    }

    @Test
    void of_five_thousand_samples_the_outermost_at_either_end_is_brought_to_the_next() {
        double[] values = new double[5000];
        Arrays.setAll(values, i -> i % 2 == 0 ? 1 : 2);
        values[77] = 4;
        values[99] = -4;
        Series series = scaled(values);
        assertThat(series.values[77]).isEqualTo(0.5);
        assertThat(series.values[99]).isEqualTo(0.25);
        assertThat(series.values[0]).isEqualTo(0.25);
        assertThat(series.values[1]).isEqualTo(0.5);
        assertThat(scaled(Arrays.copyOf(values, 4999)).values[77]).isEqualTo(1);
    }

    @Test
    void a_single_sample_that_is_all_there_is_beside_one_level_stays() {
        double[] values = new double[5000];
        values[2500] = 3;
        assertThat(scaled(values).values[2500]).isEqualTo(1);
    }

    @Test
    void the_spacing_is_the_median_step() {
        assertThat(new Series(new long[] {0, 10, 17, 900}, new double[4], 1).spacingNanos())
                .isEqualTo(10);
    }

    @Test
    void what_lasts_for_one_sample_falls_to_the_nearer_neighbour_at_the_ends_too() {
        Series series = of(9, 1, 5, 2, 2, 0, 3, 4, 9);
        assertThat(series.despiked().values).containsExactly(5, 5, 2, 2, 2, 2, 3, 4, 4);
        assertThat(series.values[2]).isEqualTo(5);
    }

    @Test
    void an_average_reaches_equally_far_to_both_sides_and_less_far_at_the_ends() {
        double[] values = {4, 1, 7, 1, 2, 9, 5};
        assertThat(of(values).averaged(5).values)
                .containsExactly(
                        new double[] {
                            4,
                            12 / 3.0,
                            (4 + 1 + 7 + 1 + 2) / 5.0,
                            (1 + 7 + 1 + 2 + 9) / 5.0,
                            (7 + 1 + 2 + 9 + 5) / 5.0,
                            (2 + 9 + 5) / 3.0,
                            5
                        },
                        within(1e-14));
    }

    @Test
    void filters_keep_instants_and_unit() {
        Series series = new Series(new long[] {0, 3, 9}, new double[] {1, 2, 3}, 7);
        assertThat(series.averaged(3).unit).isEqualTo(7);
        assertThat(series.averaged(3).atNanos).containsExactly(0, 3, 9);
        assertThat(series.despiked().unit).isEqualTo(7);
        assertThat(series.despiked().size()).isEqualTo(3);
    }
}
