package telltally.simulator.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashSet;
import java.util.Set;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.ExponentialDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.inference.ChiSquareTest;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChanceTest {
    @Nested
    class TheGenerator {
        /**
         * The first five numbers of SplitMix64 from 1234567, as the Rosetta Code task "Pseudo-random numbers/Splitmix64"
         * prints them.
         */
        @Test
        void gives_the_published_numbers() {
            Chance chance = Chance.of(1234567);

            for (String published : new String[] {
                "6457827717110365317",
                "3203168211198807973",
                "9817491932198370423",
                "4593380528125082431",
                "16408922859458223821"
            }) {
                assertThat(Long.toUnsignedString(chance.nextLong())).isEqualTo(published);
            }
        }

        /** The JDK's own SplittableRandom is another implementation of the same generator (a long is drawn alike). */
        @ParameterizedTest
        @ValueSource(longs = {0, 1, -1, 42, Long.MIN_VALUE, Long.MAX_VALUE})
        void agrees_with_the_one_in_the_class_library(long seed) {
            Chance ours = Chance.of(seed);
            java.util.SplittableRandom theirs = new java.util.SplittableRandom(seed);

            for (int i = 0; i < 1000; i++) {
                assertThat(ours.nextLong()).isEqualTo(theirs.nextLong());
            }
        }
    }

    @Nested
    class Streams {
        @Test
        void do_not_depend_on_what_was_drawn_before() {
            Chance untouched = Chance.of(7);
            Chance drawn = Chance.of(7);
            drawn.nextLong();
            drawn.nextNormal();
            drawn.stream("lamp").nextLong();

            assertThat(drawn.stream("wire").nextLong())
                    .isEqualTo(untouched.stream("wire").nextLong());
            assertThat(drawn.stream(3).nextLong()).isEqualTo(untouched.stream(3).nextLong());
        }

        @Test
        void of_the_same_name_begin_anew() {
            Chance chance = Chance.of(7);

            assertThat(chance.stream("lamp").nextLong())
                    .isEqualTo(chance.stream("lamp").nextLong());
        }

        @Test
        void leave_the_stream_they_come_from_unmoved() {
            Chance chance = Chance.of(7);
            Chance twin = Chance.of(7);
            chance.stream("lamp").nextLong();

            assertThat(chance.nextLong()).isEqualTo(twin.nextLong());
        }

        @Test
        void of_different_seeds_differ() {
            assertThat(Chance.of(1).stream("lamp").nextLong())
                    .isNotEqualTo(Chance.of(2).stream("lamp").nextLong());
        }

        @Test
        void of_several_thousand_names_and_numbers_never_begin_alike() {
            Chance chance = Chance.of(20);
            Set<Long> firsts = new HashSet<>();
            firsts.add(chance.nextLong());
            int streams = 1;
            for (String place : new String[] {"channel", "lamp", "channel/lamp", "vehicle", ""}) {
                for (int i = 0; i < 1000; i++) {
                    firsts.add(chance.stream(place + i).nextLong());
                    firsts.add(chance.stream(place).stream(i).nextLong());
                    firsts.add(chance.stream(place).stream("" + i).nextLong());
                    streams += 3;
                }
            }
            for (int i = -1000; i < 1000; i++) {
                firsts.add(chance.stream(i).nextLong());
                streams++;
            }

            assertThat(firsts).hasSize(streams);
        }

        @Test
        void of_names_that_differ_in_one_letter_are_unrelated() {
            double[] one = units(Chance.of(5).stream("lamp/jitter1"), 10_000);
            double[] other = units(Chance.of(5).stream("lamp/jitter2"), 10_000);

            // Without relation the coefficient is normal with a deviation of 1/sqrt(10000); four of them.
            assertThat(Math.abs(new PearsonsCorrelation().correlation(one, other)))
                    .isLessThan(0.04);
        }
    }

    /**
     * Each sample is held against the distribution by a test of the hipparchus library. The seeds are fixed, so that a
     * sound generator does not fail now and then; a level of 0.001 over a handful of seeds leaves no room for a wrong
     * formula, which lands many powers of ten below at this size.
     */
    @Nested
    class Distributions {
        private static final int SIZE = 20_000;
        private static final double LEVEL = 0.001;

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3})
        void units_are_spread_evenly(long seed) {
            assertFits(new UniformRealDistribution(0, 1), units(Chance.of(seed), SIZE));
        }

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3})
        void numbers_between_bounds_are_spread_evenly(long seed) {
            Chance chance = Chance.of(seed);
            double[] sample = new double[SIZE];
            for (int i = 0; i < SIZE; i++) {
                sample[i] = chance.between(-3, 12);
            }

            assertFits(new UniformRealDistribution(-3, 12), sample);
        }

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3})
        void normal_numbers_are_normal(long seed) {
            Chance chance = Chance.of(seed);
            double[] sample = new double[SIZE];
            for (int i = 0; i < SIZE; i++) {
                sample[i] = chance.nextNormal();
            }

            assertFits(new NormalDistribution(0, 1), sample);
        }

        @Test
        void a_normal_number_tells_nothing_of_the_next() {
            Chance chance = Chance.of(4);
            double[] first = new double[SIZE];
            double[] second = new double[SIZE];
            for (int i = 0; i < SIZE; i++) {
                first[i] = chance.nextNormal();
                second[i] = chance.nextNormal();
            }

            // Both of a pair come from one point in the plane. Four deviations of 1/sqrt(20000).
            assertThat(Math.abs(new PearsonsCorrelation().correlation(first, second)))
                    .isLessThan(0.0283);
        }

        @ParameterizedTest
        @ValueSource(longs = {1, 2, 3})
        void exponential_numbers_are_exponential(long seed) {
            Chance chance = Chance.of(seed);
            double[] sample = new double[SIZE];
            for (int i = 0; i < SIZE; i++) {
                sample[i] = chance.nextExponential();
            }

            assertFits(new ExponentialDistribution(1), sample);
        }

        @ParameterizedTest
        @ValueSource(ints = {2, 3, 6, 10, 97})
        void whole_numbers_below_a_bound_come_equally_often(int bound) {
            Chance chance = Chance.of(bound);
            long[] counts = new long[bound];
            for (int i = 0; i < SIZE; i++) {
                counts[chance.below(bound)]++;
            }

            assertThat(new ChiSquareTest().chiSquareTest(evenly(bound), counts)).isGreaterThan(LEVEL);
        }

        @Test
        void a_bound_of_two_thirds_of_all_numbers_is_not_folded() {
            // Folding 31 bits into this bound would give the lower half of it twice as often.
            int bound = (1 << 30) + (1 << 29);
            Chance chance = Chance.of(11);
            long[] counts = new long[2];
            for (int i = 0; i < SIZE; i++) {
                counts[chance.below(bound) / (bound / 2)]++;
            }

            assertThat(new ChiSquareTest().chiSquareTest(evenly(2), counts)).isGreaterThan(LEVEL);
        }

        @Test
        void what_happens_one_time_in_ten_does_so() {
            Chance chance = Chance.of(12);
            long[] counts = new long[2];
            for (int i = 0; i < SIZE; i++) {
                counts[chance.happens(0.1) ? 1 : 0]++;
            }

            assertThat(new ChiSquareTest().chiSquareTest(new double[] {0.9, 0.1}, counts))
                    .isGreaterThan(LEVEL);
        }

        private void assertFits(RealDistribution distribution, double[] sample) {
            assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(distribution, sample))
                    .isGreaterThan(LEVEL);
        }

        private double[] evenly(int bound) {
            double[] evenly = new double[bound];
            java.util.Arrays.fill(evenly, 1.0 / bound);
            return evenly;
        }
    }

    @Nested
    class Bounds {
        @Test
        void below_one_there_is_only_nought() {
            assertThat(Chance.of(1).below(1)).isZero();
        }

        @Test
        void nothing_lies_below_nought() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Chance.of(1).below(0))
                    .withMessage("nothing lies below 0");
        }

        @Test
        void what_is_certain_happens_and_what_cannot_be_does_not() {
            Chance chance = Chance.of(1);
            for (int i = 0; i < 1000; i++) {
                assertThat(chance.happens(1)).isTrue();
                assertThat(chance.happens(0)).isFalse();
            }
        }

        @Test
        void the_upper_bound_is_never_reached_even_where_rounding_would() {
            // Between 1 and the next number there is nothing, so half of all sums would be rounded up.
            Chance chance = Chance.of(1);
            for (int i = 0; i < 1000; i++) {
                assertThat(chance.between(1, Math.nextUp(1.0))).isEqualTo(1);
            }
        }

        @Test
        void between_two_equal_bounds_there_is_the_bound() {
            assertThat(Chance.of(1).between(2, 2)).isEqualTo(2);
        }
    }

    private static double[] units(Chance chance, int size) {
        double[] units = new double[size];
        for (int i = 0; i < size; i++) {
            units[i] = chance.nextUnit();
        }
        return units;
    }
}
