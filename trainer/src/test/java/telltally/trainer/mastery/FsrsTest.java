package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values: open-spaced-repetition/py-fsrs at 3abe686 and ts-fsrs at cdec8d2 (FSRS-6.test.ts). */
class FsrsTest {
    /** In the order of their numbers from 1. */
    private static final List<Fsrs.Grade> GRADES =
            List.of(Fsrs.Grade.AGAIN, Fsrs.Grade.HARD, Fsrs.Grade.GOOD, Fsrs.Grade.EASY);

    @ParameterizedTest
    @CsvSource({
        "1, 0.212, 6.4133",
        "2, 1.2931, 5.11217071",
        "3, 2.3065, 2.11810397",
        "4, 8.2956, 1",
    })
    void the_first_review_sets_stability_and_difficulty(int grade, double stability, double difficulty) {
        assertThat(Fsrs.firstStability(GRADES.get(grade - 1))).isCloseTo(stability, within(1e-4));
        assertThat(Fsrs.firstDifficulty(GRADES.get(grade - 1))).isCloseTo(difficulty, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"0, 1.0", "1, 0.9", "2, 0.84588465", "3, 0.8093881"})
    void what_is_remembered_falls_as_published(double days, double expected) {
        assertThat(Fsrs.retrievability(days, 1)).isCloseTo(expected, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"1, 8.34176237", "2, 6.66599536", "3, 4.99022837", "4, 3.31446137"})
    void difficulty_moves_as_published(int grade, double expected) {
        assertThat(Fsrs.nextDifficulty(5.0, GRADES.get(grade - 1))).isCloseTo(expected, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0.9, 1, 25.60252118, 1.05253961",
        "2, 0.8, 2, 28.22657096, 1.18943295",
        "3, 0.7, 3, 58.65599107, 1.36808387",
        "4, 0.6, 4, 127.2266925, 1.58498896",
    })
    void stability_grows_with_recall_and_shrinks_with_a_lapse_as_published(
            double difficulty, double remembered, int grade, double recalled, double lapsed) {
        assertThat(Fsrs.afterRecall(difficulty, 5, remembered, GRADES.get(grade - 1)))
                .isCloseTo(recalled, within(1e-6));
        assertThat(Fsrs.afterLapse(difficulty, 5, remembered)).isCloseTo(lapsed, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"1, 1.596818", "2, 2.74701", "3, 5", "4, 8.12960956"})
    void a_second_review_on_the_same_day_follows_the_python_rule(int grade, double expected) {
        assertThat(Fsrs.sameDayStability(5, GRADES.get(grade - 1))).isCloseTo(expected, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 3116769",
        "0.2, 34793",
        "0.3, 2508",
        "0.4, 387",
        "0.5, 90",
        "0.6, 27",
        "0.7, 9",
        "0.8, 3",
        "0.9, 1",
        "1.0, 1"
    })
    void the_interval_for_a_wanted_chance_is_the_published_one(double wanted, int days) {
        // The published list is of the formula without the longest interval of 36500 days.
        assertThat(Fsrs.intervalDays(1, wanted)).isEqualTo(Math.min(days, 36_500));
    }

    @Property(tries = 200)
    void more_time_never_helps_to_remember(
            @ForAll @DoubleRange(min = 0.01, max = 36500) double stability,
            @ForAll @DoubleRange(max = 5000) double days) {
        double now = Fsrs.retrievability(days, stability);
        assertThat(now).isBetween(0.0, 1.0);
        assertThat(Fsrs.retrievability(days + 1, stability)).isLessThanOrEqualTo(now);
    }

    @Property(tries = 200)
    void a_better_grade_never_gives_a_shorter_memory(
            @ForAll @DoubleRange(min = 1, max = 10) double difficulty,
            @ForAll @DoubleRange(min = 0.01, max = 3650) double stability,
            @ForAll @DoubleRange(max = 1) double remembered) {
        double before = 0;
        for (Fsrs.Grade grade : GRADES) {
            double after = Fsrs.nextStability(difficulty, stability, remembered, grade);
            assertThat(after).isGreaterThanOrEqualTo(before);
            before = after;
        }
    }
}
