package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Level;

class ErrorRateTest {
    @Test
    void whoever_stays_as_good_is_believed_at_what_they_do() {
        // What a beginner is taken to be weighs as much as about one answer in 17, and the grid ends near 0.98:
        // together
        // less than 0.05. The average itself is within 0.01.
        for (double truth : new double[] {0.25, 0.5, 0.75, 0.9, 0.95}) {
            assertThat(believed(truth)).isCloseTo(truth, within(0.05));
        }
    }

    @Test
    void whoever_has_learnt_is_believed_after_two_dozen_answers() {
        ErrorRate errors = ErrorRate.ofBeginners();
        for (int i = 0; i < 50; i++) {
            errors = errors.after(Level.FULL, i % 4 == 0);
        }
        assertThat(errors.chanceRight(Level.FULL)).isLessThan(0.4);
        for (int i = 0; i < 24; i++) {
            errors = errors.after(Level.FULL, true);
        }
        assertThat(errors.chanceRight(Level.FULL)).isGreaterThan(0.75);
    }

    /** On average over many answers of somebody who stays as good as this at full level. */
    private static double believed(double truth) {
        Chance chance = Chance.of(3);
        ErrorRate errors = ErrorRate.ofBeginners();
        double sum = 0;
        for (int i = 0; i < 20_100; i++) {
            errors = errors.after(Level.FULL, chance.happens(truth));
            sum += i >= 100 ? errors.chanceRight(Level.FULL) : 0;
        }
        return sum / 20_000;
    }

    @Property(tries = 100)
    void an_easier_level_is_never_harder(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int level) {
        Chance chance = Chance.of(seed);
        ErrorRate errors = ErrorRate.ofBeginners();
        for (int i = 0; i < 30; i++) {
            errors = errors.after(Level.nearest(1 + chance.below(10)), chance.happens(0.6));
            assertThat(errors.chanceRight(new Level(level)))
                    .isGreaterThanOrEqualTo(errors.chanceRight(new Level(level + 1)));
        }
    }
}
