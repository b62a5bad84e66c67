package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;

/** A wire at half of full scale while lit, at 8000 samples a second. */
class VoltageCaptureTest {
    private static final PulseTrain TRAIN = PulseTrain.builder()
            .dark(1000 * Trains.MILLI)
            .lit(300 * Trains.MILLI)
            .dark(300 * Trains.MILLI)
            .lit(300 * Trains.MILLI)
            .dark(1000 * Trains.MILLI)
            .lit(300 * Trains.MILLI)
            .dark(300 * Trains.MILLI)
            .lit(300 * Trains.MILLI)
            .dark(1000 * Trains.MILLI)
            .build();

    private static final String LOST = "the input let no steady voltage through; the steps at the edges were read";

    /** What is left of a step after so many seconds is 1/e. */
    private static Sound wire(PulseTrain train, double fadeSeconds) {
        return Sounds.voltage(train, 8000, fadeSeconds, (second, value) -> value);
    }

    private static Pulses read(Sound sound, Polarity polarity) {
        return (Pulses) VoltageCapture.of(sound, new SoundBlocks(sound), polarity);
    }

    @Test
    void where_steady_voltages_pass_levels_are_read() {
        Pulses pulses = read(wire(TRAIN, 1e9), Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks()).isEmpty();
        assertThat(pulses.quality().litLevel()).isCloseTo(0.5, within(0.01));
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.002);
    }

    @Test
    void where_they_do_not_the_steps_are_read() {
        Pulses pulses = read(wire(TRAIN, 0.05), Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks()).containsExactly(LOST);
        // Two blocks of a millisecond.
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.002);
        assertThat(pulses.train().endNanos()).isEqualTo(TRAIN.endNanos());
    }

    /** Within 4 ms of a step of 0.5, of which 50 ms leave 1/e, at least 0.92 of it are seen. */
    @Test
    void the_lit_level_is_a_step_above_the_dark_one() {
        Quality high = read(wire(TRAIN, 0.05), Polarity.HIGH_IS_LIT).quality();
        assertThat(high.darkLevel()).isZero();
        assertThat(high.litLevel()).isBetween(0.92 * 0.4, 0.5);
        Quality low = read(wire(TRAIN, 0.05), Polarity.LOW_IS_LIT).quality();
        assertThat(low.darkLevel()).isEqualTo(high.litLevel());
        assertThat(low.litLevel()).isZero();
    }

    @Test
    void contrast_is_the_usual_step_over_the_noise_and_at_most_a_thousand() {
        Sound noisy = Sounds.voltage(TRAIN, 8000, 0.05, Sounds.noiseAndHum(1, 0.02, 0));
        Quality quality = read(noisy, Polarity.HIGH_IS_LIT).quality();
        assertThat(quality.contrast()).isCloseTo(quality.litLevel() / quality.noise(), within(1e-9));
        assertThat(quality.contrast()).isLessThan(200);
        assertThat(read(wire(TRAIN, 0.02), Polarity.HIGH_IS_LIT).quality().contrast())
                .isEqualTo(1000);
    }

    @Test
    void the_lower_level_is_lit_if_the_user_says_so() {
        assertThat(Trains.worstSeconds(
                        TRAIN,
                        read(wire(TRAIN.inverted(), 0.05), Polarity.LOW_IS_LIT).train()))
                .isLessThan(0.002);
    }

    @Test
    void which_level_is_taken_as_lit_is_told_if_it_was_found_out() {
        assertThat(read(wire(TRAIN, 0.05), Polarity.AUTO).remarks())
                .containsExactly(LOST, "the higher level is taken as lit");
        Pulses inverted = read(wire(TRAIN.inverted(), 0.05), Polarity.AUTO);
        assertThat(inverted.remarks()).containsExactly(LOST, "the lower level is taken as lit");
        assertThat(inverted.train().litAtStart()).isFalse();
    }

    /** Six steps by turns, and then a fall while the lamp is dark already. */
    @Test
    void a_step_the_same_way_as_the_one_before_is_told() {
        PulseTrain many = PulseTrain.of(
                false,
                4_000_000_000L,
                millis(500),
                millis(800),
                millis(1100),
                millis(1400),
                millis(1700),
                millis(2000));
        Sound knocked = Sounds.voltage(
                many,
                8000,
                0.05,
                (second, value) -> value + (second < 2.5 ? 0 : -0.4 * Math.exp(-(second - 2.5) / 0.05)));
        Pulses pulses = read(knocked, Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks()).hasSize(2);
        assertThat(pulses.remarks().get(1)).isEqualTo("1 step went the same way as the one before and was left out");
        assertThat(Trains.worstSeconds(many, pulses.train())).isLessThan(0.002);
    }

    private static long millis(long millis) {
        return millis * Trains.MILLI;
    }
}
