package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EloTest {
    @Test
    void learner_and_item_move_by_the_same_constant_step() {
        // Pelánek 2016 with K = .4 from theta = d = 0; the item's difficulty mirrors the learner's ability.
        double[] chances = {0.5, 0.598688, 0.672838};
        double[] abilities = {0.2, 0.360525, 0.091390};
        boolean[] answers = {true, true, false};
        Elo learner = Elo.at(0);
        for (int i = 0; i < answers.length; i++) {
            double difficulty = -learner.ability();
            assertThat(learner.chanceRight(difficulty)).isCloseTo(chances[i], within(1e-6));
            learner = learner.after(difficulty, answers[i], 0.4);
            assertThat(learner.ability()).isCloseTo(abilities[i], within(1e-6));
        }
    }

    @Test
    void the_step_shrinks_with_the_answers() {
        // K = 1/(1 + .05 n) as in paveldedik/thesis, models/models.py; numbers computed from the formula.
        double[] chances = {0.5, 0.731059, 0.819397, 0.505614};
        double[] abilities = {0.5, 0.756135, 0.011228, 0.441129};
        boolean[] answers = {true, true, false, true};
        Elo learner = Elo.at(0);
        for (int i = 0; i < answers.length; i++) {
            double difficulty = -learner.ability();
            assertThat(learner.chanceRight(difficulty)).isCloseTo(chances[i], within(1e-6));
            learner = learner.after(difficulty, answers[i]);
            assertThat(learner.ability()).isCloseTo(abilities[i], within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.731059", "2, 0.880797"})
    void the_chance_is_raschs(double ahead, double chance) {
        assertThat(Elo.at(ahead).chanceRight(0)).isCloseTo(chance, within(1e-6));
    }

    @Test
    void guessing_lifts_the_chance_from_below() {
        // 3PL with c .2, a 1.5, theta - b 1: .854060 (Birnbaum's form).
        assertThat(Elo.at(1.5).chanceRight(0, 0.2)).isCloseTo(0.854060, within(1e-6));
    }

    @Property(tries = 200)
    void a_right_answer_lifts_and_a_wrong_one_lowers(
            @ForAll @DoubleRange(min = -8, max = 8) double ability,
            @ForAll @DoubleRange(min = -8, max = 8) double difficulty) {
        Elo learner = Elo.at(ability);
        assertThat(learner.after(difficulty, true).ability()).isGreaterThan(ability);
        assertThat(learner.after(difficulty, false).ability()).isLessThan(ability);
    }
}
