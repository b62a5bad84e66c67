package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

class ChannelFitTest {
    private static final double[] JITTERS = {0.01, 0.02, 0.035, 0.055, 0.08, 0.11, 0.15};
    private static final double[] BLURS = {0.004, 0.012, 0.03, 0.055, 0.09};

    private final TwoDigitFormat small = new TwoDigitFormat();

    /** One length as it was sent and seen; the sign is 1 for light and -1 for dark. */
    private record Length(double sent, double seen, int sign) {}

    /** A session of the code 23, sent over and over, seen through a channel with a clock, bias and scatter. */
    private static final class Session {
        final List<Length> lengths = new ArrayList<>();
        final PulseTrain train;

        Session(long seed, int times, double scale, double bias, double jitter, double blur) {
            this(seed, times, scale, bias, jitter, blur, -1);
        }

        /** @param odd the number of a flash that lasts a quarter longer than it should, as by a mishap */
        Session(long seed, int times, double scale, double bias, double jitter, double blur, int odd) {
            Chance chance = Chance.of(seed);
            PulseTrain.Builder pulses = PulseTrain.builder().dark(2_000_000_000L);
            double[] gaps = {4, 0.5, 2, 0.5, 0.5};
            for (int i = 0; i < 5 * times; i++) {
                if (i > 0) {
                    pulses.dark(length(chance, gaps[i % 5], -1, scale, bias, jitter, blur));
                }
                pulses.lit(length(chance, 0.5, 1, i == odd ? 1.28 * scale : scale, bias, jitter, blur));
            }
            train = pulses.dark(500_000_000L).build();
        }

        private long length(
                Chance chance, double sent, int sign, double scale, double bias, double jitter, double blur) {
            double seen = sent * scale * (1 + jitter * chance.nextNormal()) + sign * bias + blur * chance.nextNormal();
            long nanos = (long) (1e9 * seen);
            lengths.add(new Length(sent, nanos * 1e-9, sign));
            return nanos;
        }
    }

    private Channel fitted(PulseTrain train, Channel before) {
        Flashes flashes = Flashes.of(train, true, 1_000_000, 1_000_000, 1000);
        Automaton automaton = small.model.grammar.automaton;
        FreePass pass = FreePass.run(new Densities(automaton), flashes, before, new Lattice());
        return ChannelFit.fitted(pass, automaton, flashes, before);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 8, 1.1, 0.03, 0.02, 0.004, -1",
        "2, 8, 0.9, -0.02, 0.05, 0.03, -1",
        "3, 8, 1, 0, 0.01, 0.05, -1",
        "4, 8, 1.2, 0.01, 0.09, 0.01, -1",
        "5, 8, 1, 0.02, 0.003, 0.001, -1",
        "6, 1, 1, 0, 0.03, 0.03, -1",
        "7, 1, 1.1, 0, 0.06, 0.01, -1",
        "8, 1, 0.9, 0, 0.01, 0.01, -1",
        "9, 1, 1, 0, 0.1, 0.01, -1",
        "10, 6, 1, 0, 0.003, 0.001, 12",
        "11, 2, 1, 0.01, 0.01, 0.004, 7",
        "12, 1, 1.05, 0, 0.02, 0.02, 2"
    })
    void scale_and_bias_lie_where_the_weighted_squares_are_least_and_the_widths_where_the_likelihood_is_greatest(
            long seed, int times, double scale, double bias, double jitter, double blur, int odd) {
        Session session = new Session(seed, times, scale, bias, jitter, blur, odd);
        Channel before = new Channel(scale * 1.01, bias + 0.003, 0.04, 0.01, 0.01, 0.01);
        Channel fitted = fitted(session.train, before);
        bothDerivativesVanish(session.lengths, before, fitted.scale(), fitted.biasSeconds());
        double[] widths = likeliest(session.lengths, before, fitted);
        assertThat(fitted.jitter()).isEqualTo(widths[0]);
        assertThat(fitted.blurSeconds()).isEqualTo(widths[1]);
        assertThat(fitted.scale()).isCloseTo(scale, within(0.08));
    }

    /**
     * Weighted least squares with a prior on scale (1, give or take 0.2) and bias (0, give or take 0.025 s); an outlier
     * counts as the law of Student with nine degrees of freedom would have it.
     */
    private static void bothDerivativesVanish(List<Length> lengths, Channel before, double scale, double bias) {
        double byScale = (scale - 1) / (0.2 * 0.2);
        double byBias = bias / (0.025 * 0.025);
        double size = 0;
        for (Length each : lengths) {
            double variance =
                    Math.pow(before.jitter() * before.scale() * each.sent(), 2) + Math.pow(before.blurSeconds(), 2);
            double before2 =
                    Math.pow(each.seen() - each.sent() * before.scale() - each.sign() * before.biasSeconds(), 2)
                            / variance;
            double weight = 1 / variance / (1 + before2 / 9);
            double off = each.sent() * scale + each.sign() * bias - each.seen();
            byScale += weight * each.sent() * off;
            byBias += weight * each.sign() * off;
            size += weight;
        }
        assertThat(byScale / size).isCloseTo(0, within(1e-9));
        assertThat(byBias / size).isCloseTo(0, within(1e-9));
    }

    private static double[] likeliest(List<Length> lengths, Channel before, Channel fitted) {
        double[] best = {0, 0, Double.NEGATIVE_INFINITY};
        for (double jitter : JITTERS) {
            for (double blur : BLURS) {
                double score =
                        -Math.pow(Math.log(jitter / 0.04) / 1.2, 2) / 2 - Math.pow(Math.log(blur / 0.02) / 1.2, 2) / 2;
                for (Length each : lengths) {
                    double squares = each.sent() * each.sent();
                    double error = each.seen() - each.sent() * fitted.scale() - each.sign() * fitted.biasSeconds();
                    // An error of more than four deviations, as they were known before, counts as one of four.
                    double most = 16
                            * (Math.pow(before.jitter() * fitted.scale(), 2) * squares
                                    + Math.pow(before.blurSeconds(), 2));
                    double variance = Math.pow(jitter * fitted.scale(), 2) * squares + blur * blur;
                    score -= (Math.min(error * error, most) / variance + Math.log(variance)) / 2;
                }
                if (score > best[2]) {
                    best = new double[] {jitter, blur, score};
                }
            }
        }
        return best;
    }

    @Test
    void one_length_far_off_hardly_moves_the_clock() {
        Session session = new Session(7, 6, 1, 0, 0.01, 0.004);
        Channel before = Channel.firstGuess(1);
        double usual = fitted(session.train, before).scale();
        PulseTrain.Builder odd = PulseTrain.builder();
        for (int i = 0; i < session.train.intervals().size(); i++) {
            long nanos = session.train.intervals().get(i).lengthNanos();
            odd.stay(i % 2 == 1, i == 11 ? nanos * 13 / 10 : nanos);
        }
        assertThat(fitted(odd.build(), before).scale()).isCloseTo(usual, within(0.004));
    }

    @Test
    void rates_begin_as_if_in_sixty_flashes_hardly_any_had_gone_wrong() {
        PulseTrain clean = new Session(1, 4, 1, 0, 0.01, 0.004).train;
        Channel fitted = fitted(clean, Channel.firstGuess(1));
        assertThat(fitted.missed()).isCloseTo(0.15 / (60 + 20), within(1e-12));
        assertThat(fitted.ghost()).isCloseTo(0.15 / (60 + 20), within(1e-12));
        // The middle one of three flashes goes dark; two short ones appear in the long gaps.
        PulseTrain.Builder spoilt = PulseTrain.builder();
        int flash = 0;
        for (int i = 0; i < clean.intervals().size(); i++) {
            long nanos = clean.intervals().get(i).lengthNanos();
            boolean lit = i % 2 == 1 && ++flash != 4;
            if (!lit && nanos > 3_000_000_000L && flash < 14) {
                spoilt.dark(1_000_000_000L).lit(50_000_000L).dark(nanos - 1_050_000_000L);
            } else {
                spoilt.stay(lit, nanos);
            }
        }
        Channel worse = fitted(spoilt.build(), Channel.firstGuess(1));
        assertThat(worse.missed()).isCloseTo((0.15 + 1) / (60 + 19), within(1e-12));
        assertThat(worse.ghost()).isCloseTo((0.15 + 2) / (60 + 19), within(1e-12));
    }

    @Test
    void a_flash_cut_by_the_brink_of_the_recording_says_nothing_of_the_clock() {
        Session session = new Session(3, 4, 1.05, 0, 0.01, 0.004);
        PulseTrain.Builder cut = PulseTrain.builder();
        int intervals = session.train.intervals().size();
        for (int i = 1; i < intervals - 1; i++) {
            long nanos = session.train.intervals().get(i).lengthNanos();
            cut.stay(i % 2 == 1, i == 1 || i == intervals - 2 ? nanos / 3 : nanos);
        }
        List<Length> whole = session.lengths.subList(1, session.lengths.size() - 1);
        Channel before = new Channel(1.05, 0, 0.03, 0.02, 0.001, 0.001);
        Channel fitted = fitted(cut.build(), before);
        bothDerivativesVanish(whole, before, fitted.scale(), fitted.biasSeconds());
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0.4", "3, 2.5"})
    void no_clock_is_more_than_two_and_a_half_times_off(double scale, double bound) {
        Session session = new Session(3, 30, scale, 0, 0.002, 0.001);
        Channel before = new Channel(scale, 0, 0.01, 0.004, 0.001, 0.001);
        assertThat(fitted(session.train, before).scale()).isEqualTo(bound);
    }
}
