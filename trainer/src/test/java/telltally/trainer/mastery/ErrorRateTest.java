package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Level;

class ErrorRateTest {
    @Test
    void it_tells_three_of_four_right_from_one_of_four_and_hopes_for_too_much_of_who_no_longer_learns() {
        // It expects learning from every answer, so that it keeps up with who learns.
        assertThat(believed(0.25)).isGreaterThan(0.25);
        assertThat(believed(0.75)).isBetween(0.75, 0.95).isGreaterThan(believed(0.25) + 0.3);
    }

    /** On average over many answers of somebody who stays as good as this at full level. */
    private static double believed(double truth) {
        Chance chance = Chance.of(3);
        ErrorRate errors = ErrorRate.ofBeginners();
        double sum = 0;
        for (int i = 0; i < 600; i++) {
            errors = errors.after(Level.FULL, chance.happens(truth));
            sum += i >= 100 ? errors.chanceRight(Level.FULL) : 0;
        }
        return sum / 500;
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
