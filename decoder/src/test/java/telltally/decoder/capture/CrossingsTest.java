package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Threshold 0.5, margin 0.25 throughout; both are binary fractions, so that borders are exact. */
class CrossingsTest {
    private static Crossings of(double... values) {
        return new Crossings(values, 0.5, 0.25);
    }

    private static long[] thousands(int count) {
        long[] atNanos = new long[count];
        Arrays.setAll(atNanos, i -> 1000L * i);
        return atNanos;
    }

    /** Levels 0 and 1 by turns, from 0, that last so many samples each. */
    private static Crossings lasting(int... samples) {
        double[] values = new double[Arrays.stream(samples).sum()];
        int at = 0;
        for (int stretch = 0; stretch < samples.length; stretch++) {
            Arrays.fill(values, at, at + samples[stretch], stretch % 2);
            at += samples[stretch];
        }
        return of(values);
    }

    @Test
    void edges_lie_where_the_straight_line_between_samples_meets_the_threshold() {
        Crossings crossings = of(0, 0, 1, 1, -1, 0);
        assertThat(crossings.count()).isEqualTo(2);
        assertThat(crossings.aboveAtStart()).isFalse();
        // Half-way up, a quarter of the way down.
        assertThat(crossings.instants(thousands(6))).containsExactly(1500, 3250);
    }

    @Test
    void what_stays_within_the_margin_is_no_crossing() {
        assertThat(of(0, 0.75, 0).count()).isZero();
        assertThat(of(1, 0.25, 1).count()).isZero();
        assertThat(of(0, 0.8125, 0).count()).isEqualTo(2);
        assertThat(of(1, 0.1875, 1).count()).isEqualTo(2);
    }

    @Test
    void an_edge_lies_where_the_threshold_was_crossed_last_before_the_margin_was() {
        Crossings crossings = of(0, 0.625, 0.375, 0.625, 0.6875, 1);
        assertThat(crossings.instants(thousands(6))).containsExactly(2500);
    }

    @Test
    void a_level_that_begins_within_the_margin_is_that_before_the_first_edge() {
        Crossings crossings = of(0.4375, 1, 1, 0);
        assertThat(crossings.count()).isEqualTo(1);
        assertThat(crossings.aboveAtStart()).isTrue();
    }

    @Test
    void without_an_edge_the_first_value_tells_the_level_and_the_threshold_itself_is_above() {
        assertThat(of(0, 0).aboveAtStart()).isFalse();
        assertThat(of(1, 1).aboveAtStart()).isTrue();
        assertThat(of(0.5, 0.5).aboveAtStart()).isTrue();
        assertThat(of(0.5, 0.5).count()).isZero();
    }

    @Test
    void an_edge_is_later_than_the_sample_before_it_and_no_later_than_the_one_after() {
        assertThat(of(0, 0.5, 1).instants(new long[] {7, 1007, 2007})).containsExactly(1007);
        assertThat(of(1, 0.5, 0).instants(new long[] {7, 1007, 2007})).containsExactly(1008);
    }

    @Test
    void a_stretch_of_one_sample_among_long_ones_is_a_spike() {
        assertThat(lasting(9, 1, 5, 9).hasSpikes()).isTrue();
        assertThat(lasting(9, 1, 4, 9).hasSpikes()).isFalse();
        assertThat(lasting(9, 2, 5, 9).hasSpikes()).isFalse();
    }

    @Test
    void one_short_flash_alone_is_no_spike() {
        assertThat(lasting(9, 1, 9).hasSpikes()).isFalse();
        assertThat(lasting(9, 9).hasSpikes()).isFalse();
        assertThat(lasting(9).hasSpikes()).isFalse();
    }
}
