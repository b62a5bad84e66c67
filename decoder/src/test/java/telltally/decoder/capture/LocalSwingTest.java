package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Ten samples a second, so that thirty to either side are near. Clear is what is 15 % of the usual swing off the middle. */
class LocalSwingTest {
    private static LocalSwing of(double... values) {
        long[] atNanos = new long[values.length];
        Arrays.setAll(atNanos, i -> i * 100_000_000L);
        return new LocalSwing(new Series(atNanos, values, 1), new Windows(atNanos));
    }

    /** Two samples at a bottom and two at a height above it by turns, from the bottom. */
    private static void blink(double[] values, int from, int to, double bottom, double height) {
        for (int i = from; i < to; i++) {
            values[i] = bottom + ((i - from) / 2 % 2) * height;
        }
    }

    private static boolean[] high(double... values) {
        return of(values).high(values);
    }

    @Test
    void what_is_above_the_middle_of_what_is_near_is_high() {
        double[] values = new double[200];
        // As bright while dark in the second part as while lit in the first, more than six seconds later.
        blink(values, 0, 80, 0, 20);
        Arrays.fill(values, 80, 120, 20);
        blink(values, 120, 200, 20, 20);
        boolean[] high = high(values);
        for (int i = 0; i < 50; i++) {
            assertThat(high[i]).isEqualTo(i / 2 % 2 == 1);
            assertThat(high[150 + i]).isEqualTo((30 + i) / 2 % 2 == 1);
        }
    }

    @Test
    void through_a_long_steady_stretch_the_last_answer_stands() {
        double[] values = new double[160];
        blink(values, 0, 43, 0, 20);
        Arrays.fill(values, 43, 160, 20);
        LocalSwing swing = of(values);
        assertThat(swing.blinksNear(71)).isTrue();
        assertThat(swing.blinksNear(72)).isFalse();
        boolean[] high = swing.high(values);
        for (int i = 42; i < 160; i++) {
            assertThat(high[i]).isTrue();
        }
        // What has faded meanwhile has not been switched off.
        double[] faded = values.clone();
        Arrays.fill(faded, 100, 160, 1);
        assertThat(swing.high(faded)[150]).isTrue();
    }

    @Test
    void before_the_first_clear_answer_all_is_as_that() {
        double[] values = new double[120];
        Arrays.fill(values, 0, 60, 20);
        blink(values, 60, 120, 0, 20);
        boolean[] high = high(values);
        for (int i = 0; i < 60; i++) {
            assertThat(high[i]).isTrue();
        }
        assertThat(high[60]).isFalse();
        // From 60 on zeros are near the first ones: clear from sample 30 on, and low if they are low.
        Arrays.fill(values, 0, 60, 0);
        assertThat(high(values)[0]).isFalse();
    }

    /** The middle is 10 and 15 % of 20 are 3. Samples 16 and 17 are low, 18 and 19 high, 20 and 21 low. */
    @Test
    void what_is_not_clear_is_as_what_was_before() {
        assertThat(highWith(20, 13)[20]).isTrue();
        assertThat(highWith(20, 7)[20]).isTrue();
        assertThat(highWith(20, 6.9375)[20]).isFalse();
        assertThat(highWith(18, 7)[18]).isFalse();
        assertThat(highWith(18, 13)[18]).isFalse();
        assertThat(highWith(18, 13.0625)[18]).isTrue();
    }

    private static boolean[] highWith(int index, double value) {
        double[] values = new double[80];
        blink(values, 0, 80, 0, 20);
        values[index] = value;
        return high(values);
    }

    @Test
    void a_spike_of_one_sample_is_not_the_highest() {
        double[] values = new double[80];
        blink(values, 0, 80, 0, 20);
        values[40] = 900;
        boolean[] high = high(values);
        assertThat(high[42]).isTrue();
        assertThat(high[44]).isFalse();
    }

    /** Half of the greatest swing still counts as blinking, so that most, 10, are the usual; more than 5 is near it. */
    @Test
    void the_usual_swing_is_the_median_of_those_of_at_least_half_the_greatest() {
        double[] values = new double[400];
        blink(values, 0, 40, 0, 20);
        blink(values, 120, 400, 0, 10);
        LocalSwing swing = of(values);
        assertThat(swing.blinksNear(300)).isTrue();
        // A little less than half does not count: the usual is 20, and what swings by less than 10 is a steady level.
        blink(values, 120, 400, 0, 9.9);
        assertThat(of(values).blinksNear(300)).isFalse();
    }

    @Test
    void half_of_the_usual_swing_is_not_blinking() {
        double[] values = new double[400];
        blink(values, 0, 280, 0, 20);
        blink(values, 350, 400, 0, 10);
        assertThat(of(values).blinksNear(100)).isTrue();
        assertThat(of(values).blinksNear(390)).isFalse();
        blink(values, 350, 400, 0, 10.5);
        assertThat(of(values).blinksNear(390)).isTrue();
    }
}
