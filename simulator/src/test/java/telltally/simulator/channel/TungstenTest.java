package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TungstenTest {
    /** Forsythe and Worthing 1925, a few points of the table in microohm centimetres. */
    @ParameterizedTest
    @CsvSource({"300, 5.65", "1000, 24.93", "2000, 56.67", "2500, 73.91", "2800, 84.70", "3400, 107.2", "3600, 115.0"})
    void resistivity_is_that_of_the_published_table(double kelvin, double microOhmCm) {
        assertThat(Tungsten.resistivityOhmMetres(kelvin)).isCloseTo(microOhmCm * 1e-8, within(1e-14));
    }

    @Test
    void resistivity_is_near_the_fit_of_other_authors() {
        for (double t = 300; t <= 3600; t += 50) {
            // Desai and others, J. Phys. Chem. Ref. Data 13 (1984) 1069; known to lie 2 to 3 % from the older table.
            double fit =
                    -0.9680 + 1.9274e-2 * t + 7.8260e-6 * t * t - 1.8517e-9 * t * t * t + 2.0790e-13 * t * t * t * t;
            assertThat(Tungsten.resistivityOhmMetres(t) * 1e8).as("%s K", t).isCloseTo(fit, within(0.035 * fit));
        }
    }

    @Test
    void a_filament_at_2800_K_has_14_99_times_its_cold_resistance() {
        // The ratio of two entries of the table, rounded.
        assertThat(Tungsten.resistivityOhmMetres(2800) / Tungsten.resistivityOhmMetres(300))
                .isCloseTo(14.99, within(0.005));
    }

    /** NIST-JANAF 1998, joules per mole and kelvin at 1000, 2000 and 2800 K; five digits were printed. */
    @ParameterizedTest
    @CsvSource({"1000, 27.554", "2000, 32.286", "2800, 37.586"})
    void heat_capacity_is_that_of_the_published_fit(double kelvin, double joulesPerMolKelvin) {
        assertThat(Tungsten.heatJoulesPerKgKelvin(kelvin) * 0.18384).isCloseTo(joulesPerMolKelvin, within(0.0006));
    }

    @Test
    void cold_tungsten_takes_132_joules_per_kilogram_and_kelvin() {
        // 132.2 at 298.15 K by the same fit; 300 K is 0.1 higher at most.
        assertThat(Tungsten.heatJoulesPerKgKelvin(300)).isCloseTo(132.2, within(0.1));
    }

    /** Emissivity of Forsythe and Watson times sigma T^4, in watts per square centimetre; three or four digits. */
    @ParameterizedTest
    @CsvSource({"1000, 0.595", "2000, 23.50", "2400, 55.31", "2800, 111.9"})
    void a_hot_wire_radiates_what_the_tables_say(double kelvin, double wattsPerSquareCm) {
        assertThat(Filament.wattsPerSquareMetre(kelvin) / 1e4)
                .isCloseTo(wattsPerSquareCm, within(0.001 * wattsPerSquareCm));
    }
}
