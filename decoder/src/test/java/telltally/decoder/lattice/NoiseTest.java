package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoiseTest {
    private static final double STEP = 1.0 / 128;

    /**
     * Density and upper tail of the normal law at 0, 1, 2 and 3 as in Abramowitz and Stegun, Handbook of Mathematical
     * Functions, table 26.1; at a third of 3 the same table gives the outliers.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.398942280401433, 0.5, 0.398942280401433, 0.5",
        "3, 0.004431848411938, 0.001349898031630, 0.241970724519143, 0.158655253931457",
        "6, 6.075882849823e-9, 9.865876450377e-10, 0.053990966513188, 0.022750131948179",
    })
    void is_a_normal_law_with_one_length_in_a_hundred_of_thrice_the_width(
            double z, double density, double tail, double densityAtAThird, double tailAtAThird) {
        assertThat(Noise.density(z)).isCloseTo(0.99 * density + 0.01 * densityAtAThird / 3, within(1e-13));
        assertThat(Noise.density(-z)).isEqualTo(Noise.density(z));
        // What lies beyond nine deviations is left out: a hundredth of the tail beyond three.
        double expected = 0.99 * tail + 0.01 * (tailAtAThird - 0.001349898031630);
        assertThat(Noise.beyond(z)).isCloseTo(expected, within(2e-6));
        assertThat(Noise.beyond(-z)).isCloseTo(1 - expected - 0.01 * 2 * 0.001349898031630, within(2e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1.25, 3, 7.5, 8.9921875})
    void between_the_steps_of_the_table_densities_lie_on_a_line(double z) {
        double quarter = 0.75 * law(z) + 0.25 * law(z + STEP);
        assertThat(Noise.density(z + STEP / 4)).isCloseTo(quarter, within(1e-15));
    }

    /** The far end too: a recording that begins 8.98 deviations into a gap once weighed half as much again. */
    @ParameterizedTest
    @ValueSource(doubles = {-8.9921875, -3, -0.5, 0, 0.5, 3, 7.5, 8.96875, 8.98046875, 8.994140625, 8.999})
    void what_lies_beyond_is_the_area_under_the_density_to_the_end_of_its_reach(double z) {
        double area = tail(z) - 0.01 * Erf.erfc(3 / Math.sqrt(2)) / 2;
        assertThat(Noise.beyond(z)).isCloseTo(area, withinPercentage(0.005));
    }

    @Test
    void nothing_lies_farther_off_than_nine_deviations() {
        assertThat(Noise.density(9)).isZero();
        assertThat(Noise.density(-9)).isZero();
        assertThat(Noise.density(1e300)).isZero();
        assertThat(Noise.density(8.999)).isPositive();
        assertThat(Noise.beyond(-9)).isEqualTo(1);
        assertThat(Noise.beyond(-8.999)).isLessThan(1);
        assertThat(Noise.beyond(9)).isZero();
        assertThat(Noise.beyond(8.999)).isPositive();
    }

    @Test
    void what_is_no_number_is_impossible_as_a_length_and_certain_as_a_bound() {
        assertThat(Noise.density(Double.NaN)).isZero();
        assertThat(Noise.beyond(Double.NaN)).isEqualTo(1);
    }

    /** What lies beyond, of both widths and however far: by the complementary error function of Hipparchus. */
    private static double tail(double z) {
        return (0.99 * Erf.erfc(z / Math.sqrt(2)) + 0.01 * Erf.erfc(z / 3 / Math.sqrt(2))) / 2;
    }

    private static double law(double z) {
        double usual = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        double wide = Math.exp(-z * z / 18) / Math.sqrt(2 * Math.PI) / 3;
        return 0.99 * usual + 0.01 * wide;
    }
}
