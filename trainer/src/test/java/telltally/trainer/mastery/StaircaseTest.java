package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.chance.Chance;

class StaircaseTest {
    private static final String BLOCKS_OF_FOUR = "11110000111100001111";

    /** Where a staircase stood before each answer, and at which answers it turned. */
    private record Walk(List<Double> levels, List<Integer> turnedAt) {
        static Walk of(Staircase start, String answers, int firstTrial) {
            List<Double> levels = new ArrayList<>();
            List<Integer> turned = new ArrayList<>();
            Staircase now = start;
            for (int i = 0; i < answers.length(); i++) {
                levels.add(now.value());
                Staircase next = now.after(answers.charAt(i) == '1');
                if (next.reversals() > now.reversals()) {
                    turned.add(firstTrial + i);
                }
                now = next;
            }
            return new Walk(levels, turned);
        }

        List<Double> levelsAtTurns(int firstTrial) {
            return turnedAt.stream()
                    .map(trial -> levels.get(trial - firstTrial))
                    .toList();
        }
    }

    @Test
    void one_up_one_down_walks_as_in_levitts_figure_4() {
        // Levitt 1971, Figure 4, as coded in codles/UpDownMethods at 948e469, tests/test_Levitt1971_Fig4.py.
        Walk walk = Walk.of(Staircase.from(0, Staircase.Rule.transformed(1, 1)), "110000110001111100011000", 1);
        assertThat(walk.turnedAt()).containsExactly(3, 7, 9, 12, 17, 20, 22);
        assertThat(walk.levelsAtTurns(1)).containsExactly(-2.0, 2.0, 0.0, 3.0, -2.0, 1.0, -1.0);
    }

    @Test
    void one_up_two_down_walks_as_in_levitts_figure_5() {
        // Levitt 1971, Figure 5, as coded in codles/UpDownMethods at 948e469, tests/test_Levitt1971_Fig5.py.
        Walk walk = Walk.of(Staircase.from(0, Staircase.Rule.transformed(2, 1)), "111101001011111000111111", 1);
        assertThat(walk.turnedAt()).containsExactly(5, 12, 16, 20);
        assertThat(walk.levelsAtTurns(1)).containsExactly(-2.0, 2.0, 0.0, 3.0);
    }

    @Test
    void shrinking_linear_steps_walk_as_in_the_reference_implementation() {
        // psychopy/psychopy at 0271d00, psychopy/tests/test_data/test_StairHandlers.py.
        Staircase.Rule rule = new Staircase.Rule(
                3, List.of(0.1, 0.01, 0.001), List.of(0.1, 0.01, 0.001), Staircase.Scale.LINEAR, true, 0, 1);
        assertWalk(
                Walk.of(Staircase.from(0.8, rule), BLOCKS_OF_FOUR, 0),
                ".8 .7 .6 .5 .4 .41 .42 .43 .44 .44 .44 .439 .439 .44 .441 .442 .443 .443 .443 .442");
    }

    @Test
    void shrinking_decibel_steps_walk_as_in_the_reference_implementation() {
        // As above.
        Staircase.Rule rule = new Staircase.Rule(
                3, List.of(0.4, 0.2, 0.2, 0.1), List.of(0.4, 0.2, 0.2, 0.1), Staircase.Scale.DECIBEL, true, 0, 1);
        assertWalk(
                Walk.of(Staircase.from(0.8, rule), BLOCKS_OF_FOUR, 0),
                ".8 .763994069 .729608671 .696770872 .665411017 .680910431 .696770872 .713000751 .729608671"
                        + " .729608671 .729608671 .713000751 .713000751 .72125691 .729608671 .738057142"
                        + " .746603441 .746603441 .746603441 .738057142");
    }

    private static void assertWalk(Walk walk, String levels) {
        List<Double> expected =
                List.of(levels.split(" ", -1)).stream().map(Double::parseDouble).toList();
        for (int i = 0; i < expected.size(); i++) {
            assertThat(walk.levels().get(i)).as("trial " + i).isCloseTo(expected.get(i), within(1e-6));
        }
        assertThat(walk.turnedAt()).containsExactly(4, 10, 12, 18);
    }

    @Test
    void one_up_one_down_turns_where_the_reference_implementation_turns() {
        // As above: .8, step .1, two right and one wrong over and over.
        Walk walk = Walk.of(Staircase.from(0.8, Staircase.Rule.transformed(1, 0.1)), "1101101101", 0);
        double[] expected = {.8, .7, .6, .7, .6, .5, .6, .5, .4, .5};
        for (int i = 0; i < expected.length; i++) {
            assertThat(walk.levels().get(i)).isCloseTo(expected[i], within(1e-9));
        }
        assertThat(walk.turnedAt()).containsExactly(2, 3, 5, 6, 8, 9);
    }

    @Test
    void two_right_answers_are_needed_for_one_step_down() {
        // As above: start 10, step 2, answers 0 1 1 0.
        Walk walk = Walk.of(Staircase.from(10, Staircase.Rule.transformed(2, 2)), "0110", 0);
        assertThat(walk.levels()).containsExactly(10.0, 12.0, 12.0, 10.0);
    }

    @ParameterizedTest
    @CsvSource({
        // Levitt 1971, Table I, whose rows are the roots of p^n = 1/2.
        "1, 1, 1, 0.5",
        "2, 1, 1, 0.7071",
        "3, 1, 1, 0.7937",
        "4, 1, 1, 0.8409",
        "5, 1, 1, 0.8706",
        // Kaernbach 1991: p = U/(U+D).
        "1, 1, 3, 0.75",
        "1, 1, 4, 0.8",
        "1, 1, 9, 0.9",
        // García-Pérez 1998: his advised D/U for 1, 2, 3 and 4 down.
        "1, 0.2845, 1, 0.7785",
        "2, 0.5488, 1, 0.8035",
        "3, 0.7393, 1, 0.8315",
        "4, 0.8415, 1, 0.858",
    })
    void the_share_of_right_answers_converges_on_the_published_level(
            int rightsDown, double down, double up, double published) {
        Staircase.Rule rule = Staircase.Rule.weighted(rightsDown, 0.1 * down, 0.1 * up);
        assertThat(rule.target()).isCloseTo(published, within(1e-3));
        Chance chance = Chance.of(19);
        Staircase now = Staircase.from(1, rule);
        int right = 0;
        int trials = 20_000;
        for (int i = 0; i < trials; i++) {
            boolean answered = chance.happens(1 / (1 + Math.exp(-now.value())));
            right += answered ? 1 : 0;
            now = now.after(answered);
        }
        // Levitt's levels are exact for small steps; these are a tenth of a logit.
        assertThat((double) right / trials).isCloseTo(published, within(0.02));
    }

    @Property(tries = 100)
    void it_never_leaves_its_limits(
            @ForAll List<Boolean> answers,
            @ForAll @IntRange(min = 1, max = 4) int n,
            @ForAll @DoubleRange double step) {
        Staircase.Rule rule =
                new Staircase.Rule(n, List.of(step), List.of(step * 3), Staircase.Scale.LINEAR, true, -1, 1);
        Staircase now = Staircase.from(0, rule);
        for (boolean right : answers) {
            now = now.after(right);
            assertThat(now.value()).isBetween(-1.0, 1.0);
        }
    }
}
