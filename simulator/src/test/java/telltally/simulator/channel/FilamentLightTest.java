package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The exponential against the whole computation: Planck's law times the luminous efficiency of the eye (CIE 1924, as
 * printed in public colour tables), summed over wavelengths.
 */
class FilamentLightTest {
    /** V(lambda) from 400 to 720 nm in steps of 10 nm. */
    private static final double[] EYE = {
        .000396, .00121, .0040, .0116, .023, .038, .060, .09098, .13902, .20802, .323, .503, .710, .862, .954, .99495,
        .995, .952, .870, .757, .631, .503, .381, .265, .175, .107, .061, .032, .017, .00821, .004102, .002091, .001047
    };

    /** The doubts are those of the class comment: 3 % near the rated temperature, growing as it gets dim. */
    @ParameterizedTest
    @CsvSource({"1600, 0.25", "1800, 0.13", "2000, 0.08", "2300, 0.03", "2400, 0.02", "2600, 0.02", "2800, 0.03"})
    void light_is_near_what_the_eye_makes_of_a_black_body(double kelvin, double doubt) {
        double seen = seen(kelvin) / seen(2500);

        assertThat(new FilamentLight(2500).level(kelvin)).isCloseTo(seen, within(doubt * seen));
    }

    private static double seen(double kelvin) {
        double sum = 0;
        for (int i = 0; i < EYE.length; i++) {
            double micrometres = 0.4 + 0.01 * i;
            sum += EYE[i] * Math.pow(micrometres, -5) / Math.expm1(14_388 / (micrometres * kelvin));
        }
        return sum;
    }
}
