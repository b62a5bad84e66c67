package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Tone;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

class SpectrumTest {
    @Property(tries = 30)
    void powers_are_those_of_the_reference_library(@ForAll long seed, @ForAll @IntRange(max = 11) int bits) {
        int size = 1 << bits;
        Chance chance = Chance.of(seed);
        double[] samples = new double[size];
        double[] windowed = new double[size];
        for (int i = 0; i < size; i++) {
            samples[i] = chance.nextNormal();
            windowed[i] = samples[i] * (0.5 - 0.5 * Math.cos(2 * Math.PI * i / size));
        }
        Complex[] expected =
                new FastFourierTransformer(DftNormalization.STANDARD).transform(windowed, TransformType.FORWARD);
        double[] power = new Spectrum(size).power(samples);
        for (int bin = 0; bin < power.length; bin++) {
            double size2 = expected[bin].norm() * expected[bin].norm();
            // Rounding over eleven doublings of numbers of the order of the size.
            assertThat(power[bin]).isCloseTo(size2, within(1e-11 * (1 + size2) * size));
        }
    }

    /** A whole number of half periods: amplitude, exactly, by the orthogonality of sine and cosine. */
    @Test
    void the_amplitude_of_a_sine_is_its_envelope() {
        int rate = 8000;
        float[] samples = new float[rate];
        for (int i = 0; i < rate; i++) {
            samples[i] = (float) (0.4 * Math.sin(2 * Math.PI * 1000 * i / rate + 0.7));
        }
        SampledSignal envelope = ToneEnvelope.of(Sound.of(rate, samples), 1000);
        for (int i = 0; i < envelope.size(); i++) {
            // Single precision of the samples.
            assertThat(envelope.value(i)).isCloseTo(0.4, within(1e-6));
        }
    }

    /** |sinc|: a tone 250 Hz away passes an average over 2 ms with sin(pi/2)/(pi/2) = 2/pi of its amplitude. */
    @Test
    void a_tone_beside_the_frequency_is_weakened_as_an_average_weakens_it() {
        int rate = 48_000;
        float[] samples = new float[rate];
        for (int i = 0; i < rate; i++) {
            samples[i] = (float) (0.5 * Math.sin(2 * Math.PI * 8250 * i / rate));
        }
        SampledSignal envelope = ToneEnvelope.of(Sound.of(rate, samples), 8000);
        for (int i = 0; i < envelope.size(); i++) {
            // The image at the sum of the two frequencies, 16 kHz away, leaves up to 0.25 / 32 of ripple.
            assertThat(envelope.value(i)).isCloseTo(0.5 * 2 / Math.PI, within(0.01));
        }
    }

    @Property(tries = 30)
    void a_pitch_is_found_to_a_few_hertz(@ForAll @IntRange(min = 200, max = 3800) int hertz) {
        PulseTrain train = Trains.code34(1);
        Sound sound = Sounds.of(new Tone(hertz, 0.3), train, 8000, Sounds.noiseAndHum(hertz, 0.05, 0.1));
        // A quarter of the 31 Hz between bins of a window of 32 ms.
        assertThat(Pitch.of(sound, new SoundBlocks(sound))).isCloseTo(hertz, within(8.0));
    }

    @Test
    void a_stretch_whose_length_is_no_power_of_two_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Spectrum(24)).withMessage("24 is no power of two");
    }

    /** At 600 Hz 2 ms are 2.4 half periods of 0.83 ms: three, 20 samples at 8000 a second, are a block. */
    @Test
    void a_block_of_the_envelope_lies_in_time_where_its_middle_is_and_the_first_one_at_0() {
        SampledSignal envelope = ToneEnvelope.of(Sound.of(8000, new float[90]), 600);
        assertThat(envelope.size()).isEqualTo(4);
        assertThat(envelope.atNanos(0)).isZero();
        assertThat(envelope.atNanos(1)).isEqualTo(30 * 125_000L);
        assertThat(envelope.atNanos(3)).isEqualTo(70 * 125_000L);
    }

    @Test
    void the_envelope_follows_the_tone_block_by_block() {
        float[] samples = new float[160];
        for (int i = 0; i < 160; i++) {
            samples[i] = (float) ((i < 80 ? 0.5 : 0.25) * Math.cos(2 * Math.PI * 1000 * i / 8000));
        }
        SampledSignal envelope = ToneEnvelope.of(Sound.of(8000, samples), 1000);
        assertThat(envelope.size()).isEqualTo(10);
        for (int block = 0; block < 10; block++) {
            // Single precision of the samples.
            assertThat(envelope.value(block)).isCloseTo(block < 5 ? 0.5 : 0.25, within(1e-7));
        }
    }

    @Test
    void a_block_of_the_envelope_has_a_sample_at_least() {
        assertThat(ToneEnvelope.of(Sound.of(150, new float[10]), 70).size()).isEqualTo(10);
    }
}
