package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class QuantilesTest {
    @Test
    void the_ends_the_middle_and_a_quarter_from_the_end() {
        Quantiles quantiles = new Quantiles(new double[] {50, 10, 40, 20, 30});
        assertThat(quantiles.at(0)).isEqualTo(10);
        assertThat(quantiles.median()).isEqualTo(30);
        assertThat(quantiles.at(0.75)).isEqualTo(40);
        assertThat(quantiles.at(1)).isEqualTo(50);
    }

    @Test
    void of_an_even_number_the_upper_of_the_two_middle_ones_is_the_median() {
        assertThat(new Quantiles(new double[] {1, 2, 3, 4}).median()).isEqualTo(3);
    }

    @Test
    void only_the_first_values_count_if_so_asked() {
        assertThat(new Quantiles(new double[] {1, 2, 3, 100, 100, 100}, 3).at(1))
                .isEqualTo(3);
    }

    @Test
    void nothing_has_no_quantile() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Quantiles(new double[] {1}, 0))
                .withMessage("a quantile of nothing");
    }

    @Test
    void of_forty_thousand_values_every_second_is_taken() {
        double[] values = new double[40_001];
        Arrays.setAll(values, i -> i % 2 == 0 ? i : 1e9);
        assertThat(new Quantiles(values, 40_000).at(1)).isEqualTo(39_998);
        assertThat(new Quantiles(values, 40_001).at(1)).isEqualTo(40_000);
        assertThat(new Quantiles(values, 39_999).at(1)).isEqualTo(1e9);
    }

    /**
     * The median absolute deviation of 1, 1, 2, 2, 4, 6, 9 is 1, an example of many textbooks (from memory): their
     * distances from the median, 2, are 1, 1, 0, 0, 2, 4, 7. The factor is 1 over the upper quartile of the standard
     * normal distribution, here Hipparchus's.
     */
    @Test
    void the_deviation_is_that_of_a_normal_distribution_with_the_same_median_deviation() {
        double deviation = new Quantiles(new double[] {6, 1, 2, 9, 1, 4, 2}).deviation();
        double quartile = new NormalDistribution(0, 1).inverseCumulativeProbability(0.75);
        assertThat(deviation).isCloseTo(1 / quartile, within(5e-5));
    }
}
