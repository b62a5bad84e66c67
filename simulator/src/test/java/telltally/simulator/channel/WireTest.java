package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class WireTest {
    private final Supply battery = new SteadySupply(12);
    private final PulseTrain pulse = PulseTrain.of(false, 100 * MILLI, 10 * MILLI, 50 * MILLI);

    @Test
    void a_pulled_wire_is_at_saturation_and_a_free_one_at_the_supply() {
        SampledSignal volts = new Wire(battery, 0.2, 0, 0).volts(pulse, 1000, Chance.of(1));

        assertThat(volts.value(9)).isEqualTo(12);
        assertThat(volts.value(10)).isEqualTo(0.2);
        assertThat(volts.value(49)).isEqualTo(0.2);
        assertThat(volts.value(50)).isEqualTo(12);
    }

    @Test
    void a_released_wire_rises_as_a_capacitor_charges() {
        SampledSignal volts = new Wire(battery, 0, 4 * MILLI, 0).volts(pulse, 100_000, Chance.of(1));

        // Textbook: 63.2 % after RC, 10 to 90 % in 2.197 RC.
        assertThat(volts.value(5400)).isCloseTo(12 * 0.63212, within(1e-4));
        assertThat((firstAbove(volts, 10.8) - firstAbove(volts, 1.2)) / 100.0).isCloseTo(2.197 * 4, within(0.02));
    }

    @Test
    void a_logic_input_sees_the_release_late_by_the_rise() {
        PulseTrain logic =
                new Wire(battery, 0, 4 * MILLI, 0).logic(pulse, new Hysteresis(3.6, 8.4), 100_000, Chance.of(1));

        assertThat(logic.litAtStart()).isFalse();
        assertThat(logic.edgeCount()).isEqualTo(2);
        assertThat(logic.edgeNanos(0)).isCloseTo(10 * MILLI, within(10_000L)); // a sample
        // RC ln(1 / (1 - 0.7)), by straight lines between samples.
        assertThat(logic.edgeNanos(1)).isCloseTo(50 * MILLI + (long) (4e6 * Math.log(1 / 0.3)), within(200L));
    }

    @Test
    void a_burst_faster_than_the_wire_is_lost_in_part() {
        PulseTrain burst = PulseTrain.of(true, 60 * MILLI, 10 * MILLI, 11 * MILLI, 20 * MILLI, 21 * MILLI);
        PulseTrain logic =
                new Wire(battery, 0, 4 * MILLI, 0).logic(burst, new Hysteresis(3.6, 8.4), 100_000, Chance.of(1));

        assertThat(logic).isEqualTo(PulseTrain.of(true, 60 * MILLI));
    }

    @Test
    void noise_is_normal() {
        SampledSignal volts = new Wire(battery, 0, 0, 0.25).volts(PulseTrain.of(false, SECOND), 20_000, Chance.of(41));
        double[] values = new double[volts.size()];
        Arrays.setAll(values, volts::value);

        // Hipparchus says how likely a worse fit would be; 1 % with a fixed seed.
        assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(12, 0.25), values, false))
                .isGreaterThan(0.01);
    }

    @Test
    void hysteresis_keeps_noise_from_adding_edges() {
        Wire noisy = new Wire(battery, 0, 2 * MILLI, 0.3);

        // The marks lie 16 standard deviations apart.
        assertThat(noisy.logic(Trains.flashes(20), new Hysteresis(3.6, 8.4), 5000, Chance.of(42))
                        .edgeCount())
                .isEqualTo(40);
        assertThat(noisy.logic(Trains.flashes(20), new Hysteresis(6, 6), 50_000, Chance.of(42))
                        .edgeCount())
                .isGreaterThan(40);
    }

    @Test
    void ripple_swings_about_the_supply() {
        Supply rippled = new RippledSupply(battery, 0.8, 50);

        assertThat(rippled.voltsAt(5 * MILLI)).isCloseTo(12.4, within(1e-9));
        assertThat(rippled.voltsAt(15 * MILLI)).isCloseTo(11.6, within(1e-9));
        assertThat(rippled.voltsAt(20 * MILLI)).isCloseTo(12, within(1e-9));
    }

    /** ISO 16750-2:2003, 4.5.3, 12 V level I, quoted at second hand: milliseconds from the start, volts. */
    @ParameterizedTest
    @CsvSource({
        "-1, 12",
        "0, 12",
        "5, 8",
        "12, 8",
        "20, 8",
        "70, 10.5",
        "195, 11.5",
        "445, 9.5",
        "1070, 10.5",
        "1110, 12",
        "5000, 12",
        "45, 9.25",
        "1090, 11.25"
    })
    void cranking_follows_the_published_starting_profile(long millis, double volts) {
        assertThat(StartingDip.twelveVolts(SECOND).voltsAt(SECOND + millis * MILLI))
                .isCloseTo(volts, within(1e-9));
    }

    @Test
    void the_profile_for_24_volts_cranks_for_20_seconds() {
        Supply supply = StartingDip.twentyFourVolts(0);

        assertThat(supply.voltsAt(30 * MILLI)).isEqualTo(8);
        assertThat(supply.voltsAt(110 * MILLI + 20 * SECOND)).isCloseTo(16, within(1e-9));
        assertThat(supply.voltsAt(150 * MILLI + 20 * SECOND)).isEqualTo(24);
    }

    @Test
    void cranking_reads_as_a_flash_where_the_mark_is_too_high() {
        Wire wire = new Wire(StartingDip.twelveVolts(SECOND), 0.2, 0, 0);
        PulseTrain dark = PulseTrain.of(false, 4 * SECOND);

        assertThat(wire.logic(dark, new Hysteresis(9, 11.8), 10_000, Chance.of(1))
                        .edgeCount())
                .isEqualTo(2);
        assertThat(wire.logic(dark, new Hysteresis(3, 6), 10_000, Chance.of(1)).edgeCount())
                .isZero();
    }

    private static int firstAbove(SampledSignal volts, double level) {
        int sample = 5000;
        while (volts.value(sample) < level) {
            sample++;
        }
        return sample;
    }
}
