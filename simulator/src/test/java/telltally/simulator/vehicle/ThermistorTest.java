package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermistorTest {
    /** Appendix C, table C-1 of a data logger probe's handbook: the curve that the coefficients belong to. */
    @ParameterizedTest
    @CsvSource({
        "-40, 336103.2",
        "-35, 242430.2",
        "-30, 176804.8",
        "-20, 97006.9",
        "-15, 72911.1",
        "-10, 55303.9",
        "-5, 42316.7",
        "0, 32650.9",
        "1, 31030.8"
    })
    void the_published_table_is_met(double celsius, double ohms) {
        // The coefficients are printed with seven digits and come within 0.0025 K of their own table at its cold end.
        assertThat(Thermistor.TEN_KILOHM.celsius(ohms)).isCloseTo(celsius, within(0.0025));
        // 0.0025 K are 0.017 percent of the resistance at -40 degrees, where the curve is steepest.
        assertThat(Thermistor.TEN_KILOHM.ohms(celsius)).isCloseTo(ohms, within(ohms * 0.00018));
    }

    /** Values of the inverse formula, worked out apart from this program. */
    @ParameterizedTest
    @CsvSource({"0, 32649.92", "25, 9999.99", "50, 3601.10", "100, 678.42"})
    void the_resistance_follows_the_inverse_formula(double celsius, double ohms) {
        assertThat(Thermistor.TEN_KILOHM.ohms(celsius)).isCloseTo(ohms, within(0.005));
    }

    /** Defaults of an instrument maker's calculator; the result from memory, confirmed by hand to ten digits. */
    @Test
    void three_points_give_the_coefficients_of_a_known_fit() {
        Thermistor fit = Thermistor.through(new double[] {5, 25, 45}, new double[] {25_000, 10_000, 4_000});

        assertThat(fit.a()).isCloseTo(2.108508173e-3, within(1e-12));
        assertThat(fit.b()).isCloseTo(0.7979204727e-4, within(1e-14));
        assertThat(fit.c()).isCloseTo(6.535076315e-7, within(1e-16));
    }

    /** Table A.1 in the appendix of a laser controller's manual, fitted at three of its points. */
    @ParameterizedTest
    @CsvSource({"10, 19549", "20, 12262", "30, 7908"})
    void a_fit_through_three_rows_of_a_published_table_meets_the_rows_between(double celsius, double ohms) {
        Thermistor fit = Thermistor.through(new double[] {0, 25, 50}, new double[] {32_128, 9_814, 3_542});

        // The table is rounded to whole ohms, 0.002 K at 30 degrees.
        assertThat(fit.celsius(ohms)).isCloseTo(celsius, within(0.0025));
    }

    @Property
    void resistance_and_temperature_are_each_others_inverse(@ForAll @DoubleRange(min = -50, max = 180) double celsius) {
        double back = Thermistor.TEN_KILOHM.celsius(Thermistor.TEN_KILOHM.ohms(celsius));

        // Cardano's two roots cancel in part: some 1e-13 of 400 K remain.
        assertThat(back).isCloseTo(celsius, within(1e-9));
    }

    @Test
    void a_curve_that_cannot_be_inverted_is_refused() {
        assertThatThrownBy(() -> new Thermistor(1e-3, 2e-4, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
