package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** Twenty samples a second, blinking once a second, in noise; what a first look made of it is given. */
class SureLevelsTest {
    private static final int SIZE = 600;
    private static final double NOISE = 0.1;

    private final long[] atNanos = new long[SIZE];
    private final double[] values = new double[SIZE];
    private final boolean[] look = new boolean[SIZE];

    SureLevelsTest() {
        Arrays.setAll(atNanos, i -> i * 50_000_000L);
    }

    private boolean[] sure() {
        return SureLevels.of(new Series(atNanos, values, 1), look, new Windows(atNanos));
    }

    /** From a second to another: what is high by turns lies so much higher. */
    private void blinking(int from, int to, double swing) {
        Chance chance = Chance.of(from);
        for (int i = 20 * from; i < 20 * to; i++) {
            look[i] = i % 20 < 10;
            values[i] = (look[i] ? swing : 0) + NOISE * chance.nextNormal();
        }
    }

    /** Noise of one level; a first look takes for high what lies above its middle. */
    private void parted(int from, int to, double level) {
        Chance chance = Chance.of(from);
        for (int i = 20 * from; i < 20 * to; i++) {
            values[i] = level + NOISE * chance.nextNormal();
            look[i] = values[i] > level;
        }
    }

    private static boolean[] all(boolean level, int count) {
        boolean[] all = new boolean[count];
        Arrays.fill(all, level);
        return all;
    }

    private static boolean[] part(boolean[] levels, int from, int to) {
        return Arrays.copyOfRange(levels, 20 * from, 20 * to);
    }

    @Test
    void noise_in_a_pause_is_as_what_was_before() {
        blinking(0, 8, 1);
        parted(8, 20, 0);
        blinking(20, 30, 1);
        boolean[] sure = sure();
        assertThat(part(sure, 0, 8)).isEqualTo(part(look, 0, 8));
        assertThat(part(sure, 12, 16)).isEqualTo(all(false, 80));
        assertThat(part(sure, 20, 30)).isEqualTo(part(look, 20, 30));
    }

    @Test
    void noise_in_long_light_is_light() {
        blinking(0, 8, 1);
        parted(8, 20, 1);
        blinking(20, 30, 1);
        // The last that is sure, three seconds before all is noise, is high.
        Arrays.fill(look, 20 * 8, 20 * 12, true);
        assertThat(part(sure(), 12, 16)).isEqualTo(all(true, 80));
    }

    @Test
    void noise_before_the_first_flash_is_as_the_first_that_is_sure() {
        parted(0, 12, 0);
        blinking(12, 30, 1);
        look[20 * 9] = false;
        Arrays.fill(look, 20 * 8, 20 * 12, false);
        assertThat(part(sure(), 0, 5)).isEqualTo(all(false, 100));
    }

    @Test
    void what_blinks_less_strongly_still_blinks() {
        blinking(0, 20, 1);
        blinking(20, 30, 0.38);
        assertThat(sure()).isEqualTo(look);
    }

    @Test
    void where_nothing_is_sure_all_stays_as_it_is() {
        assertThat(sure()).isEqualTo(look);
        parted(0, 30, 0);
        assertThat(sure()).isEqualTo(look);
    }
}
