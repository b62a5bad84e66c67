package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Voltage by block. A step is the difference over four blocks; one that is spread over them lies in their middle. */
class VoltageStepsTest {
    /** Up or down by a height each, in four equal parts around a block, and steady otherwise. */
    private static double[] spread(int[] blocks, double... heights) {
        double[] slow = new double[200];
        for (int i = 0; i < blocks.length; i++) {
            for (int block = 0; block < slow.length; block++) {
                slow[block] += heights[i] * Math.max(0, Math.min(1, (block - blocks[i] + 2) / 4.0));
            }
        }
        return slow;
    }

    private static VoltageSteps steps(int[] blocks, double... heights) {
        return new VoltageSteps(spread(blocks, heights));
    }

    @Test
    void steps_are_found_in_their_middle_with_their_direction_and_usual_size() {
        VoltageSteps steps = steps(new int[] {40, 80, 120}, 1, -1, 1.5);
        assertThat(steps.blocks).containsExactly(40, 80, 120);
        assertThat(steps.up).containsExactly(true, false, true);
        assertThat(steps.usual).isEqualTo(1);
        assertThat(steps.repeated).isZero();
        assertThat(steps.clear()).isTrue();
    }

    /** Squares: over four blocks they rise by 16, 24 and so on to 144; the median distance from the median, 80, is 32. */
    @Test
    void noise_is_the_deviation_of_all_differences() {
        double[] squares = new double[21];
        Arrays.setAll(squares, i -> (double) i * i);
        assertThat(new VoltageSteps(squares).noise).isCloseTo(1.4826 * 32, within(1e-12));
    }

    @Test
    void a_steady_voltage_has_no_steps() {
        VoltageSteps none = new VoltageSteps(new double[50]);
        assertThat(none.blocks).isEmpty();
        assertThat(none.usual).isZero();
        assertThat(none.clear()).isFalse();
        assertThat(none.heldShare()).isEqualTo(1);
    }

    @Test
    void fewer_blocks_than_a_step_takes_have_none() {
        assertThat(new VoltageSteps(new double[] {0, 0, 1, 1}).blocks).isEmpty();
        assertThat(new VoltageSteps(new double[] {0, 0, 1, 1, 1}).blocks).containsExactly(2);
    }

    /** Of 0.5, 1 and 1 the usual is 1. */
    @Test
    void half_of_the_usual_step_is_one_and_less_is_not() {
        assertThat(steps(new int[] {40, 80, 120}, 1, -1, 0.5).blocks).containsExactly(40, 80, 120);
        assertThat(steps(new int[] {40, 80, 120}, 1, -1, 0.484375).blocks).containsExactly(40, 80);
    }

    /** The greatest, 3, would leave out all below 1.5; the median of 1.5, 1.5, 1.5 and 3 asks for 0.75 only. */
    @Test
    void one_step_that_is_too_great_does_not_hide_the_usual_ones() {
        assertThat(steps(new int[] {30, 60, 90, 120, 150}, 1.5, -1.5, 3, -1.5, 1).blocks)
                .containsExactly(30, 60, 90, 120, 150);
    }

    /** By turns 0 and 0.25 for four blocks each: differences of 0.25 up and down, six deviations of which are over 1. */
    @Test
    void a_step_within_six_deviations_of_the_noise_is_none() {
        assertThat(new VoltageSteps(noisy(1)).blocks).isEmpty();
        assertThat(new VoltageSteps(noisy(1)).usual).isZero();
        assertThat(new VoltageSteps(noisy(9)).blocks).hasSize(1);
    }

    private static double[] noisy(double height) {
        double[] slow = spread(new int[] {100}, height);
        for (int i = 0; i < slow.length; i++) {
            slow[i] += i / 4 % 2 * 0.25;
        }
        return slow;
    }

    @Test
    void a_step_the_same_way_as_the_one_before_is_left_out_and_counted() {
        VoltageSteps steps = steps(new int[] {30, 60, 90, 120}, 1, 1, -1, -1);
        assertThat(steps.blocks).containsExactly(30, 90);
        assertThat(steps.repeated).isEqualTo(2);
    }

    @Test
    void one_repeated_step_for_five_good_ones_is_still_clear() {
        assertThat(steps(new int[] {20, 40, 60, 80, 100, 120}, 1, 1, -1, 1, -1, 1).repeated)
                .isEqualTo(1);
        assertThat(steps(new int[] {20, 40, 60, 80, 100, 120}, 1, 1, -1, 1, -1, 1)
                        .clear())
                .isTrue();
        assertThat(steps(new int[] {20, 40, 60, 80, 100}, 1, 1, -1, 1, -1).clear())
                .isFalse();
    }

    @Test
    void one_step_is_not_clear_and_two_are() {
        assertThat(steps(new int[] {40}, 1).clear()).isFalse();
        assertThat(steps(new int[] {40, 80}, 1, -1).clear()).isTrue();
    }

    @Test
    void differences_the_same_way_within_four_blocks_are_one_step_and_the_greatest_counts() {
        assertThat(differences(10, 1, 14, 0.75).blocks).containsExactly(12);
        assertThat(differences(10, 1, 14, 0.75).repeated).isZero();
        assertThat(differences(10, 1, 14, 1).blocks).containsExactly(12);
        assertThat(differences(10, 1, 14, 1.25).blocks).containsExactly(16);
        assertThat(differences(10, -1, 14, -1.25).blocks).containsExactly(16);
        assertThat(differences(10, 1, 15, 0.75).repeated).isEqualTo(1);
    }

    @Test
    void the_other_way_it_is_another_step_at_once() {
        assertThat(differences(10, 1, 11, -1).blocks).containsExactly(12, 13);
    }

    @Test
    void a_step_may_be_the_very_first_thing() {
        assertThat(differences(0, 1, 3, 0.75).blocks).containsExactly(2);
        assertThat(differences(0, 1, 3, 0.75).repeated).isZero();
    }

    /** A voltage that differs from that four blocks later in two places only. */
    private static VoltageSteps differences(int first, double rise, int second, double other) {
        double[] slow = new double[100];
        for (int block = 4; block < slow.length; block++) {
            slow[block] = slow[block - 4] + (block - 4 == first ? rise : 0) + (block - 4 == second ? other : 0);
        }
        return new VoltageSteps(slow);
    }

    /** Four blocks before the first step 0.25, four after it 2.25; before the second 1.05 are left: 0.4 of the step. */
    @Test
    void what_is_left_of_a_step_is_told_by_the_voltage_before_the_next() {
        VoltageSteps steps = new VoltageSteps(through(38, 0.25, 42, 2.25, 44, 2.25, 76, 1.05, 78, 1.05, 82, -0.95));
        assertThat(steps.blocks).containsExactly(40, 80);
        assertThat(steps.heldShare()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void a_steady_voltage_holds_all_of_a_step() {
        assertThat(steps(new int[] {40, 80, 120}, 1, -1, 1).heldShare()).isCloseTo(1, within(1e-12));
    }

    /** A quarter is left of this step when the next comes; with less than 17 blocks between them it does not count. */
    @Test
    void steps_close_to_each_other_do_not_tell_what_is_held() {
        assertThat(fading(56).heldShare()).isEqualTo(1);
        assertThat(fading(57).heldShare()).isCloseTo(0.25, within(1e-12));
    }

    /** Up by 1 in block 40, and down by 1 in another one. */
    private static VoltageSteps fading(int second) {
        VoltageSteps steps =
                new VoltageSteps(through(38, 0, 42, 1, 44, 1, second - 4, 0.25, second - 2, 0.25, second + 2, -0.75));
        assertThat(steps.blocks).containsExactly(40, second);
        return steps;
    }

    /** Straight lines through points, a block and a voltage each; steady before the first and after the last. */
    private static double[] through(double... points) {
        double[] slow = new double[200];
        for (int block = 0; block < slow.length; block++) {
            int after = 0;
            while (after < points.length && points[after] <= block) {
                after += 2;
            }
            if (after == 0 || after == points.length) {
                slow[block] = points[after == 0 ? 1 : after - 1];
            } else {
                double share = (block - points[after - 2]) / (points[after] - points[after - 2]);
                slow[block] = points[after - 1] + share * (points[after + 1] - points[after - 1]);
            }
        }
        return slow;
    }
}
