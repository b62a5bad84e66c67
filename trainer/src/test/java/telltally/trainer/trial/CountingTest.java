package telltally.trainer.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;

/** The closed-form checks of the simulated learner, computed apart from this code from the formulas as written down. */
class CountingTest {
    @ParameterizedTest
    @CsvSource({
        "0.015, .9955, .9762, .9572, .9386, .9203, .9025, .8849, .8677, .8509",
        "0.005, .9985, .9920, .9856, .9792, .9728, .9665, .9602, .9540, .9478",
        "0.001, .9997, .9984, .9971, .9958, .9945, .9932, .9919, .9906, .9894",
    })
    void larger_digits_are_harder(
            double slip,
            double one,
            double two,
            double three,
            double four,
            double five,
            double six,
            double seven,
            double eight,
            double nine) {
        double[] expected = {one, two, three, four, five, six, seven, eight, nine};
        for (int flashes = 1; flashes <= 9; flashes++) {
            assertThat(Counting.chanceRight(flashes, slip)).isCloseTo(expected[flashes - 1], within(0.00006));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1.0, .992, .986, .973, .961, .948, 8.97",
        "0.4, .991, .982, .967, .954, .941, 8.96",
        "0.333, .983, .955, .922, .904, .892, 8.81",
        "0.25, .917, .729, .528, .473, .453, 7.56",
        "0.15, .836, .475, .107, .024, .007, 6.15",
    })
    void faster_flashes_are_lost(
            double onset, double two, double three, double five, double seven, double nine, double meanOfNine) {
        // 200 000 draws gave the table, to 0.002; 40 000 here have a standard error of at most 0.0025.
        assertThat(shareRight(2, onset)).isCloseTo(two, within(0.011));
        assertThat(shareRight(3, onset)).isCloseTo(three, within(0.011));
        assertThat(shareRight(5, onset)).isCloseTo(five, within(0.011));
        assertThat(shareRight(7, onset)).isCloseTo(seven, within(0.011));
        assertThat(shareRight(9, onset)).isCloseTo(nine, within(0.011));
        Chance chance = Chance.of(9);
        double sum = 0;
        for (int i = 0; i < 40_000; i++) {
            sum += Counting.counted(9, onset, 0.005, chance);
        }
        assertThat(sum / 40_000).isCloseTo(meanOfNine, within(0.03));
    }

    private static double shareRight(int flashes, double onset) {
        Chance chance = Chance.of(flashes);
        int right = 0;
        for (int i = 0; i < 40_000; i++) {
            right += Counting.counted(flashes, onset, 0.005, chance) == flashes ? 1 : 0;
        }
        return right / 40_000.0;
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 2, .15, 2e-6, 1e-6",
        "2, 4, .15, .0104, 5e-5",
        "4, 6, .15, .0883, 5e-5",
        "2, 4, .10, .00026, 5e-6",
        "2, 4, .08, 7e-6, 1e-6",
        "4, 6, .10, .0213, 5e-5",
        "4, 6, .08, .0056, 5e-5",
    })
    void the_pause_around_the_separator_is_the_one_most_easily_confused(
            double shorter, double longer, double spread, double expected, double places) {
        assertThat(Counting.gapMisread(longer / shorter, spread)).isCloseTo(expected, within(places));
    }

    @ParameterizedTest
    @CsvSource({"3, .80", "6, .58", "9, .39", "12, .26", "15, .16", "18, .10"})
    void what_is_held_in_the_head_fades(double seconds, double expected) {
        assertThat(Counting.held(seconds, 1)).isCloseTo(expected, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"0, .0150", "50, .0110", "100, .0082", "150, .0062", "300, .0029", "600, .0013"})
    void slips_become_rarer_with_practice(double digits, double expected) {
        assertThat(Counting.practised(0.015, 0.001, digits, 150)).isCloseTo(expected, within(0.00006));
    }

    @Test
    void the_normal_distribution_is_the_published_one() {
        // Abramowitz and Stegun 1964, table 26.1.
        assertThat(Normal.below(1)).isCloseTo(0.841344746068543, within(1e-13));
        assertThat(Normal.below(-2)).isCloseTo(0.022750131948179, within(1e-13));
        assertThat(Normal.quantile(0.975)).isCloseTo(1.959963984540054, within(1e-9));
    }

    @Test
    void most_is_learnt_where_five_of_six_are_right() {
        Benefit benefit = new Benefit(0.3);
        // Wilson et al. 2019: an error rate of 15.87 %, the normal distribution's share below -1.
        assertThat(benefit.of(0.8413)).isCloseTo(1, within(1e-4));
        assertThat(benefit.of(0.4)).isCloseTo(0.3, within(1e-12));
        assertThat(benefit.of(0.98)).isLessThan(benefit.of(0.9));
        assertThat(new Benefit(1).of(0.1)).isEqualTo(1);
    }
}
