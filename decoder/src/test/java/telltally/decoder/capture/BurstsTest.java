package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Loudness by block, 1 where nothing is to be heard: the floor is 1, what rises above 1.5 sticks out. */
class BurstsTest {
    private static double[] quiet() {
        double[] loudness = new double[400];
        Arrays.fill(loudness, 1);
        return loudness;
    }

    /** Bursts of one block each, 30 blocks apart, the first in block 10. */
    private static Bursts peaks(double... peaks) {
        double[] loudness = quiet();
        for (int i = 0; i < peaks.length; i++) {
            loudness[10 + 30 * i] = peaks[i];
        }
        return new Bursts(loudness);
    }

    private static int[] firstBlocks(Bursts bursts) {
        return bursts.all.stream().mapToInt(Bursts.Burst::firstBlock).toArray();
    }

    /** Two bursts above half of their peaks for so many blocks. */
    private static Bursts lasting(int first, int second) {
        double[] loudness = quiet();
        Arrays.fill(loudness, 50, 50 + first, 9);
        Arrays.fill(loudness, 150, 150 + second, 9);
        return new Bursts(loudness);
    }

    /** Median 2; the distances from it have the median 1, which is 1.4826 deviations. */
    @Test
    void the_floor_is_three_deviations_above_the_median() {
        assertThat(new Bursts(new double[] {1, 1, 2, 2, 4, 6, 9}).floor).isCloseTo(2 + 3 * 1.4826, within(1e-12));
    }

    @Test
    void silence_has_no_burst() {
        assertThat(new Bursts(quiet()).all).isEmpty();
        assertThat(new Bursts(quiet()).usualPeak()).isZero();
        assertThat(new Bursts(new double[400]).all).isEmpty();
    }

    @Test
    void half_as_much_again_as_the_floor_does_not_stick_out() {
        assertThat(firstBlocks(peaks(1.5))).isEmpty();
        assertThat(firstBlocks(peaks(1.51))).containsExactly(10);
    }

    @Test
    void a_burst_may_begin_in_the_first_block_and_end_in_the_last() {
        double[] loudness = quiet();
        loudness[0] = 9;
        loudness[399] = 9;
        assertThat(new Bursts(loudness).all).containsExactly(new Bursts.Burst(0, 9, 1), new Bursts.Burst(399, 9, 1));
    }

    @Test
    void what_is_fifteen_blocks_apart_is_one_burst_and_what_is_sixteen_apart_is_two() {
        double[] loudness = quiet();
        loudness[100] = 8;
        loudness[115] = 9;
        assertThat(new Bursts(loudness).all).containsExactly(new Bursts.Burst(100, 9, 2));
        loudness[115] = 1;
        loudness[116] = 9;
        assertThat(firstBlocks(new Bursts(loudness))).containsExactly(100, 116);
    }

    @Test
    void loud_blocks_are_those_above_half_of_the_peak() {
        double[] loudness = quiet();
        System.arraycopy(new double[] {2, 5, 5.5, 10, 6, 5, 2}, 0, loudness, 50, 7);
        // A click a quarter as loud: what is as loud as 2 belongs to clicks.
        loudness[200] = 2.5;
        assertThat(new Bursts(loudness).all)
                .containsExactly(new Bursts.Burst(50, 10, 3), new Bursts.Burst(200, 2.5, 1));
    }

    @Test
    void a_burst_is_loud_up_to_its_last_block() {
        double[] loudness = quiet();
        System.arraycopy(new double[] {6, 7, 10}, 0, loudness, 50, 3);
        assertThat(new Bursts(loudness).all).containsExactly(new Bursts.Burst(50, 10, 3));
    }

    /** From 1.5 to 2 is a ratio of 4 / 3, from 2 to 6 of 3: they are parted between 2 and 6. */
    @Test
    void noise_that_sticks_out_is_parted_from_clicks_on_release_at_the_widest_gap() {
        Bursts bursts = peaks(10, 6, 2, 10, 6, 10);
        assertThat(firstBlocks(bursts)).containsExactly(10, 40, 100, 130, 160);
        assertThat(bursts.usualPeak()).isEqualTo(10);
    }

    @Test
    void knocks_are_parted_from_clicks_that_are_all_as_loud_as_each_other() {
        assertThat(firstBlocks(peaks(10, 2, 10, 2.25, 10, 10))).containsExactly(10, 70, 130, 160);
    }

    @Test
    void clicks_of_a_quarter_of_the_louder_ones_are_not_taken_for_noise_however_wide_the_gap_is() {
        assertThat(firstBlocks(peaks(10, 2.5, 10, 2.5, 10))).containsExactly(10, 40, 70, 100, 130);
        assertThat(firstBlocks(peaks(10, 2.4375, 10, 2.4375, 10))).containsExactly(10, 70, 130);
    }

    /** From 1.5 to 3 is a ratio of 2; from 3 to 6 is another, from 3 to 5.5 is less; a quarter of 20 is 5. */
    @Test
    void of_two_gaps_the_wider_counts_and_of_equal_ones_the_lower() {
        assertThat(firstBlocks(peaks(20, 3, 20, 6, 20))).containsExactly(10, 40, 70, 100, 130);
        assertThat(firstBlocks(peaks(20, 3, 20, 5.5, 20))).containsExactly(10, 40, 70, 100, 130);
        assertThat(firstBlocks(peaks(20, 3, 20, 6.25, 20))).containsExactly(10, 70, 100, 130);
    }

    @Test
    void clicks_are_at_least_two() {
        assertThat(peaks(9).areClicks()).isFalse();
        assertThat(peaks(9, 9).areClicks()).isTrue();
    }

    @Test
    void bursts_of_25_blocks_are_clicks_and_longer_ones_are_not() {
        // Of two, the longer is the median.
        assertThat(lasting(1, 25).areClicks()).isTrue();
        assertThat(lasting(1, 26).areClicks()).isFalse();
    }

    @Test
    void the_usual_peak_is_the_median() {
        assertThat(peaks(8, 12, 9, 20, 10).usualPeak()).isEqualTo(10);
    }

    @Test
    void every_burst_is_found_in_order() {
        assertThat(firstBlocks(peaks(9, 9, 9, 9, 9, 9, 9, 9, 9, 9)))
                .containsExactly(IntStream.range(0, 10).map(i -> 10 + 30 * i).toArray());
    }
}
