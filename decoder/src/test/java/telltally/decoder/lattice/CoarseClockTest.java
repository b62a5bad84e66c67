package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

class CoarseClockTest {
    private static final List<Double> LIGHTS = List.of(0.4, 1.2);
    private static final List<Double> GAPS = List.of(0.4, 1.0, 3.0);

    private final CoarseClock clock = new CoarseClock(LIGHTS, GAPS);

    /** Random flashes and gaps of the format, seen through a clock that scatters a little. */
    private static Lengths recording(long seed, double scale, double scatter, int flashes) {
        Chance chance = Chance.of(seed);
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < flashes; i++) {
            double dark = GAPS.get(chance.below(3)) * scale * (1 + scatter * chance.nextNormal());
            double lit = LIGHTS.get(chance.below(2)) * scale * (1 + scatter * chance.nextNormal());
            pulses.dark((long) (1e9 * dark));
            pulses.lit((long) (1e9 * lit));
        }
        return new Lengths(Flashes.of(pulses.dark(1_000_000_000L).build(), true, 0, 0, 1000));
    }

    /** Flashes and gaps all alike. */
    private static Lengths even(double lit, double dark) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < 10; i++) {
            pulses.dark((long) (1e9 * dark));
            pulses.lit((long) (1e9 * lit));
        }
        return new Lengths(Flashes.of(pulses.dark(1_000_000_000L).build(), true, 0, 0, 1000));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 0.9, 1, 1.1, 1.25})
    void the_clock_is_found_to_a_thirty_second_of_its_logarithm(double scale) {
        CoarseClock.Fit best = clock.fits(recording(1, scale, 0.02, 60)).get(0);
        assertThat(Math.log(best.scale() / scale)).isBetween(-1.0 / 32, 1.0 / 32);
    }

    @Test
    void each_length_counts_by_the_nominal_length_it_fits_best() {
        for (int seed = 0; seed < 40; seed++) {
            // From hardly any scatter to lengths of chance, from clocks a third too fast to a third too slow.
            Lengths lengths =
                    recording(seed, 0.7 + 0.65 * (seed % 10) / 10, 0.02 + 0.1 * Math.floorDiv(seed, 10), 8 + seed);
            assertThat(clock.fits(lengths)).as("seed " + seed).isEqualTo(reference(lengths));
        }
    }

    @Test
    void even_lengths_may_be_those_of_a_fast_clock_or_of_a_slow_one() {
        for (double lit = 0.3; lit < 1.6; lit += 0.1) {
            for (double dark = 0.3; dark < 3.6; dark += 0.15) {
                Lengths lengths = even(lit, dark);
                assertThat(clock.fits(lengths)).as(lit + " " + dark).isEqualTo(reference(lengths));
            }
        }
    }

    @Test
    void a_score_is_that_of_bells_in_the_logarithm_over_a_floor() {
        Lengths lengths = even(0.4, 1.0);
        CoarseClock.Fit best = clock.fits(lengths).get(0);
        assertThat(best.score()).isCloseTo(score(lengths, (int) Math.round(32 * Math.log(best.scale()))), within(1e-9));
    }

    private static List<CoarseClock.Fit> reference(Lengths lengths) {
        double[] scores = new double[23];
        for (int shift = -11; shift <= 11; shift++) {
            scores[shift + 11] = score(lengths, shift);
        }
        int first = bestTop(scores, -100);
        int second = bestTop(scores, first);
        if (second >= 0 && scores[second] >= scores[first] - 8 - 0.25 * lengths.flashes) {
            return List.of(fit(scores, first), fit(scores, second));
        }
        if (first < 4 || first > 18) {
            // More than a quarter off is unusual: a usual clock is looked at too, an exact one before its equals.
            int usual = 11;
            for (int i = 4; i <= 18; i++) {
                usual = scores[i] > scores[usual] ? i : usual;
            }
            return List.of(fit(scores, first), fit(scores, usual));
        }
        return List.of(fit(scores, first));
    }

    private static CoarseClock.Fit fit(double[] scores, int at) {
        return new CoarseClock.Fit(StrictMath.exp((at - 11) / 32.0), scores[at]);
    }

    private static int bestTop(double[] scores, int apartFrom) {
        int best = -1;
        for (int i = 0; i < scores.length; i++) {
            double left = i == 0 ? Double.NEGATIVE_INFINITY : scores[i - 1];
            double right = i == scores.length - 1 ? Double.NEGATIVE_INFINITY : scores[i + 1];
            boolean apart = Math.abs(i - apartFrom) > 4;
            if (scores[i] >= left && scores[i] >= right && apart && (best < 0 || scores[i] > scores[best])) {
                best = i;
            }
        }
        return best;
    }

    /** With bins of a thirty-second of the logarithm, each taken for its middle. */
    private static double score(Lengths lengths, int shift) {
        double off = Math.max(0, Math.abs(shift) / 32.0 - 0.2) / 0.05;
        return sum(LIGHTS, lengths.lit, shift) + sum(GAPS, lengths.dark, shift) - off * off / 2;
    }

    private static double sum(List<Double> nominal, Lengths.Counts counts, int shift) {
        double sum = 0;
        for (int i = 0; i < counts.bins.length; i++) {
            double best = 0.05 / 14;
            for (double length : nominal) {
                double wide = 0.12 + 0.05 / length;
                double z = ((counts.bins[i] - shift + 0.5) / 32.0 - StrictMath.log(length / 1e-3)) / wide;
                best = Math.max(best, StrictMath.exp(-z * z / 2) / wide / 2.5);
            }
            sum += counts.times[i] * StrictMath.log(best);
        }
        return sum;
    }
}
