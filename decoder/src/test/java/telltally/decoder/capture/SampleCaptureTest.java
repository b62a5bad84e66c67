package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Led;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.channel.SteadySupply;
import telltally.simulator.channel.Wire;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.signal.Seconds;

class SampleCaptureTest {
    private static final PulseTrain TRAIN = Trains.code34(2);

    private static SampledSignal evenly(double... values) {
        long[] atNanos = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            atNanos[i] = i * 100_000_000L;
        }
        return SampledSignal.of(atNanos, values);
    }

    private static Reason reason(SampledSignal signal) {
        return ((NoPulses) SampleCapture.of(signal, Polarity.AUTO)).reason();
    }

    @Test
    void no_sample_and_one_sample_are_too_few() {
        assertThat(reason(evenly())).isEqualTo(Reason.TOO_FEW_SAMPLES);
        assertThat(reason(evenly(3))).isEqualTo(Reason.TOO_FEW_SAMPLES);
    }

    @Test
    void a_constant_signal_does_not_blink() {
        assertThat(reason(evenly(5, 5, 5, 5, 5, 5, 5, 5, 5, 5))).isEqualTo(Reason.NO_BLINKING);
        assertThat(reason(evenly(new double[100]))).isEqualTo(Reason.NO_BLINKING);
    }

    @Test
    void a_slow_change_alone_does_not_blink() {
        double[] values = new double[600];
        for (int i = 0; i < values.length; i++) {
            values[i] = 100 + 30 * Math.sin(i / 150.0);
        }
        assertThat(reason(evenly(values))).isEqualTo(Reason.NO_BLINKING);
    }

    /** In noise and drift: a dark pause was parted in two, or its end taken for a flash. Found by the property. */
    @ParameterizedTest
    @CsvSource({
        "0.13, -0.02, -109, 3.157639985 3.407639985 4.094536875 4.344536875 4.741833468 4.991833468 5.589029418",
        "0.1399345706611985, 0.036092505537407046, -355, 0.54344693 0.79344693 6.255389711 6.505389711 10.77510025"
                + " 11.02510025 15.096380636 16.176380636 16.646297637 16.896297637 17.434342239 18.025342239 20.53555673"
                + " 21.71155673 25.383486455",
        "0.14408327055876852, 0.033010912066076606, 3609605122490956675, 0.542618876 1.741618876 2.237243896 2.487243896"
                + " 2.95132598 3.76332598 8.552090122",
    })
    void noise_in_a_long_pause_is_no_flash(double noise, double driftPerSecond, long seed, String edges) {
        long[] nanos = Arrays.stream(edges.split(" "))
                .mapToLong(each -> Math.round(1e9 * Double.parseDouble(each)))
                .toArray();
        PulseTrain train = PulseTrain.of(false, nanos[nanos.length - 1], Arrays.copyOf(nanos, nanos.length - 1));
        Pulses pulses = (Pulses) SampleCapture.of(
                SampleCaptureProperties.diode(train, noise, driftPerSecond, seed), Polarity.HIGH_IS_LIT);
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.04);
    }

    @Test
    void noise_cut_off_at_the_end_of_the_range_is_told_as_that() {
        Chance chance = Chance.of(4);
        double[] values = new double[600];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.max(-1.2, Math.min(1.2, chance.nextNormal()));
        }
        NoPulses none = (NoPulses) SampleCapture.of(evenly(values), Polarity.AUTO);
        assertThat(none.reason()).isEqualTo(Reason.CLIPPED);
    }

    @Test
    void two_levels_by_the_toss_of_a_coin_are_no_pulses() {
        Chance chance = Chance.of(4);
        double[] values = new double[600];
        for (int i = 0; i < values.length; i++) {
            values[i] = chance.below(2);
        }
        assertThat(reason(evenly(values))).isEqualTo(Reason.TOO_FAST);
    }

    @Test
    void times_beyond_those_of_files_are_refused() {
        SampledSignal signal = SampledSignal.of(
                new long[] {Long.MIN_VALUE, 0, 1, 2, 3, 4, 5, Long.MAX_VALUE}, new double[] {0, 1, 0, 1, 0, 1, 0, 1});
        assertThat(reason(signal)).isEqualTo(Reason.TIMES_OUT_OF_RANGE);
    }

    @Test
    void the_greatest_numbers_are_levels_like_any_other() {
        double[] values = new double[80];
        for (int i = 0; i < values.length; i++) {
            values[i] = i / 10 % 2 == 0 ? -Double.MAX_VALUE : Double.MAX_VALUE;
        }
        Pulses pulses = (Pulses) SampleCapture.of(evenly(values), Polarity.HIGH_IS_LIT);
        assertThat(pulses.train().edgeCount()).isEqualTo(7);
    }

    @Test
    void edges_lie_on_straight_lines_between_uneven_samples_and_time_counts_from_the_first() {
        SampledSignal signal = SampledSignal.of(
                new long[] {-1000, 0, 1000, 2000, 2400, 3400, 4400, 5000, 6000, 7000, 8000, 9000},
                new double[] {10, 10, 10, 10, 20, 20, 20, 20, 10, 10, 10, 10});
        Pulses pulses = (Pulses) SampleCapture.of(signal, Polarity.HIGH_IS_LIT);
        // Half-way up between 2000 and 2400, half-way down between 5000 and 6000; the end is one step after the last.
        assertThat(pulses.train()).isEqualTo(PulseTrain.of(false, 11_000, 3200, 6500));
        assertThat(pulses.quality().darkLevel()).isCloseTo(10, within(1e-9));
        assertThat(pulses.quality().litLevel()).isCloseTo(20, within(1e-9));
        assertThat(pulses.quality().contrast()).isEqualTo(1000);
    }

    @Test
    void the_noise_is_measured() {
        Chance chance = Chance.of(9);
        SampledSignal light = Trains.changed(
                Led.at(12).light(TRAIN, 100), (second, value) -> 7 + 3 * value + 0.2 * chance.nextNormal());
        Quality quality = ((Pulses) SampleCapture.of(light, Polarity.HIGH_IS_LIT)).quality();
        // 2700 samples tell a deviation to 2 % (1 / sqrt 2n, more for a median), taking drift out adds a little.
        assertThat(quality.noise()).isCloseTo(0.2, within(0.02));
        assertThat(quality.darkLevel()).isCloseTo(7, within(0.05));
        assertThat(quality.litLevel()).isCloseTo(10, within(0.05));
    }

    @Test
    void a_wire_is_read_by_its_pauses_and_the_remark_says_so() {
        Wire wire = new Wire(new SteadySupply(12), 0.3, 1_000_000, 0.1);
        Pulses pulses = (Pulses) SampleCapture.of(wire.volts(TRAIN, 500, Chance.of(1)), Polarity.AUTO);
        // A sample of 2 ms.
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.002);
        assertThat(pulses.remarks().get(0)).startsWith("the lower level is taken as lit");
    }

    @Test
    void the_fast_list_on_a_wire_keeps_its_pulses_of_five_milliseconds() {
        PulseTrain.Builder fast = PulseTrain.builder().dark(100 * Trains.MILLI);
        for (int flash = 0; flash < 40; flash++) {
            fast.lit(5 * Trains.MILLI).dark((flash % 4 == 3 ? 20 : 5) * Trains.MILLI);
        }
        PulseTrain train = fast.dark(4000 * Trains.MILLI)
                .lit(500 * Trains.MILLI)
                .dark(500 * Trains.MILLI)
                .build();
        Wire wire = new Wire(new SteadySupply(12), 0.3, 300_000, 0.1);
        Pulses pulses = (Pulses) SampleCapture.of(wire.volts(train, 2000, Chance.of(1)), Polarity.LOW_IS_LIT);
        // A sample of 0.5 ms.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.0005);
    }

    @Test
    void the_needle_of_a_meter_is_enough() {
        Pulses pulses = (Pulses) SampleCapture.of(MeterNeedle.standard().deflection(TRAIN, 30), Polarity.HIGH_IS_LIT);
        assertThat(pulses.train().edgeCount()).isEqualTo(TRAIN.edgeCount());
    }

    @Test
    void a_spike_of_one_sample_is_no_flash() {
        SampledSignal light = Trains.changed(
                Led.at(12).light(TRAIN, 100), (second, value) -> Math.abs(second - 12.5) < 0.004 ? 1 : value);
        Pulses pulses = (Pulses) SampleCapture.of(light, Polarity.HIGH_IS_LIT);
        assertThat(pulses.train().edgeCount()).isEqualTo(TRAIN.edgeCount());
    }

    @Test
    void a_hole_in_the_recording_is_told() {
        SampledSignal light = Led.at(12).light(TRAIN, 100);
        long[] atNanos = new long[light.size()];
        double[] values = new double[light.size()];
        for (int i = 0; i < atNanos.length; i++) {
            atNanos[i] = light.atNanos(i) + (i >= 1250 ? 2_000_000_000L : 0);
            values[i] = light.value(i);
        }
        Pulses pulses = (Pulses) SampleCapture.of(SampledSignal.of(atNanos, values), Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks()).containsExactly("no samples for 2.01 s from 12.49 s on; flashes there are lost");
    }

    @Test
    void one_flash_in_five_minutes_of_noise_is_found() {
        PulseTrain train = PulseTrain.of(false, 300_000_000_000L, 200_000_000_000L, 200_500_000_000L);
        Chance chance = Chance.of(2);
        SampledSignal light =
                Trains.changed(Led.at(12).light(train, 50), (second, value) -> value + 0.1 * chance.nextNormal());
        Pulses pulses = (Pulses) SampleCapture.of(light, Polarity.HIGH_IS_LIT);
        // A sample of 20 ms.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.02);
    }

    private static final double[] BLINKING = {0, 0, 0, 1, 1, 1, 0, 0, 0, 1, 1, 1, 0, 0, 0, 1, 1, 1, 0, 0, 0, 1, 1, 1};

    private static SampledSignal at(long[] atNanos, double... values) {
        return SampledSignal.of(atNanos, values);
    }

    private static long[] regular(int size, long stepNanos) {
        long[] atNanos = new long[size];
        for (int i = 0; i < size; i++) {
            atNanos[i] = i * stepNanos;
        }
        return atNanos;
    }

    @Test
    void seven_samples_are_too_few_and_eight_are_looked_at() {
        NoPulses seven = (NoPulses) SampleCapture.of(evenly(1, 2, 3, 4, 5, 6, 7), Polarity.AUTO);
        assertThat(seven.reason()).isEqualTo(Reason.TOO_FEW_SAMPLES);
        assertThat(seven.text()).isEqualTo("there are 7 samples; at least 8 are needed");
        assertThat(reason(evenly(1, 2, 3, 4, 5, 6, 7, 8))).isEqualTo(Reason.NO_BLINKING);
    }

    @Test
    void times_of_exactly_the_greatest_size_are_read() {
        long most = Seconds.MAX_NANOS;
        assertThat(reason(at(new long[] {-most, 0, 1, 2, 3, 4, 5, most}, 1, 1, 1, 1, 1, 1, 1, 1)))
                .isEqualTo(Reason.NO_BLINKING);
        assertThat(reason(at(new long[] {-most - 1, 0, 1, 2, 3, 4, 5, most}, 1, 1, 1, 1, 1, 1, 1, 1)))
                .isEqualTo(Reason.TIMES_OUT_OF_RANGE);
        assertThat(reason(at(new long[] {-most, 0, 1, 2, 3, 4, 5, most + 1}, 1, 1, 1, 1, 1, 1, 1, 1)))
                .isEqualTo(Reason.TIMES_OUT_OF_RANGE);
    }

    /** Seven edges in 24 samples; with one or two samples changed nine, and a third of 24 is eight. */
    @Test
    void an_edge_in_three_samples_is_not_too_fast_and_more_are() {
        assertThat(SampleCapture.of(evenly(BLINKING), Polarity.HIGH_IS_LIT)).isInstanceOf(Pulses.class);
        double[] eight = BLINKING.clone();
        eight[23] = 0;
        assertThat(((Pulses) SampleCapture.of(evenly(eight), Polarity.HIGH_IS_LIT))
                        .train()
                        .edgeCount())
                .isEqualTo(8);
        double[] nine = eight.clone();
        nine[0] = 1;
        assertThat(((NoPulses) SampleCapture.of(evenly(nine), Polarity.HIGH_IS_LIT)).reason())
                .isEqualTo(Reason.TOO_FAST);
    }

    /** Of 100 samples so many have exactly the greatest value and one the least; one of each there must be. */
    @Test
    void a_fifth_at_the_ends_of_the_range_is_not_clipped_and_more_is() {
        assertThat(reason(clipped(21))).isEqualTo(Reason.NO_BLINKING);
        assertThat(reason(clipped(22))).isEqualTo(Reason.CLIPPED);
    }

    private static SampledSignal clipped(int highest) {
        Chance chance = Chance.of(12);
        double[] values = new double[100];
        for (int i = 0; i < values.length; i++) {
            values[i] = i * 29 % 100 < highest ? 1 : chance.between(-0.99, 0.99);
        }
        values[99] = -1;
        return evenly(values);
    }

    @Test
    void the_text_names_the_contrast_and_what_would_be_needed() {
        NoPulses none = (NoPulses) SampleCapture.of(clipped(21), Polarity.AUTO);
        assertThat(none.text())
                .matches("no two levels stand out of the noise: they would be \\d+\\.\\d times the noise apart, "
                        + "and \\d+\\.\\d is the least");
    }

    @Test
    void tenths_are_rounded() {
        assertThat(SampleCapture.tenths(4.46)).isEqualTo("4.5");
        assertThat(SampleCapture.tenths(12.04)).isEqualTo("12.0");
        assertThat(SampleCapture.tenths(0.26)).isEqualTo("0.3");
    }

    @Test
    void a_weak_contrast_is_told_and_a_strong_one_is_not() {
        assertThat(noisy(0.17).remarks())
                .anyMatch(remark ->
                        remark.matches("the levels are only [4-7]\\.\\d times the noise apart; edges may be false"));
        assertThat(noisy(0.1).remarks()).isEmpty();
    }

    /** Ten samples a second, too few for averaging. */
    private static Pulses noisy(double noise) {
        Chance chance = Chance.of(14);
        double[] values = new double[600];
        for (int i = 0; i < values.length; i++) {
            values[i] = i / 20 % 2 + noise * chance.nextNormal();
        }
        return (Pulses) SampleCapture.of(at(regular(600, 200_000_000L), values), Polarity.HIGH_IS_LIT);
    }

    /** Five times the usual step, but at least a quarter of a second. */
    @Test
    void a_hole_is_wider_than_five_steps_and_than_a_quarter_of_a_second() {
        assertThat(hole(100_000_000L, 500_000_000L)).isEmpty();
        assertThat(hole(100_000_000L, 500_000_001L)).hasSize(1);
        assertThat(hole(10_000_000L, 250_000_000L)).isEmpty();
        assertThat(hole(10_000_000L, 250_000_001L)).hasSize(1);
    }

    @Test
    void of_several_holes_the_widest_is_named_and_of_equal_ones_the_first() {
        assertThat(hole(100_000_000L, 600_000_000L, 900_000_000L, 700_000_000L))
                .containsExactly("no samples for 0.9 s from 4.4 s on; flashes there are lost");
        assertThat(hole(100_000_000L, 600_000_000L, 600_000_000L))
                .containsExactly("no samples for 0.6 s from 1.9 s on; flashes there are lost");
    }

    /** What is told of steady blinking with holes of such widths after every twenty samples. */
    private static List<String> hole(long stepNanos, long... widthsNanos) {
        long[] atNanos = regular(100, stepNanos);
        for (int hole = 0; hole < widthsNanos.length; hole++) {
            for (int i = 20 * (hole + 1); i < 100; i++) {
                atNanos[i] += widthsNanos[hole] - stepNanos;
            }
        }
        double[] values = new double[100];
        for (int i = 0; i < 100; i++) {
            values[i] = i / 5 % 2;
        }
        return ((Pulses) SampleCapture.of(at(atNanos, values), Polarity.HIGH_IS_LIT)).remarks();
    }
}
