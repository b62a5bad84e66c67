package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.Sound;

/** One second at 8000 samples a second, 8 to a block; a quiet buzz of 0.06 up and down, so that there is a floor. */
class ClickCaptureTest {
    private static final int RATE = 8000;

    private static float[] buzz(float rest) {
        float[] samples = new float[RATE];
        for (int i = 0; i < RATE; i++) {
            samples[i] = rest + (i % 2 == 0 ? 0.06f : -0.06f);
        }
        return samples;
    }

    /** A sample of 0.5 up and one down. */
    private static void click(float[] samples, int at) {
        samples[at] += 0.5f;
        samples[at + 1] -= 0.5f;
    }

    private static Pulses read(float[] samples, Polarity polarity) {
        Sound sound = Sound.of(RATE, samples);
        SoundBlocks blocks = new SoundBlocks(sound);
        return (Pulses) ClickCapture.of(sound, blocks, new Bursts(blocks.loudness), polarity);
    }

    private static long nanos(int sample) {
        return sample * 125_000L;
    }

    private static PulseTrain train(boolean litAtStart, int... samples) {
        long[] edges = new long[samples.length];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = nanos(samples[i]);
        }
        return PulseTrain.of(litAtStart, nanos(RATE), edges);
    }

    @Test
    void every_click_changes_the_level_at_its_first_sample_and_the_first_turns_the_lamp_on() {
        float[] samples = buzz(0);
        click(samples, 2004);
        click(samples, 4001);
        Pulses pulses = read(samples, Polarity.AUTO);
        assertThat(pulses.train()).isEqualTo(train(false, 2004, 4001));
        assertThat(pulses.remarks()).containsExactly("the first click is taken as the lamp going on");
    }

    @Test
    void the_user_may_say_that_the_first_click_turns_the_lamp_off() {
        float[] samples = buzz(0);
        click(samples, 2004);
        click(samples, 4001);
        Pulses pulses = read(samples, Polarity.LOW_IS_LIT);
        assertThat(pulses.train()).isEqualTo(train(true, 2004, 4001));
        assertThat(pulses.remarks()).contains("the first click is taken as the lamp going off");
    }

    @Test
    void a_steady_voltage_under_the_clicks_moves_none() {
        float[] samples = buzz(0.4f);
        click(samples, 2004);
        click(samples, 4001);
        assertThat(read(samples, Polarity.AUTO).train()).isEqualTo(train(false, 2004, 4001));
    }

    /** Three tenths of 0.5 are 0.15: 0.14 is not yet the click, 0.17 is. */
    @Test
    void a_click_begins_with_the_first_sample_of_three_tenths_of_its_peak() {
        float[] samples = buzz(0);
        samples[2002] = 0.14f;
        samples[2003] = 0.17f;
        samples[2004] = 0.5f;
        samples[2005] = -0.5f;
        assertThat(read(samples, Polarity.AUTO).train()).isEqualTo(train(false, 2003));
    }

    /** Block 250 is samples 2000 to 2007; in the one before, one sample of 0.17 is too little to rise above the buzz. */
    @Test
    void a_click_may_begin_in_the_block_before_the_one_that_sticks_out() {
        float[] samples = buzz(0);
        samples[1999] = -0.17f;
        click(samples, 2000);
        assertThat(read(samples, Polarity.AUTO).train()).isEqualTo(train(false, 1999));
    }

    /** A softer click before keeps the threshold low; the one in question begins with 0.25 in block 250. */
    @Test
    void a_click_may_be_loudest_in_the_block_after_the_first_and_no_later() {
        assertThat(loudestAt(2014)).isEqualTo(train(false, 1000, 2014));
        assertThat(loudestAt(2016)).isEqualTo(train(false, 1000, 2003));
    }

    private static PulseTrain loudestAt(int loudest) {
        float[] samples = buzz(0);
        samples[1000] = 0.3f;
        samples[1001] = -0.3f;
        samples[2003] = 0.25f;
        samples[2004] = -0.25f;
        samples[loudest] = 0.9f;
        samples[loudest + 1] = -0.9f;
        return read(samples, Polarity.AUTO).train();
    }

    /** A jump after the first sample leaves that one far off the mean of what follows: nothing can change at 0. */
    @Test
    void what_stands_out_from_the_first_sample_on_is_no_change() {
        float[] samples = buzz(0.5f);
        samples[0] = 0;
        click(samples, 4001);
        assertThat(read(samples, Polarity.AUTO).train()).isEqualTo(train(false, 4001));
    }

    @Test
    void a_click_at_the_very_end_is_read_to_the_end() {
        float[] samples = buzz(0);
        click(samples, 7998);
        assertThat(read(samples, Polarity.AUTO).train()).isEqualTo(train(false, 7998));
    }

    @Test
    void an_odd_number_of_clicks_is_told_and_an_even_one_is_not() {
        float[] samples = buzz(0);
        click(samples, 2000);
        List<String> odd = read(samples, Polarity.AUTO).remarks();
        assertThat(odd.get(odd.size() - 1)).startsWith("the number of clicks is odd: ");
        click(samples, 3000);
        assertThat(read(samples, Polarity.AUTO).remarks()).noneMatch(remark -> remark.contains("odd"));
    }

    @Test
    void contrast_is_the_usual_peak_over_a_third_of_the_floor() {
        float[] samples = buzz(0);
        click(samples, 2000);
        click(samples, 4000);
        Sound sound = Sound.of(RATE, samples);
        Bursts bursts = new Bursts(new SoundBlocks(sound).loudness);
        Quality quality = read(samples, Polarity.AUTO).quality();
        assertThat(quality.darkLevel()).isZero();
        assertThat(quality.litLevel()).isEqualTo(bursts.usualPeak()).isGreaterThan(0.1);
        assertThat(quality.noise()).isCloseTo(bursts.floor / 3, within(1e-15));
        assertThat(quality.contrast()).isCloseTo(3 * bursts.usualPeak() / bursts.floor, within(1e-9));
        assertThat(quality.edgeErrorNanos()).isEqualTo(1_000_000);
    }

    @Test
    void without_any_noise_the_contrast_is_a_thousand() {
        float[] samples = new float[RATE];
        click(samples, 2000);
        assertThat(read(samples, Polarity.AUTO).quality().contrast()).isEqualTo(1000);
    }
}
