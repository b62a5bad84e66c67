package telltally.trainer.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Skill;

/**
 * The tutor against simpler orders of practice: the same simulated people, the same real drills, the same mastery rule.
 * Every course draws from streams of its own, so that the outcome does not depend on how many run at once.
 */
public final class Trial {
    private static final int DRILLS_EACH = 16;
    private static final double WITHIN_REACH = 0.9;

    private final TaskBank bank;
    private final long seed;

    public Trial(DrillMaker maker, long seed) {
        this.seed = seed;
        bank = new TaskBank(maker, Chance.of(seed).stream("drills"), DRILLS_EACH);
    }

    /** @throws IllegalArgumentException if there is no learner */
    public TrialOutcome run(int learners, Assumptions assumed) {
        if (learners < 1) {
            throw new IllegalArgumentException("a trial needs learners, not " + learners);
        }
        Group group = group(learners, assumed);
        Map<PracticeOrder, List<CourseResult>> results = new EnumMap<>(PracticeOrder.class);
        for (PracticeOrder order : PracticeOrder.values()) {
            results.put(order, courses(order.id(), learner -> order, group.people(), assumed));
        }
        return outcome(results, group.outOfReach(), assumed.phi());
    }

    /** Those who take part, and how many were drawn besides whom endless practice would not bring far enough. */
    record Group(List<Person> people, int outOfReach) {}

    Group group(int learners, Assumptions assumed) {
        Benefit benefit = new Benefit(assumed.phi());
        List<Person> people = new ArrayList<>();
        int drawn = 0;
        while (people.size() < learners) {
            Person person = Person.drawn(assumed, Chance.of(seed).stream("people").stream(drawn));
            drawn++;
            if (withinReach(person, assumed, benefit)) {
                people.add(person);
            }
            if (drawn > 100 * learners) {
                throw new IllegalArgumentException("hardly anybody could master the path under these assumptions");
            }
        }
        return new Group(people, drawn - learners);
    }

    private boolean withinReach(Person person, Assumptions assumed, Benefit benefit) {
        SimulatedLearner learner = new SimulatedLearner(person, assumed, benefit, bank, Chance.of(0));
        return Arrays.stream(Skill.values()).allMatch(skill -> learner.bestChance(skill) >= WITHIN_REACH);
    }

    /**
     * Everybody's way in one order of practice.
     *
     * @param id names the streams of chance
     * @param order for each learner; what a learner hides only an oracle looks at
     */
    List<CourseResult> courses(
            String id, Function<SimulatedLearner, Course.Order> order, List<Person> people, Assumptions assumed) {
        Benefit benefit = new Benefit(assumed.phi());
        return IntStream.range(0, people.size())
                .parallel()
                .mapToObj(number -> {
                    Chance chance = Chance.of(seed).stream(id).stream(number);
                    SimulatedLearner learner =
                            new SimulatedLearner(people.get(number), assumed, benefit, bank, chance.stream("learner"));
                    return new Course(order.apply(learner), learner, bank, chance.stream("order")).run();
                })
                .toList();
    }

    TaskBank bank() {
        return bank;
    }

    private TrialOutcome outcome(Map<PracticeOrder, List<CourseResult>> results, int outOfReach, double phi) {
        List<CourseResult> tutor = of(results, PracticeOrder.TUTOR);
        List<OrderOutcome> orders = new ArrayList<>();
        for (PracticeOrder order : PracticeOrder.values()) {
            List<CourseResult> own = of(results, order);
            Chance chance = Chance.of(seed).stream("bootstrap/" + order.id());
            orders.add(new OrderOutcome(
                    order.id(),
                    mean(own, CourseResult::minutesToMastery, chance),
                    mean(own, CourseResult::minutesToShown, chance),
                    saved(tutor, own, CourseResult::minutesToMastery, chance),
                    saved(tutor, own, CourseResult::minutesToShown, chance),
                    Estimate.of(
                            own.size(),
                            drawn -> sum(own, drawn, CourseResult::falsePasses) / sum(own, drawn, CourseResult::passes),
                            chance),
                    mean(own, CourseResult::retained, chance),
                    mean(own, CourseResult::days, chance),
                    mean(own, CourseResult::drills, chance),
                    (int) own.stream().filter(result -> !result.finished()).count()));
        }
        return new TrialOutcome(tutor.size(), outOfReach, phi, orders);
    }

    private static List<CourseResult> of(Map<PracticeOrder, List<CourseResult>> results, PracticeOrder order) {
        return Objects.requireNonNull(results.get(order));
    }

    private static Estimate mean(List<CourseResult> results, ToDoubleFunction<CourseResult> figure, Chance chance) {
        return Estimate.of(results.size(), drawn -> sum(results, drawn, figure) / drawn.length, chance);
    }

    private static Estimate saved(
            List<CourseResult> tutor, List<CourseResult> other, ToDoubleFunction<CourseResult> minutes, Chance chance) {
        return Estimate.of(other.size(), drawn -> 1 - sum(tutor, drawn, minutes) / sum(other, drawn, minutes), chance);
    }

    private static double sum(List<CourseResult> results, int[] drawn, ToDoubleFunction<CourseResult> figure) {
        double sum = 0;
        for (int number : drawn) {
            sum += figure.applyAsDouble(results.get(number));
        }
        return sum;
    }
}
