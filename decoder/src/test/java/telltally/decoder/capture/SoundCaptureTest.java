package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.RelayClick;
import telltally.simulator.channel.Tone;
import telltally.simulator.document.ProblemException;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
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

    /** A relay that is as loud when it lets go, and four knocks of an eighth of that a moment after it has pulled in. */
    @Test
    void knocks_beside_a_relay_are_not_its_clicks() {
        RelayClick relay = new RelayClick(1800, 2_000_000, 0.8, 0.8);
        SampledSignal knocks = new RelayClick(900, 3_000_000, 0.1, 0.1)
                .sound(
                        PulseTrain.of(false, TRAIN.endNanos(), millis(3100), millis(4100), millis(5100), millis(8600)),
                        8000);
        Trains.Change noise = Sounds.noiseAndHum(1, 0.01, 0);
        Sound sound = Sounds.of(
                relay,
                TRAIN,
                8000,
                (second, value) -> noise.of(second, value) + knocks.value((int) Math.round(second * 8000)));
        assertThat(Trains.worstSeconds(TRAIN, ((Pulses) auto(sound)).train())).isLessThan(0.002);
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

    /** Four flashes of 0.4 s, a second apart but for a longer pause. */
    private static final PulseTrain SHORT = PulseTrain.of(
            false,
            millis(6000),
            millis(1000),
            millis(1400),
            millis(2000),
            millis(2400),
            millis(4000),
            millis(4400),
            millis(5000),
            millis(5400));

    private static long millis(long millis) {
        return millis * Trains.MILLI;
    }

    private static Sound sound(int size, IntToDoubleFunction values) {
        float[] samples = new float[size];
        for (int i = 0; i < size; i++) {
            samples[i] = (float) values.applyAsDouble(i);
        }
        return Sound.of(8000, samples);
    }

    private static double sine(double hertz, int sample) {
        return Math.sin(2 * Math.PI * hertz * sample / 8000);
    }

    /** Whether the lamp is lit at a sample. */
    private static boolean lit(int sample) {
        return SHORT.litAt(sample * 125_000L);
    }

    @Test
    void a_span_below_a_ten_thousandth_is_silent_wherever_it_lies() {
        NoPulses silence = new NoPulses(Reason.SILENCE, "the recording is silent");
        assertThat(auto(sound(8000, i -> 0.5 + i % 2 * 0.00009))).isEqualTo(silence);
        assertThat(auto(sound(8000, i -> 0.5 + i % 2 * 0.00011))).isNotEqualTo(silence);
    }

    @Test
    void less_than_two_blocks_of_a_millisecond_are_too_few() {
        assertThat(((NoPulses) auto(sound(15, i -> i % 2))).reason()).isEqualTo(Reason.TOO_FEW_SAMPLES);
        assertThat(((NoPulses) auto(sound(15, i -> i % 2))).text())
                .isEqualTo("the sound lasts less than two milliseconds");
        assertThat(((NoPulses) auto(sound(16, i -> i % 2))).text()).doesNotContain("two milliseconds");
    }

    @Test
    void the_remark_on_a_voltage_names_its_share_of_the_power_in_percent() {
        Sound voltage = Sounds.voltage(SHORT, 8000, 1e9, Sounds.noiseAndHum(4, 0.2, 0));
        long percent = Math.round(100 * new SoundBlocks(voltage).slowShareWhereLoud());
        assertThat(percent).isBetween(60L, 90L);
        assertThat(((Pulses) auto(voltage)).remarks().get(0))
                .isEqualTo("read as a voltage: where it is loudest, " + percent + " % of the power lies below 150 Hz");
    }

    /** A hum of 20 Hz that never stops, four times as strong as the tone. */
    @Test
    void a_tone_under_a_deep_hum_is_found_though_most_of_the_power_is_slow() {
        Sound humming = sound(48_000, i -> 0.4 * sine(20, i) + (lit(i) ? 0.1 * sine(1000, i) : 0));
        assertThat(new SoundBlocks(humming).slowShareWhereLoud()).isGreaterThan(0.5);
        Pulses pulses = (Pulses) auto(humming);
        assertThat(pulses.remarks()).containsExactly("read as a tone of 1000 Hz");
        assertThat(Trains.worstSeconds(SHORT, pulses.train())).isLessThan(0.006);
    }

    /** Knocks of a few samples, far louder than the tone, between its flashes of 0.4 s. */
    @Test
    void what_sounds_for_longer_than_a_click_is_a_tone_though_something_clicks() {
        Chance chance = Chance.of(7);
        Sound knocking = sound(
                48_000,
                i -> 0.05 * chance.nextNormal()
                        + (lit(i) ? 0.1 * sine(1000, i) : 0)
                        + (i % 12_500 < 4 ? 0.8 * (i % 2) : 0));
        assertThat(new Bursts(new SoundBlocks(knocking).loudness).areClicks()).isTrue();
        Pulses pulses = (Pulses) auto(knocking);
        assertThat(pulses.remarks().get(0)).isEqualTo("read as a tone of 1000 Hz");
    }

    /** A hiss that never stops, stronger than the voltage under it. */
    @Test
    void a_voltage_under_a_steady_hiss_is_found_though_most_of_the_power_is_not_slow() {
        Chance chance = Chance.of(5);
        Sound hissing = sound(48_000, i -> 0.35 * chance.nextNormal() + (lit(i) ? 0.25 : 0));
        assertThat(new SoundBlocks(hissing).slowShareWhereLoud()).isLessThan(0.5);
        Pulses pulses = (Pulses) auto(hissing);
        assertThat(pulses.remarks()).contains("read as a voltage: no tone and no clicks were found");
        assertThat(Trains.worstSeconds(SHORT, pulses.train())).isLessThan(0.006);
    }

    @Test
    void where_nothing_is_found_the_likelier_reading_says_why() {
        Chance chance = Chance.of(3);
        assertThat(auto(sound(8000, i -> 0.2 * chance.nextNormal()))).isInstanceOf(NoPulses.class);
        NoPulses hum = (NoPulses) auto(sound(16_000, i -> 0.4 * sine(20, i)));
        assertThat(hum)
                .isEqualTo(SoundCapture.of(sound(16_000, i -> 0.4 * sine(20, i)), SoundKind.VOLTAGE, Polarity.AUTO));
    }

    @Test
    void the_kind_that_the_user_names_is_read() {
        Sound tone = sound(48_000, i -> lit(i) ? 0.3 * sine(1000, i) : 0);
        assertThat(((Pulses) SoundCapture.of(tone, SoundKind.TONE, Polarity.AUTO)).remarks())
                .containsExactly("read as a tone of 1000 Hz");
        assertThat(SoundCapture.of(sound(8000, i -> 0.1 * sine(1000, i)), SoundKind.CLICKS, Polarity.AUTO))
                .isEqualTo(new NoPulses(Reason.NO_BLINKING, "no click stands out of the noise"));
    }
}
