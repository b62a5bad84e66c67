package telltally.trainer.trial;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Knowledge;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.MasteryRule;
import telltally.trainer.mastery.Tutor;

/**
 * How much lamp time could be saved at all: orders of practice that look into the simulated learners, which no tutor can.
 * They know when a counting skill is truly mastered and which level teaches most in a second of lamp time; facts and rules
 * they practise as the tutor does.
 */
final class OracleBound {
    private final Trial trial;
    private final Assumptions assumed;

    private OracleBound(long seed, double phi) {
        trial = new Trial(DrillMaker.shipped(), seed);
        assumed = Assumptions.usual(phi);
    }

    /** @param arguments how many learners, the seed, phi */
    public static void main(String[] arguments) {
        OracleBound bound = new OracleBound(Long.parseLong(arguments[1]), Double.parseDouble(arguments[2]));
        bound.print(
                bound.trial.group(Integer.parseInt(arguments[0]), bound.assumed).people());
    }

    private void print(List<Person> people) {
        List<CourseResult> fixed = courses(PracticeOrder.FIXED_ORDER, people);
        List<CourseResult> random = courses(PracticeOrder.RANDOM, people);
        System.out.println("minutes, and the share saved against fixed and random order");
        print("fixed order", fixed, fixed, random);
        print("random", random, fixed, random);
        print("tutor", courses(PracticeOrder.TUTOR, people), fixed, random);
        print("oracle, shown each", trial.courses("shown each", this::shownEach, people, assumed), fixed, random);
        print("oracle, shown last", trial.courses("shown last", this::shownLast, people, assumed), fixed, random);
    }

    private List<CourseResult> courses(PracticeOrder order, List<Person> people) {
        return trial.courses(order.id(), learner -> order, people, assumed);
    }

    private static void print(
            String name, List<CourseResult> results, List<CourseResult> fixed, List<CourseResult> random) {
        System.out.printf("%-18s", name);
        print("mastered", CourseResult::minutesToMastery, results, fixed, random);
        print("shown", CourseResult::minutesToShown, results, fixed, random);
        System.out.println();
    }

    private static void print(
            String what,
            ToDoubleFunction<CourseResult> figure,
            List<CourseResult> results,
            List<CourseResult> fixed,
            List<CourseResult> random) {
        double minutes = mean(results, figure);
        System.out.printf(
                Locale.ROOT,
                "  %s %7.1f, %5.1f %%, %5.1f %%",
                what,
                minutes,
                100 * (1 - minutes / mean(fixed, figure)),
                100 * (1 - minutes / mean(random, figure)));
    }

    private static double mean(List<CourseResult> results, ToDoubleFunction<CourseResult> figure) {
        return results.stream().mapToDouble(figure).average().orElseThrow();
    }

    /** One skill after the other: learnt, and shown as soon as it is truly mastered. */
    private Course.Order shownEach(SimulatedLearner learner) {
        return (tutor, now, chance) -> best(PracticeOrder.unpassed(tutor).get(0), learner, tutor, now, chance);
    }

    /** What is not truly mastered comes first; what is left is shown at the end. */
    private Course.Order shownLast(SimulatedLearner learner) {
        return (tutor, now, chance) -> {
            List<Skill> open = PracticeOrder.unpassed(tutor);
            Optional<Skill> missing = open.stream()
                    .filter(skill -> !mastered(learner, skill, now))
                    .findFirst();
            return best(missing.orElse(open.get(0)), learner, tutor, now, chance);
        };
    }

    private Choice best(Skill skill, SimulatedLearner learner, Tutor tutor, Instant now, Chance chance) {
        if (skill.knowledge() == Knowledge.FACT) {
            Choice choice = tutor.next(now, chance);
            return choice.skill() == skill ? choice : at(skill, Level.FULL);
        }
        if (skill.knowledge() == Knowledge.RULE) {
            return at(skill, tutor.record(skill).grasp().nextLevel());
        }
        return at(skill, mastered(learner, skill, now) ? Level.FULL : mostTaught(learner, skill));
    }

    private Level mostTaught(SimulatedLearner learner, Skill skill) {
        return IntStream.rangeClosed(Level.LOWEST, Level.HIGHEST)
                .mapToObj(Level::new)
                .max(Comparator.comparingDouble(level -> taughtInASecond(learner, skill, level)))
                .orElseThrow();
    }

    private double taughtInASecond(SimulatedLearner learner, Skill skill, Level level) {
        List<Task> drills = trial.bank().all(skill, level);
        return drills.stream().mapToDouble(learner::taughtBy).sum()
                / drills.stream().mapToDouble(Task::lampSeconds).sum();
    }

    private static boolean mastered(SimulatedLearner learner, Skill skill, Instant now) {
        return learner.trueChance(skill, now) >= MasteryRule.STANDARD;
    }

    private static Choice at(Skill skill, Level level) {
        return new Choice(skill, level, "", Choice.Why.NEXT_ON_THE_PATH);
    }
}
