package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

class SoundBlocksTest {
    /** Some seconds of waves, strong and soft, over a voltage that changes once a second. */
    private static Sound mixed(int rate, int size) {
        Chance chance = Chance.of(11);
        float[] samples = new float[size];
        for (int i = 0; i < size; i++) {
            samples[i] = (float) (0.2 + 0.3 * (i / rate % 2) + 0.1 * (i / 500 % 3) * chance.nextNormal());
        }
        return Sound.of(rate, samples);
    }

    @Test
    void a_block_is_a_millisecond_rounded_to_samples_and_at_least_one() {
        assertThat(new SoundBlocks(mixed(44_100, 4410)).blockSamples).isEqualTo(44);
        assertThat(new SoundBlocks(mixed(44_100, 4410)).count()).isEqualTo(100);
        assertThat(new SoundBlocks(mixed(8000, 807)).count()).isEqualTo(100);
        assertThat(new SoundBlocks(mixed(400, 50)).blockSamples).isEqualTo(1);
    }

    @Test
    void a_steady_voltage_is_slow_from_the_first_sample_on() {
        float[] steady = new float[80];
        Arrays.fill(steady, 0.5f);
        SoundBlocks blocks = new SoundBlocks(Sound.of(8000, steady));
        assertThat(blocks.slow).containsOnly(0.5);
        assertThat(blocks.loudness).containsOnly(0);
    }

    /** A condenser of one pole at 150 Hz: after n samples of a step exp(-2 pi 150 n / 8000) of it is still missing. */
    @Test
    void a_step_is_loud_at_first_and_slow_in_the_end() {
        float[] step = new float[88];
        Arrays.fill(step, 8, 88, 1);
        SoundBlocks blocks = new SoundBlocks(Sound.of(8000, step));
        for (int block = 1; block < 11; block++) {
            int first = 8 * (block - 1) + 1;
            double[] missing = IntStream.range(first, first + 8)
                    .mapToDouble(n -> Math.exp(-2 * Math.PI * 150 * n / 8000))
                    .toArray();
            double slow = 1 - Arrays.stream(missing).average().orElseThrow();
            double power =
                    Arrays.stream(missing).map(each -> each * each).average().orElseThrow();
            assertThat(blocks.slow[block]).isCloseTo(slow, within(1e-12));
            assertThat(blocks.loudness[block]).isCloseTo(Math.sqrt(power), within(1e-12));
        }
    }

    @Test
    void a_block_lies_in_time_where_its_middle_is_and_the_first_one_at_0() {
        SoundBlocks blocks = new SoundBlocks(mixed(8000, 80));
        SampledSignal signal = blocks.signal(blocks.loudness);
        assertThat(signal.size()).isEqualTo(10);
        assertThat(signal.atNanos(0)).isZero();
        assertThat(signal.atNanos(1)).isEqualTo(1_500_000);
        assertThat(signal.atNanos(9)).isEqualTo(9_500_000);
        assertThat(signal.value(9)).isEqualTo(blocks.loudness[9]);
    }

    /** Power of what is slow, from its median, over all power, in the blocks of at least a tenth of the greatest. */
    @Test
    void the_slow_share_is_that_of_the_loudest_blocks() {
        SoundBlocks blocks = new SoundBlocks(mixed(8000, 40_000));
        double rest = new Quantiles(blocks.slow).median();
        double[] slow =
                Arrays.stream(blocks.slow).map(each -> Math.pow(each - rest, 2)).toArray();
        double[] all = IntStream.range(0, slow.length)
                .mapToDouble(i -> slow[i] + Math.pow(blocks.loudness[i], 2))
                .toArray();
        double least = Arrays.stream(all).max().orElseThrow() / 10;
        int[] loud = IntStream.range(0, all.length).filter(i -> all[i] >= least).toArray();
        assertThat(loud).hasSizeBetween(100, all.length - 100);
        double share = Arrays.stream(loud).mapToDouble(i -> slow[i]).sum()
                / Arrays.stream(loud).mapToDouble(i -> all[i]).sum();
        assertThat(blocks.slowShareWhereLoud()).isCloseTo(share, within(1e-12));
    }

    @Test
    void a_tone_is_not_slow_a_voltage_is_and_silence_is_neither() {
        float[] tone = new float[8000];
        float[] voltage = new float[8000];
        for (int i = 0; i < 8000; i++) {
            tone[i] = (float) Math.sin(2 * Math.PI * 2000 * i / 8000);
            voltage[i] = i < 4000 ? 0 : 1;
        }
        // One pole passes 150 / 2000 of the amplitude, less than 0.6 % of the power.
        assertThat(new SoundBlocks(Sound.of(8000, tone)).slowShareWhereLoud()).isLessThan(0.01);
        assertThat(new SoundBlocks(Sound.of(8000, voltage)).slowShareWhereLoud())
                .isGreaterThan(0.9);
        assertThat(new SoundBlocks(Sound.of(8000, new float[80])).slowShareWhereLoud())
                .isZero();
    }
}
