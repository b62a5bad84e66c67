package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/** Two levels, mostly 0 and 0.5 of a unit of 8, so that a share of the swing is no share of 1. */
class LevelFitTest {
    private static final long MILLI = 1_000_000L;
    private static final double UNIT = 8;

    private static LevelFit fit(long spacingNanos, double... values) {
        long[] atNanos = new long[values.length];
        Arrays.setAll(atNanos, i -> i * spacingNanos);
        return LevelFit.best(new Series(atNanos, values, UNIT), new Windows(atNanos));
    }

    private static double[] values(int size, IntToDoubleFunction value) {
        return IntStream.range(0, size).mapToDouble(value).toArray();
    }

    /** Ten samples low, ten high by turns. */
    private static double tens(int i) {
        return i / 10 % 2 * 0.5;
    }

    private static double[] noisy(int size, double low, double high) {
        Chance chance = Chance.of(31);
        return values(size, i -> tens(i) + (tens(i) > 0 ? high : low) * chance.nextNormal());
    }

    @Test
    void clean_levels_have_the_greatest_contrast_and_no_noise() {
        LevelFit fit = fit(20 * MILLI, values(200, LevelFitTest::tens));
        assertThat(fit.contrast()).isCloseTo(1000, within(1e-9));
        assertThat(fit.swing()).isCloseTo(0.5 * UNIT, within(1e-9));
        assertThat(fit.edgeCount()).isEqualTo(19);
        assertThat(fit.twoLevels()).isTrue();
        Quality quality = fit.quality(true);
        assertThat(quality.noise()).isCloseTo(0, within(1e-9));
        assertThat(quality.filterSamples()).isEqualTo(1);
        assertThat(quality.darkLevel()).isCloseTo(0, within(1e-9));
        assertThat(quality.litLevel()).isCloseTo(4, within(1e-9));
        assertThat(fit.quality(false).darkLevel()).isCloseTo(4, within(1e-9));
        assertThat(fit.quality(false).litLevel()).isCloseTo(0, within(1e-9));
    }

    @Test
    void levels_are_told_where_they_lie() {
        Quality quality = fit(20 * MILLI, values(200, i -> 0.25 + tens(i))).quality(true);
        assertThat(quality.darkLevel()).isCloseTo(0.25 * UNIT, within(1e-9));
        assertThat(quality.litLevel()).isCloseTo(0.75 * UNIT, within(1e-9));
    }

    /** A sample in two seconds: too few within three for drift to be taken out, and levels stay where they are. */
    @Test
    void few_samples_are_parted_as_they_are() {
        Chance chance = Chance.of(33);
        LevelFit fit = fit(2000 * MILLI, values(400, i -> 1 + i / 2 % 2 * 0.5 + 0.02 * chance.nextNormal()));
        assertThat(fit.swing()).isCloseTo(0.5 * UNIT, within(0.1));
        assertThat(fit.contrast()).isCloseTo(25, within(4.0));
        assertThat(fit.edgeCount()).isEqualTo(199);
        Quality quality = fit.quality(true);
        assertThat(quality.darkLevel()).isCloseTo(1 * UNIT, within(0.1));
        assertThat(quality.litLevel()).isCloseTo(1.5 * UNIT, within(0.1));
    }

    @Test
    void the_train_is_lit_where_it_is_high_and_ends_a_step_after_the_last_sample() {
        LevelFit fit = fit(20 * MILLI, values(40, LevelFitTest::tens));
        PulseTrain train = PulseTrain.of(false, 800 * MILLI, 190 * MILLI, 390 * MILLI, 590 * MILLI);
        assertThat(fit.train().edgeCount()).isEqualTo(3);
        assertThat(Trains.worstSeconds(train, fit.train())).isLessThan(1e-6);
        assertThat(fit.train().endNanos()).isEqualTo(train.endNanos());
    }

    /** The root of the mean square of 0.01 and 0.03; 1000 samples of each tell a deviation to some per cent. */
    @Test
    void either_level_counts_as_much_for_the_noise() {
        LevelFit fit = fit(20 * MILLI, noisy(2000, 0.01, 0.03));
        double noise = Math.sqrt((0.01 * 0.01 + 0.03 * 0.03) / 2);
        assertThat(fit.quality(true).noise()).isCloseTo(noise * UNIT, within(0.1 * noise * UNIT));
        assertThat(fit.contrast()).isCloseTo(0.5 / noise, within(2.5));
    }

    /** Three values each, by turns: 0.01 and 0.05 are the median distances from the middle ones. */
    @Test
    void of_fewer_than_eight_samples_the_scatter_does_not_count() {
        double dark = 1.4826 * 0.01 * UNIT;
        double both = 1.4826 * Math.sqrt((0.01 * 0.01 + 0.05 * 0.05) / 2) * UNIT;
        assertThat(noise(flash(7))).isCloseTo(dark, within(0.2 * dark));
        assertThat(noise(flash(8))).isCloseTo(both, within(0.2 * both));
        assertThat(noise(negative(flash(7)))).isCloseTo(dark, within(0.2 * dark));
        assertThat(noise(negative(flash(8)))).isCloseTo(both, within(0.2 * both));
    }

    private static double noise(double... values) {
        return fit(20 * MILLI, values).quality(true).noise();
    }

    private static double[] flash(int samples) {
        return values(300, i -> i < 150 || i >= 150 + samples ? 0.01 * (i % 3 - 1) : 0.5 + 0.05 * (i % 3 - 1));
    }

    private static double[] negative(double[] values) {
        return Arrays.stream(values).map(value -> -value).toArray();
    }

    /** Of 400 samples 80 are high: 12 / 80 and 60 / 400 are added to 4. */
    @Test
    void a_rare_level_and_few_samples_need_more_contrast() {
        LevelFit fit = fit(20 * MILLI, values(400, i -> i % 50 >= 40 ? 0.5 : 0));
        assertThat(fit.neededContrast()).isCloseTo(4 + 12 / 80.0 + 60 / 400.0, within(1e-12));
    }

    /** Averaged over three samples it counts three times as much; 100 samples of 200 are on either level. */
    @Test
    void what_is_averaged_needs_more_contrast() {
        LevelFit fit = fit(40 * MILLI, noisy(200, 0.1, 0.1));
        assertThat(fit.quality(true).filterSamples()).isEqualTo(3);
        assertThat(fit.neededContrast()).isCloseTo(4 + 3 * 12 / 100.0 + 3 * 60 / 200.0, within(0.05));
    }

    @Test
    void one_level_alone_is_not_two() {
        LevelFit fit = fit(20 * MILLI, values(100, i -> 0.25));
        assertThat(fit.neededContrast()).isCloseTo(4 + 60 / 100.0, within(1e-12));
        assertThat(fit.twoLevels()).isFalse();
        assertThat(fit.edgeCount()).isZero();
    }

    /** Averaging over three samples is done where 120 ms hold three steps, over seven where they hold seven. */
    @Test
    void noise_is_averaged_over_up_to_120_milliseconds() {
        double[] noisy = noisy(2000, 0.1, 0.1);
        assertThat(fit(20 * MILLI, noisy).quality(true).filterSamples()).isEqualTo(3);
        assertThat(fit(40 * MILLI, noisy).quality(true).filterSamples()).isEqualTo(3);
        assertThat(fit(41 * MILLI, noisy).quality(true).filterSamples()).isEqualTo(1);
        // Three times the noise, and stretches of 50 samples, most of which seven leave as they are.
        double[] noisier = values(2000, i -> 3 * (noisy[i] - tens(i)) + tens(i / 5));
        assertThat(fit(17 * MILLI, noisier).quality(true).filterSamples()).isEqualTo(7);
        assertThat(fit(18 * MILLI, noisier).quality(true).filterSamples()).isEqualTo(3);
    }

    /** Contrast 10 is ample: it is left as it is. */
    @Test
    void what_stands_out_clearly_is_not_averaged() {
        assertThat(fit(10 * MILLI, noisy(2000, 0.05, 0.05)).quality(true).filterSamples())
                .isEqualTo(1);
    }

    /** Spacing over the root of 12, as of even chance between two samples, and noise over the slope of an edge. */
    @Test
    void the_error_of_an_edge_is_that_of_sampling_and_of_noise() {
        Quality clean = fit(20 * MILLI, values(200, LevelFitTest::tens)).quality(true);
        assertThat(clean.edgeErrorNanos() / 1e6).isCloseTo(Math.hypot(20 / Math.sqrt(12), 0.02), within(1e-4));
        Quality noisy = fit(40 * MILLI, noisy(2000, 0.1, 0.1)).quality(true);
        assertThat(noisy.edgeErrorNanos() / 1e6)
                .isCloseTo(Math.hypot(40 / Math.sqrt(12), 3 * 40 / noisy.contrast()), within(1e-4));
    }

    @Test
    void a_spike_of_one_sample_is_no_edge() {
        double[] values = values(200, LevelFitTest::tens);
        values[105] = 0.5;
        assertThat(fit(20 * MILLI, values).edgeCount()).isEqualTo(19);
    }

    /** From the middle, 0.25, a tenth of the swing is 0.05. */
    @Test
    void in_clean_levels_a_dip_of_a_tenth_beyond_the_middle_is_two_edges() {
        assertThat(dip(values(200, LevelFitTest::tens), 0.21).edgeCount()).isEqualTo(19);
        assertThat(dip(values(200, LevelFitTest::tens), 0.19).edgeCount()).isEqualTo(21);
    }

    /** Three deviations of 0.04 are 0.12; three of 0.055 would be 0.165, but a dip to 0.3 of the swing, 0.15, is enough. */
    @Test
    void in_noise_a_dip_must_be_deeper_but_never_by_more_than_three_tenths() {
        assertThat(dip(noisy(2000, 0.04, 0.04), 0.15).edgeCount()).isEqualTo(199);
        assertThat(dip(noisy(2000, 0.04, 0.04), 0.11).edgeCount()).isEqualTo(201);
        assertThat(dip(noisy(2000, 0.055, 0.055), 0.09).edgeCount()).isEqualTo(201);
        assertThat(dip(noisy(2000, 0.055, 0.055), 0.12).edgeCount()).isEqualTo(199);
    }

    /** Two samples within a lit stretch. */
    private static LevelFit dip(double[] values, double to) {
        values[114] = to;
        values[115] = to;
        return fit(20 * MILLI, values);
    }

    /** Of 20 samples each, some of a level are so far off; 0.35 of the swing, 0.175, is too far. */
    @Test
    void samples_far_off_both_levels_speak_against_two() {
        assertThat(stray(5, 0.155).twoLevels()).isTrue();
        assertThat(stray(5, 0.195).twoLevels()).isTrue();
        assertThat(stray(8, 0.155).twoLevels()).isTrue();
        assertThat(stray(8, 0.195).twoLevels()).isFalse();
    }

    /** By turns 20 samples low and 30 high, so many of which are too high; or all of that upside down. */
    private static LevelFit stray(int count, double off) {
        double[] values = values(500, i -> i % 50 < 20 ? 0 : i % 50 >= 35 && i % 50 < 35 + count ? 0.5 + off : 0.5);
        LevelFit above = fit(20 * MILLI, values);
        assertThat(fit(20 * MILLI, negative(values)).twoLevels()).isEqualTo(above.twoLevels());
        return above;
    }

    /** On the way at each edge is no sample, one, or one at three tenths of the way and one at a fifth. */
    @Test
    void suddenness_is_the_share_of_edges_in_edges_and_samples_on_the_way() {
        assertThat(fit(20 * MILLI, values(200, LevelFitTest::tens)).suddenness())
                .isEqualTo(1);
        assertThat(on(0.5).suddenness()).isCloseTo(1 / 2.0, within(1e-12));
        assertThat(on(0.3, 0.7).suddenness()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(on(0.2, 0.3).suddenness()).isCloseTo(1 / 2.0, within(1e-12));
        assertThat(on(0.7, 0.8).suddenness()).isCloseTo(1 / 2.0, within(1e-12));
    }

    /** Two hundred samples in stretches of twenty; each up begins with such shares of the way, each down mirrors them. */
    private static LevelFit on(double... shares) {
        return fit(20 * MILLI, values(800, i -> {
            boolean up = i / 20 % 2 == 1;
            double share = i % 20 < shares.length && i >= 20 ? shares[i % 20] : 1;
            return 0.5 * (up ? share : i < 20 ? 0 : 1 - share);
        }));
    }
}
