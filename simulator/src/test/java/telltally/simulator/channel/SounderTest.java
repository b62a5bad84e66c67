package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.simulator.channel.Trains.MILLI;
import static telltally.simulator.channel.Trains.SECOND;

import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

class SounderTest {
    private static final int RATE = 8000;
    private final PulseTrain flash = PulseTrain.of(false, 3 * SECOND, SECOND, 2 * SECOND);

    @Test
    void a_tone_is_the_sine_it_should_be_even_after_a_minute() {
        SampledSignal sound = new Tone(700, 0.5).sound(PulseTrain.of(true, 60 * SECOND), RATE);

        for (int i = sound.size() - 100; i < sound.size(); i++) {
            // Half a million turns of the pointer, each with a rounding of 1e-16.
            assertThat(sound.value(i)).isCloseTo(0.5 * Math.sin(2 * Math.PI * 700 * i / RATE), within(1e-9));
        }
    }

    @Test
    void a_tone_grows_and_fades_within_5_ms_and_is_silent_otherwise() {
        SampledSignal sound = new Tone(1000, 0.5).sound(flash, RATE);

        assertThat(loudest(sound, 0, 1)).isZero();
        assertThat(loudest(sound, 1, 1.0025)).isBetween(0.15, 0.26);
        assertThat(loudest(sound, 1.005, 2)).isBetween(0.49, 0.5);
        assertThat(loudest(sound, 2.0026, 2.005)).isBetween(0.1, 0.25);
        assertThat(loudest(sound, 2.0051, 3)).isZero();
    }

    @Test
    void a_burst_is_softer_than_a_flash() {
        PulseTrain burst = PulseTrain.of(false, SECOND, 100 * MILLI, 102 * MILLI);

        assertThat(loudest(new Tone(2000, 0.5).sound(burst, RATE), 0, 1)).isBetween(0.1, 0.21);
    }

    @Test
    void a_relay_clicks_at_both_edges_and_softer_when_it_lets_go() {
        SampledSignal sound = RelayClick.usual().sound(flash, RATE);

        assertThat(loudest(sound, 0, 1)).isZero();
        // A ring of 0.8 that fades to 1/e in 2 ms and peaks a quarter of a turn, 0.14 ms, after the edge: 0.74.
        assertThat(loudest(sound, 1, 1.01)).isBetween(0.65, 0.75);
        assertThat(loudest(sound, 2, 2.01)).isCloseTo(loudest(sound, 1, 1.01) / 2, within(1e-6));
        // 30 ms are 15 fading times: 0.8 exp(-15).
        assertThat(loudest(sound, 1.03, 2)).isLessThan(0.8 * Math.exp(-15));
    }

    @Test
    void a_click_between_samples_begins_at_its_own_instant() {
        long edge = SECOND + 60_000;
        SampledSignal sound = new RelayClick(1000, 5 * MILLI, 1, 1).sound(PulseTrain.of(false, 2 * SECOND, edge), RATE);

        for (int i = RATE + 1; i < RATE + 40; i++) {
            double since = (sound.atNanos(i) - edge) / 1e9;
            assertThat(sound.value(i))
                    .isCloseTo(Math.exp(-since / 0.005) * Math.sin(2 * Math.PI * 1000 * since), within(1e-9));
        }
    }

    private static double loudest(SampledSignal sound, double fromSeconds, double toSeconds) {
        double loudest = 0;
        for (int i = (int) Math.round(fromSeconds * RATE); i < Math.round(toSeconds * RATE); i++) {
            loudest = Math.max(loudest, Math.abs(sound.value(i)));
        }
        return loudest;
    }
}
