package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** Fits near each sample are those of a library (Apache Commons Math), one by one over the samples within 3 s. */
class DriftTest {
    private final Chance chance = Chance.of(21);

    /** How values and levels go on in time. */
    private interface Course {
        double of(double second);
    }

    private static final class Recording {
        final long[] atNanos;
        final double[] seconds;
        final double[] values;
        final boolean[] high;

        Recording(long[] atNanos, double[] values, boolean[] high) {
            this.atNanos = atNanos;
            this.seconds = Arrays.stream(atNanos).mapToDouble(at -> at * 1e-9).toArray();
            this.values = values;
            this.high = high;
        }

        double[] removed() {
            return Drift.removed(new Series(atNanos, values, 1), high, new Windows(atNanos));
        }

        int[] near(int index) {
            return IntStream.range(0, values.length)
                    .filter(i -> Math.abs(atNanos[i] - atNanos[index]) <= Windows.HALF_NANOS)
                    .toArray();
        }

        /** How far apart the levels are near a sample, and what of the values is left. */
        Apart apart(int index) {
            int[] near = near(index);
            double[] level =
                    Arrays.stream(near).mapToDouble(i -> high[i] ? 1 : 0).toArray();
            double[] time = Arrays.stream(near).mapToDouble(i -> seconds[i]).toArray();
            double[] value = Arrays.stream(near).mapToDouble(i -> values[i]).toArray();
            double highs = Arrays.stream(level).sum();
            double rarer = Math.min(highs, level.length - highs);
            if (rarer < 3) {
                return new Apart(Double.NaN, Double.NaN, rarer);
            }
            double correlation = new PearsonsCorrelation().correlation(level, time);
            if (1 - correlation * correlation < 0.3) {
                SimpleRegression fit = new SimpleRegression();
                for (int i = 0; i < level.length; i++) {
                    fit.addData(level[i], value[i]);
                }
                // Against a level the slope is the difference of the means.
                return new Apart(fit.getSlope(), Math.sqrt(fit.getSumSquaredErrors() / near.length), rarer);
            }
            double[][] both = new double[near.length][];
            Arrays.setAll(both, i -> new double[] {time[i], level[i]});
            OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
            fit.newSampleData(value, both);
            double left = Math.sqrt(fit.calculateResidualSumOfSquares() / near.length);
            return new Apart(fit.estimateRegressionParameters()[2], left, rarer);
        }

        /** Where the low level lies at a sample, once the distance of the levels is known. */
        double low(int index, double swing, boolean sloped) {
            int[] near = near(index);
            SimpleRegression fit = new SimpleRegression();
            for (int i : near) {
                fit.addData(seconds[i] - seconds[index], values[i] - (high[i] ? swing : 0));
            }
            return sloped
                    ? fit.getIntercept()
                    : Arrays.stream(near)
                            .mapToDouble(i -> values[i] - (high[i] ? swing : 0))
                            .average()
                            .orElseThrow();
        }
    }

    /**
     * @param swing NaN where fewer than three samples of either level are near
     * @param left standard deviation of what a fit leaves
     */
    private record Apart(double swing, double left, double rarer) {
        boolean both(double usual) {
            return !Double.isNaN(swing) && (swing >= usual / 2.5 || swing / left >= 2.7 + 12 / rarer);
        }
    }

    /** About ten samples a second, at uneven instants; high where the blinking is above 0. */
    private Recording recording(int size, Course blinking, Course level, Course swing, double noise) {
        long[] atNanos = new long[size];
        double[] values = new double[size];
        boolean[] high = new boolean[size];
        for (int i = 0; i < size; i++) {
            atNanos[i] = (i == 0 ? 0 : atNanos[i - 1]) + 50_000_000 + chance.below(100) * 1_000_000L;
            double second = atNanos[i] * 1e-9;
            high[i] = blinking.of(second) > 0;
            values[i] = level.of(second) + (high[i] ? swing.of(second) : 0) + noise * chance.nextNormal();
        }
        return new Recording(atNanos, values, high);
    }

    private static double blinking(double second) {
        return Math.sin(2 * Math.PI * second);
    }

    /** The whole of what is promised, sample by sample. */
    private static void assertRemoved(Recording recording) {
        int size = recording.values.length;
        double[] known = IntStream.range(0, size)
                .mapToDouble(i -> recording.apart(i).swing())
                .filter(swing -> !Double.isNaN(swing))
                .sorted()
                .toArray();
        double usual = known[(int) Math.round(0.5 * (known.length - 1))];
        double[] removed = recording.removed();
        for (int i = 0; i < size; i++) {
            Apart apart = recording.apart(i);
            boolean both = apart.both(usual);
            double swing = both ? Math.max(usual / 2.5, Math.min(2.5 * usual, apart.swing())) : usual;
            double low = recording.low(i, swing, both);
            assertThat(removed[i]).isCloseTo((recording.values[i] - low) * usual / swing, within(1e-9));
        }
    }

    /** No noise: a fit of a line and a swing leaves nothing. */
    @Test
    void a_steady_rise_is_taken_out_to_the_last() {
        Recording rising = recording(150, DriftTest::blinking, second -> 3 + 0.5 * second, second -> 2, 0);
        double[] removed = rising.removed();
        for (int i = 0; i < removed.length; i++) {
            assertThat(removed[i]).isCloseTo(rising.high[i] ? 2 : 0, within(1e-9));
        }
    }

    @Test
    void noise_and_slow_waves_are_fitted_as_a_library_fits_them() {
        assertRemoved(recording(
                200,
                DriftTest::blinking,
                second -> Math.sin(second / 3),
                second -> 2 + 0.5 * Math.cos(second / 4),
                0.1));
    }

    /** Blinking for five seconds, then dark for eight, then blinking less strongly. */
    @Test
    void where_only_one_level_is_near_the_usual_swing_stands_and_the_mean_is_the_level() {
        assertRemoved(recording(
                200,
                second -> second < 5 || second > 13 ? blinking(second) : -1,
                second -> 1 + 0.2 * second,
                second -> second < 9 ? 2 : 1.5,
                0.05));
    }

    @Test
    void a_camera_makes_no_more_than_two_and_a_half_times_of_a_lamp_and_no_less_than_that_part() {
        assertRemoved(recording(
                300,
                DriftTest::blinking,
                second -> 1,
                second -> second < 10 ? 12 : second < 20 ? 2 : second < 24 ? 0.4 : 2,
                0.05));
    }

    /** For ten seconds between blinking all is noise of one level, of which a first look took what is far out for changes. */
    @Test
    void noise_that_was_parted_in_two_is_one_level() {
        Recording recording = recording(
                300, second -> second < 8 || second > 18 ? blinking(second) : 0, second -> 1, second -> 2, 0.2);
        for (int i = 0; i < recording.values.length; i++) {
            if (recording.seconds[i] > 8 && recording.seconds[i] < 18) {
                double off = recording.values[i] - 1;
                recording.high[i] = Math.abs(off) > 0.1 ? off > 0 : recording.high[i - 1];
            }
        }
        assertRemoved(recording);
        IntStream.range(0, recording.values.length)
                .filter(i -> recording.seconds[i] > 11.1 && recording.seconds[i] < 14.9)
                .forEach(i -> assertThat(recording.apart(i).both(2)).isFalse());
    }

    /** Less than half of the usual light, far out of the noise; then as far out of it as noise parts by itself. */
    @Test
    void what_blinks_weakly_is_a_lamp_where_noise_alone_would_not_part_so_far() {
        assertRemoved(recording(300, DriftTest::blinking, second -> 1, second -> second < 18 ? 2 : 0.7, 0.1));
        Recording doubtful =
                recording(400, DriftTest::blinking, second -> 1 + 0.1 * second, second -> second < 22 ? 2 : 0.7, 0.2);
        assertRemoved(doubtful);
        assertThat(IntStream.range(0, 400).filter(i -> doubtful.seconds[i] > 26 && doubtful.seconds[i] < 36))
                .anyMatch(i -> doubtful.apart(i).both(2))
                .anyMatch(i -> !doubtful.apart(i).both(2));
    }

    /** All that is high comes later: whether it rose or was switched on cannot be told, and it is taken as switched. */
    @Test
    void a_slope_that_cannot_be_told_from_a_step_is_no_slope() {
        Recording step = recording(30, second -> second - 1.5, second -> 1, second -> 2, 0);
        double[] removed = step.removed();
        for (int i = 0; i < removed.length; i++) {
            assertThat(step.apart(i).swing()).isCloseTo(2, within(1e-9));
        }
        assertRemoved(step);
        assertRemoved(recording(30, second -> second - 1.5, second -> 1 + 0.3 * second, second -> 2, 0.1));
    }

    @Test
    void three_samples_of_a_level_are_enough_and_two_are_not() {
        for (boolean rare : new boolean[] {true, false}) {
            boolean[] three = new boolean[20];
            boolean[] two = new boolean[20];
            double[] values = new double[20];
            long[] atNanos = new long[20];
            for (int i = 0; i < 20; i++) {
                atNanos[i] = i * 100_000_000L;
                three[i] = (i == 4 || i == 9 || i == 15) == rare;
                two[i] = (i == 4 || i == 15) == rare;
                values[i] = 1 + 0.1 * i + (three[i] ? 2 : 0);
            }
            double[] removed = new Recording(atNanos, values, three).removed();
            for (int i = 0; i < 20; i++) {
                assertThat(removed[i]).isCloseTo(three[i] ? 2 : 0, within(1e-9));
            }
            // Never both are near: the values as they are.
            assertThat(new Recording(atNanos, values, two).removed()).isEqualTo(values);
        }
    }
}
