package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import telltally.simulator.trace.Sound;

/** At 8000 samples a second a stretch is 256 samples long and a bin 31.25 Hz wide. */
class PitchTest {
    private static final int RATE = 8000;
    private static final int STRETCH = 256;

    private static double sine(double hertz, int sample) {
        return Math.sin(2 * Math.PI * hertz * sample / RATE);
    }

    private static double pitch(int size, IntToDoubleFunction values) {
        float[] samples = new float[size];
        for (int i = 0; i < size; i++) {
            samples[i] = (float) values.applyAsDouble(i);
        }
        Sound sound = Sound.of(RATE, samples);
        return Pitch.of(sound, new SoundBlocks(sound));
    }

    /**
     * The parabola through the logarithms after Hann's window is off by up to 1.6 % of a bin (M. Gasior and J. L. Gonzalez,
     * Improving FFT frequency measurement resolution by parabolic and Gaussian spectrum interpolation, CERN 2004, from
     * memory): half a hertz.
     */
    @Test
    void a_clear_tone_is_found_to_half_a_hertz_wherever_it_lies_between_two_bins() {
        for (double hertz : new double[] {200, 440, 1000, 1003, 1008, 1015, 1020, 1026, 3333}) {
            assertThat(pitch(20 * STRETCH, i -> sine(hertz, i))).isCloseTo(hertz, within(0.55));
        }
    }

    /** The last bin but one; its image beyond half of the rate is two bins away and pulls by up to half a bin. */
    @Test
    void a_tone_just_below_half_of_the_rate_is_found() {
        assertThat(pitch(20 * STRETCH, i -> sine(3968.75, i))).isCloseTo(3968.75, within(15.625));
    }

    @Test
    void hum_below_150_hertz_is_no_pitch() {
        assertThat(pitch(20 * STRETCH, i -> 0.9 * sine(62.5, i) + 0.05 * sine(2000, i)))
                .isCloseTo(2000, within(0.1));
    }

    @Test
    void the_sixteen_loudest_stretches_decide() {
        // Sixteen at 2000 Hz, far louder, but with less power than the 400 before them in sum.
        double pitch = pitch(416 * STRETCH, i -> i < 400 * STRETCH ? 0.2 * sine(1000, i) : 0.6 * sine(2000, i));
        assertThat(pitch).isCloseTo(2000, within(0.1));
        // Beside fifteen of them the sixteenth is one of the others; now those fifteen are the fewer.
        double other = pitch(
                416 * STRETCH,
                i -> i < 409 * STRETCH ? 0.2 * sine(1000, i) : 0.21 * sine(i < 412 * STRETCH ? 2000 : 3000, i));
        assertThat(other).isCloseTo(1000, within(0.1));
    }

    @Test
    void a_tone_at_the_end_is_found_where_it_is() {
        assertThat(pitch(10 * STRETCH, i -> i < 9 * STRETCH ? 0 : sine(1000, i)))
                .isCloseTo(1000, within(0.1));
    }

    @Test
    void less_than_a_stretch_and_silence_have_no_pitch() {
        assertThat(pitch(STRETCH - 1, i -> sine(1000, i))).isZero();
        assertThat(pitch(STRETCH, i -> sine(1000, i))).isCloseTo(1000, within(0.1));
        assertThat(pitch(20 * STRETCH, i -> 0)).isZero();
    }

    /** At 100 samples a second a stretch has the least length of 16; all that can be heard lies below 50 Hz. */
    @Test
    void at_a_very_low_rate_there_is_no_pitch() {
        float[] samples = new float[64];
        for (int i = 0; i < 64; i++) {
            samples[i] = i % 2;
        }
        Sound sound = Sound.of(100, samples);
        assertThat(Pitch.of(sound, new SoundBlocks(sound))).isZero();
    }
}
