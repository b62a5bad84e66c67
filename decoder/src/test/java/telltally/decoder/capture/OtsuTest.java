package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OtsuTest {
    /** The image of scikit-image's own test (skimage/filters/tests/test_thresholding.py): threshold 2. */
    @Test
    void the_small_image_of_a_public_library_is_parted_at_2() {
        int[] image = {0, 0, 1, 3, 5, 0, 1, 4, 3, 4, 1, 2, 5, 4, 1, 2, 4, 5, 2, 1, 4, 5, 1, 0, 0};
        int[] counts = new int[6];
        for (int grey : image) {
            counts[grey]++;
        }
        assertThat(Otsu.lastLowBin(counts)).isEqualTo(2);
    }

    /** Two normal distributions, 64 and 192 with deviation 15: 127 (JuliaImages HistogramThresholding.jl, test/otsu.jl). */
    @Test
    void two_equal_normal_distributions_are_parted_half_way() {
        int[] counts = new int[256];
        for (int grey = 0; grey < 256; grey++) {
            counts[grey] = (int) Math.round(1e8 * (bell(grey, 64) + bell(grey, 192)));
        }
        assertThat(Otsu.lastLowBin(counts)).isEqualTo(127);
    }

    private static double bell(double grey, double mean) {
        return Math.exp(-(grey - mean) * (grey - mean) / (2 * 15 * 15));
    }

    @Test
    void it_is_the_split_with_the_least_variance_within_the_classes() {
        int[] counts = {8, 7, 2, 6, 9, 4};
        int best = 0;
        for (int split = 0; split < 5; split++) {
            best = within(counts, split) < within(counts, best) ? split : best;
        }
        assertThat(Otsu.lastLowBin(counts)).isEqualTo(best);
    }

    /** Straight from the definition, which is the other way round than what is computed. */
    private static double within(int[] counts, int lastLow) {
        return squares(counts, 0, lastLow) + squares(counts, lastLow + 1, counts.length - 1);
    }

    private static double squares(int[] counts, int from, int to) {
        double all = 0;
        double sum = 0;
        for (int i = from; i <= to; i++) {
            all += counts[i];
            sum += i * (double) counts[i];
        }
        double squares = 0;
        for (int i = from; i <= to; i++) {
            squares += counts[i] * (i - sum / all) * (i - sum / all);
        }
        return squares;
    }

    @Test
    void equal_values_have_themselves_as_threshold() {
        assertThat(Otsu.threshold(new double[] {3, 3, 3}, 3)).isEqualTo(3);
    }

    /** Bins of 10 / 256: the four values lie in bins 0, 76, 204 and 255; the threshold is where bin 76 ends. */
    @Test
    void the_threshold_is_the_end_of_the_last_low_bin() {
        assertThat(Otsu.threshold(new double[] {2, 5, 10, 12}, 4)).isEqualTo(2 + 77 * 10 / 256.0);
    }

    @Test
    void only_the_first_values_are_parted() {
        assertThat(Otsu.threshold(new double[] {0, 1, 99, -99}, 2)).isEqualTo(1 / 256.0);
    }

    @Test
    void of_several_equal_splits_the_first_is_taken() {
        assertThat(Otsu.lastLowBin(0, 5, 0, 0, 5, 0)).isEqualTo(1);
    }

    @Test
    void what_lies_in_one_bin_is_not_parted() {
        assertThat(Otsu.lastLowBin(0, 0, 7)).isZero();
    }
}
