package telltally.trainer.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.trial.Assumptions.Value;

class TrialTest {
    private static final int LEARNERS = 3;
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

    private static Trial trial;
    private static TaskBank bank;

    @BeforeAll
    static void makeDrills() {
        trial = new Trial(DrillMaker.shipped(), 1);
        bank = new TaskBank(DrillMaker.shipped(), Chance.of(1), 4);
    }

    private static SimulatedLearner learner(Assumptions assumed) {
        Person person = new Person(1, 1, 1, 1, 4);
        return new SimulatedLearner(person, assumed, new Benefit(assumed.phi()), bank, Chance.of(2));
    }

    @Test
    void the_outcome_does_not_depend_on_how_many_run_at_once() throws Exception {
        Assumptions assumed = Assumptions.usual(0.3);
        TrialOutcome alone =
                new ForkJoinPool(1).submit(() -> trial.run(LEARNERS, assumed)).get();
        assertThat(trial.run(LEARNERS, assumed)).isEqualTo(alone);
        assertThat(alone.orders()).extracting(OrderOutcome::id).containsExactly("tutor", "fixed-order", "random");
        assertThat(alone.orders()).allMatch(order -> order.unfinished() == 0);
        assertThat(alone.order("tutor").saved().value()).isCloseTo(0, within(1e-12));
        OrderOutcome random = alone.order("random");
        assertThat(random.saved().value())
                .isCloseTo(
                        1
                                - alone.order("tutor").minutesToMastery().value()
                                        / random.minutesToMastery().value(),
                        within(1e-12));
    }

    @Test
    void practice_at_full_level_leads_to_true_mastery_and_rest_takes_some_of_it() {
        SimulatedLearner learner = learner(Assumptions.usual(1));
        double before = learner.trueChance(Skill.NEEDLE, NOW);
        Chance chance = Chance.of(4);
        for (int i = 0; i < 100; i++) {
            learner.answer(bank.draw(Skill.NEEDLE, Level.FULL, chance), "", NOW);
        }
        double after = learner.trueChance(Skill.NEEDLE, NOW);
        assertThat(before).isLessThan(0.4);
        assertThat(after).isGreaterThan(0.85);
        assertThat(learner.trueChanceAfter(Skill.NEEDLE, 30, NOW)).isBetween(before, after - 0.01);
        assertThat(learner.bestChance(Skill.NEEDLE)).isGreaterThan(after);
    }

    @Test
    void half_of_the_gain_is_gone_after_the_half_life() {
        Assumptions assumed = Assumptions.usual(1);
        SimulatedLearner practised = learner(assumed);
        Chance chance = Chance.of(4);
        IntStream.range(0, 2000).forEach(i -> practised.answer(bank.draw(Skill.NEEDLE, Level.FULL, chance), "", NOW));
        double later = practised.trueChanceAfter(Skill.NEEDLE, assumed.of(Value.HALF_LIFE_DAYS), NOW);
        Practice half = new Practice(0.008, 0.0225, 0.0025, 0.115, 0, 0, 4);
        double expected = bank.all(Skill.NEEDLE, Level.FULL).stream()
                .mapToDouble(task -> half.digits(task) * half.rest(task, assumed.of(Value.GLANCE_HARM)))
                .average()
                .orElseThrow();
        assertThat(later).isCloseTo(expected, within(0.01));
    }

    @Test
    void difficulty_matters_only_where_phi_says_so() {
        Chance chance = Chance.of(4);
        SimulatedLearner indifferent = learner(Assumptions.usual(1));
        SimulatedLearner overtaxed = learner(Assumptions.usual(0));
        for (int i = 0; i < 30; i++) {
            Task task = bank.draw(Skill.LIST_IN_THE_HEAD, Level.FULL, chance);
            indifferent.answer(task, "", NOW);
            overtaxed.answer(task, "", NOW);
        }
        assertThat(overtaxed.trueChance(Skill.LIST_IN_THE_HEAD, NOW)).isLessThan(0.01);
        assertThat(indifferent.trueChance(Skill.LIST_IN_THE_HEAD, NOW)).isGreaterThan(0.3);
    }

    @Test
    void a_fact_is_remembered_after_it_was_told_and_fades() {
        SimulatedLearner learner = learner(Assumptions.usual(1));
        Chance chance = Chance.of(4);
        for (String fact : bank.facts()) {
            learner.answer(bank.draw(Skill.CODE_MEANING, Level.FULL, chance), fact, NOW);
        }
        assertThat(learner.trueChance(Skill.CODE_MEANING, NOW)).isEqualTo(1);
        assertThat(learner.trueChance(Skill.CODE_MEANING, NOW.plus(Duration.ofDays(30))))
                .isLessThan(0.8);
    }

    @Test
    void what_a_task_asks_comes_from_the_drill_itself() {
        Task list = Task.of(DrillMaker.shipped().make(Skill.LIST_IN_THE_HEAD, Level.FULL, 5));
        assertThat(list.passes()).isEqualTo(2);
        assertThat(list.flashes()).hasSize(10);
        assertThat(list.heldSeconds()).hasSize(5).isSortedAccordingTo((one, other) -> Double.compare(other, one));
        assertThat(list.heldSeconds().get(4)).isZero();
        Task pause = Task.of(DrillMaker.shipped().make(Skill.SEPARATOR_PAUSE, Level.FULL, 5));
        assertThat(pause.codeRatio()).isCloseTo(1.5, within(1e-6));
    }

    @Test
    void a_trial_without_learners_and_a_phi_beyond_one_are_refused() {
        assertThatThrownBy(() -> trial.run(0, Assumptions.usual(0.3))).hasMessageContaining("not 0");
        assertThatThrownBy(() -> Assumptions.usual(1.2)).hasMessageContaining("1.2");
    }

    @Test
    void every_assumed_value_is_halved_and_doubled() {
        assertThat(Sensitivity.variations(0.3)).hasSize(2 + 2 * (Value.values().length - 1));
    }
}
