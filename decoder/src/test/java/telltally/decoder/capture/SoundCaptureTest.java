package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.channel.RelayClick;
import telltally.simulator.channel.Tone;
import telltally.simulator.document.ProblemException;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;
import telltally.simulator.trace.Wav;

class SoundCaptureTest {
    private static final PulseTrain TRAIN = Trains.code34(1);

    private static CaptureResult auto(Sound sound) {
        return SoundCapture.of(sound, SoundKind.AUTO, Polarity.AUTO);
    }

    @Test
    void silence_is_told() {
        assertThat(((NoPulses) auto(Sound.of(8000, new float[8000]))).reason()).isEqualTo(Reason.SILENCE);
    }

    @Test
    void one_sample_is_told() {
        assertThat(auto(Sound.of(8000, 0.5f))).isInstanceOf(NoPulses.class);
    }

    @Test
    void a_tone_that_never_stops_does_not_blink() {
        Sound steady = Sounds.of(
                new Tone(1000, 0.5), PulseTrain.of(true, TRAIN.endNanos()), 8000, Sounds.noiseAndHum(1, 0.02, 0));
        assertThat(((NoPulses) auto(steady)).reason()).isEqualTo(Reason.NO_BLINKING);
    }

    @Test
    void the_remark_names_the_pitch() {
        Pulses pulses = (Pulses) auto(Sounds.of(new Tone(1000, 0.3), TRAIN, 44_100, Sounds.noiseAndHum(1, 0.02, 0)));
        assertThat(pulses.remarks()).containsExactly("read as a tone of 1000 Hz");
    }

    @Test
    void a_tone_survives_the_eight_bits_of_a_file() throws ProblemException {
        Sound sound = Sounds.of(new Tone(700, 0.1), TRAIN, 8000, Sounds.noiseAndHum(1, 0.005, 0));
        Pulses pulses = (Pulses) auto(Wav.read("beeps.wav", Wav.bytes(sound, 8)));
        // Half of the 5 ms in which the tone grows, and a block of 2 ms.
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.006);
    }

    @Test
    void a_buzz_without_pitch_is_read_by_its_loudness() {
        Sound buzz = Sounds.of(
                new Tone(1000, 1),
                TRAIN,
                8000,
                (second, value) -> Math.abs(value) > 0.01
                        ? ((Long.hashCode(Math.round(second * 8000) * 0x9E3779B97F4A7C15L) >> 16) / 65_536.0)
                        : 0);
        Pulses pulses = (Pulses) auto(buzz);
        // The loudness of noise in a block of 1 ms wavers; a filter of some blocks.
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.02);
    }

    @Test
    void clicks_say_which_polarity_was_assumed() {
        Sound clicks = Sounds.of(RelayClick.usual(), TRAIN, 8000, Sounds.noiseAndHum(1, 0.01, 0));
        Pulses pulses = (Pulses) auto(clicks);
        assertThat(pulses.remarks())
                .containsExactly(
                        "read as clicks of a relay: 14 bursts of sound, most of them as short as clicks",
                        "the first click is taken as the lamp going on");
        Pulses other = (Pulses) SoundCapture.of(clicks, SoundKind.CLICKS, Polarity.LOW_IS_LIT);
        assertThat(other.train()).isEqualTo(pulses.train().inverted());
        assertThat(other.remarks())
                .containsExactly(
                        "the first click is taken as the lamp going off",
                        "the lit stretches are as long as pauses: lit and dark may be the wrong way round");
    }

    @Test
    void an_odd_number_of_clicks_is_told() {
        PulseTrain odd = PulseTrain.of(false, 6_000_000_000L, 1_000_000_000L, 1_500_000_000L, 2_000_000_000L);
        Pulses pulses = (Pulses) auto(Sounds.of(RelayClick.usual(), odd, 8000, Sounds.noiseAndHum(1, 0.01, 0)));
        assertThat(pulses.remarks()).anyMatch(remark -> remark.startsWith("the number of clicks is odd"));
    }

    @Test
    void a_voltage_says_that_the_input_lost_its_levels() {
        Sound sound = Sounds.voltage(TRAIN, 8000, 0.02, Sounds.noiseAndHum(1, 0.005, 0));
        Pulses pulses = (Pulses) auto(sound);
        assertThat(pulses.remarks())
                .contains("the input let no steady voltage through; the steps at the edges were read");
        assertThat(pulses.train().litAtStart()).isFalse();
    }
}
