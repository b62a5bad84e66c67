package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.FloatRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.RelayClick;
import telltally.simulator.channel.Tone;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;

class SoundCaptureProperties {
    private static final int RATE_HZ = 8000;

    @Provide
    Arbitrary<PulseTrain> trains() {
        return Trains.lampLike();
    }

    @Property(tries = 12)
    void a_tone_of_any_pitch_in_noise_and_hum_gives_back_every_edge(
            @ForAll("trains") PulseTrain train,
            @ForAll @DoubleRange(min = 250, max = 3500) double hertz,
            @ForAll @DoubleRange(min = 0, max = 0.1) double noise,
            @ForAll long seed) {
        Sound sound = Sounds.of(new Tone(hertz, 0.3), train, RATE_HZ, Sounds.noiseAndHum(seed, noise, 0.05));
        Pulses pulses = (Pulses) SoundCapture.of(sound, SoundKind.AUTO, Polarity.AUTO);
        assertThat(pulses.remarks().get(0)).startsWith("read as a tone of ");
        // Half of the 5 ms in which the tone grows, and a block of 2 to 4 ms.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.008);
    }

    @Property(tries = 12)
    void the_clicks_of_a_relay_in_noise_give_back_every_edge(
            @ForAll("trains") PulseTrain train,
            @ForAll @DoubleRange(min = 0.01, max = 0.03) double noise,
            @ForAll long seed) {
        Sound sound = Sounds.of(RelayClick.usual(), train, RATE_HZ, Sounds.noiseAndHum(seed, noise, 0));
        Pulses pulses = (Pulses) SoundCapture.of(sound, SoundKind.AUTO, Polarity.AUTO);
        assertThat(pulses.remarks().get(0)).startsWith("read as clicks of a relay: ");
        // The ring starts from zero and needs part of its first millisecond.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.002);
    }

    @Property(tries = 12)
    void a_voltage_behind_a_condenser_gives_back_every_edge(
            @ForAll("trains") PulseTrain train,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double fadeSeconds,
            @ForAll long seed) {
        Sound sound = Sounds.voltage(train, RATE_HZ, fadeSeconds, Sounds.noiseAndHum(seed, 0.005, 0));
        Pulses pulses = (Pulses) SoundCapture.of(sound, SoundKind.AUTO, Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks().get(0)).startsWith("read as a voltage:");
        // Steps are told to a block of 1 ms, after the parting of slow from quick, which lags by 1 ms.
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.004);
    }

    @Property(tries = 12)
    void a_steady_voltage_gives_back_every_edge(@ForAll("trains") PulseTrain train, @ForAll long seed) {
        Sound sound = Sounds.voltage(train, RATE_HZ, Double.POSITIVE_INFINITY, Sounds.noiseAndHum(seed, 0.01, 0));
        Pulses pulses = (Pulses) SoundCapture.of(sound, SoundKind.AUTO, Polarity.HIGH_IS_LIT);
        assertThat(pulses.remarks().get(0)).startsWith("read as a voltage:");
        assertThat(Trains.worstSeconds(train, pulses.train())).isLessThan(0.004);
    }

    @Property(tries = 200)
    void any_sound_is_answered(
            @ForAll @Size(min = 1, max = 300) float[] samples,
            @ForAll @IntRange(min = 1, max = 10_000) int rateHz,
            @ForAll SoundKind kind,
            @ForAll Polarity polarity) {
        assertThatCode(() -> SoundCapture.of(Sound.of(rateHz, samples), kind, polarity))
                .doesNotThrowAnyException();
    }

    @Property(tries = 100)
    void any_repeated_pattern_is_answered(
            @ForAll @Size(min = 1, max = 30) float @FloatRange(min = -1, max = 1) [] pattern,
            @ForAll @IntRange(min = 1, max = 400) int times,
            @ForAll SoundKind kind) {
        float[] samples = new float[pattern.length * times];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = pattern[i % pattern.length];
        }
        assertThatCode(() -> SoundCapture.of(Sound.of(1000, samples), kind, Polarity.AUTO))
                .doesNotThrowAnyException();
    }

    @Property(tries = 12)
    void noise_alone_is_no_blinking(@ForAll long seed, @ForAll @IntRange(min = 1, max = 20) int seconds) {
        Chance chance = Chance.of(seed);
        float[] samples = new float[seconds * RATE_HZ];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) (0.1 * chance.nextNormal());
        }
        assertThat(SoundCapture.of(Sound.of(RATE_HZ, samples), SoundKind.AUTO, Polarity.AUTO))
                .isInstanceOf(CaptureResult.NoPulses.class);
    }
}
