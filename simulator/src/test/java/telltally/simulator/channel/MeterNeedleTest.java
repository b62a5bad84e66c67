package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class MeterNeedleTest {
    private static final Hysteresis MARKS = new Hysteresis(0.3, 0.7);
    private static final int RATE = 10_000;

    /** Up at 1 s, down at 11 s. */
    private final PulseTrain step = PulseTrain.of(false, 21 * SECOND, SECOND, 11 * SECOND);

    @Test
    void the_standard_needle_meets_the_vu_rules_up_and_down() {
        SampledSignal needle = MeterNeedle.standard().deflection(step, RATE);

        // IEC 60268-17 as quoted by F. Adriaensen: 99 % in 300 ms, first peak 1 to 1.5 % beyond, the same on return.
        assertThat(needle.value(at(1.3))).isCloseTo(0.99, within(0.0005)); // four digits of frequency and damping
        assertThat(highest(needle)).isBetween(1.010, 1.015);
        assertThat(needle.value(at(11.3))).isCloseTo(0.01, within(0.0005));
        assertThat(1 - lowestAfter(needle, 11)).isBetween(1.010, 1.015);
    }

    @Test
    void a_lightly_damped_needle_peaks_where_the_worked_example_says() {
        // theprimecalculator.com: zeta 0.3, natural rate 10 rad/s, damped 9.539: 37.23 % beyond, 0.3293 s.
        SampledSignal needle = new MeterNeedle(10 / (2 * Math.PI), 0.3, MARKS).deflection(step, RATE);
        int peak = peak(needle);

        assertThat(needle.value(peak)).isCloseTo(1.3723, within(0.00005));
        assertThat((needle.atNanos(peak) - SECOND) / 1e9).isCloseTo(0.3293, within(0.00006)); // half a digit, a sample
    }

    /** codingace.net, damping from overshoot; the printed four digits are worth half a unit. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.6901", "0.10, 0.5912", "0.20, 0.4559", "0.30, 0.3579", "0.50, 0.2155"})
    void overshoot_follows_damping(double overshoot, double damping) {
        SampledSignal needle = new MeterNeedle(2, damping, MARKS).deflection(step, RATE);

        assertThat(highest(needle) - 1).isCloseTo(overshoot, within(0.0002));
    }

    /** Textbook step responses of an aperiodic system. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.0000001, 1.5, 6})
    void a_heavily_damped_needle_creeps_without_overshoot(double damping) {
        double w = 2 * Math.PI * 1.43;
        SampledSignal needle = new MeterNeedle(1.43, damping, MARKS).deflection(step, RATE);
        for (double t : new double[] {0.01, 0.1, 0.5, 2, 9}) {
            double root = w * Math.sqrt(Math.max(1e-9, damping * damping - 1));
            double slow = damping * w - root;
            double fast = damping * w + root;
            double expected = 1 - (fast * Math.exp(-slow * t) - slow * Math.exp(-fast * t)) / (fast - slow);
            // The textbook form itself loses digits where both roots are nearly one.
            assertThat(needle.value(at(1 + t))).as("at %s s", t).isCloseTo(expected, within(1e-5));
        }
        assertThat(highest(needle)).isLessThanOrEqualTo(1);
    }

    @Test
    void every_half_second_swing_is_counted() {
        PulseTrain counted = MeterNeedle.standard().counted(Trains.flashes(30));

        assertThat(counted.edgeCount()).isEqualTo(60);
    }

    @Test
    void crossings_stand_where_the_sampled_needle_crosses() {
        MeterNeedle needle = new MeterNeedle(1.43, 0.32, MARKS);
        PulseTrain sent = new Jitter(0.5).applyTo(Trains.flashes(40), telltally.simulator.chance.Chance.of(31));
        PulseTrain counted = needle.counted(sent);
        PulseTrain sampled = MARKS.edges(needle.deflection(sent, 20_000), sent.endNanos());

        assertThat(counted.edgeCount()).isEqualTo(sampled.edgeCount());
        for (int i = 0; i < counted.edgeCount(); i++) {
            // A cubic between looks 22 ms apart: 1e-5 of a deflection, at some five deflections a second.
            assertThat(counted.edgeNanos(i)).isCloseTo(sampled.edgeNanos(i), within(10_000L));
        }
    }

    @Test
    void a_pulse_of_170_ms_reaches_the_mark_and_one_of_100_ms_does_not() {
        // The needle goes on after a short pulse; its own step response is at 0.7 after 170 ms (closed form).
        assertThat(MeterNeedle.standard().counted(pulse(100 * MILLI)).edgeCount())
                .isZero();
        assertThat(MeterNeedle.standard().counted(pulse(170 * MILLI)).edgeCount())
                .isEqualTo(2);
    }

    @Test
    void a_burst_a_hundred_times_faster_only_trembles() {
        PulseTrain.Builder burst = PulseTrain.builder().dark(SECOND);
        for (int i = 0; i < 34; i++) {
            burst.lit(5 * MILLI).dark(5 * MILLI);
        }
        PulseTrain train = burst.dark(5 * SECOND).build();

        assertThat(MeterNeedle.standard().counted(train).edgeCount()).isZero();
        assertThat(highest(MeterNeedle.standard().deflection(train, 1000))).isBetween(0.2, 0.6);
    }

    private static PulseTrain pulse(long lengthNanos) {
        return PulseTrain.of(false, 5 * SECOND, SECOND, SECOND + lengthNanos);
    }

    private static int at(double seconds) {
        return (int) Math.round(seconds * RATE);
    }

    private static int peak(SampledSignal needle) {
        int peak = 0;
        for (int i = 0; i < needle.size(); i++) {
            peak = needle.value(i) > needle.value(peak) ? i : peak;
        }
        return peak;
    }

    private static double highest(SampledSignal needle) {
        return needle.value(peak(needle));
    }

    private static double lowestAfter(SampledSignal needle, double seconds) {
        double lowest = 1;
        for (int i = at(seconds); i < needle.size(); i++) {
            lowest = Math.min(lowest, needle.value(i));
        }
        return lowest;
    }
}
