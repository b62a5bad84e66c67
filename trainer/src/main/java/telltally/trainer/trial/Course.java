package telltally.trainer.trial;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Knowledge;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.MasteryRule;
import telltally.trainer.mastery.Tutor;

/**
 * One learner's way through the whole path in one order of practice, so long a day, until every skill is passed and truly
 * mastered. A skill that was passed too early is found out by its checks, or by an examiner at the end.
 */
final class Course {
    private static final Instant FIRST_DAY = Instant.parse("2026-03-02T08:00:00Z");
    private static final double SESSION_SECONDS = 30 * 60;
    private static final double ANSWERING_SECONDS = 8;
    private static final double MOST_LAMP_SECONDS = 400 * 3600.0;
    private static final double LATER_DAYS = 30;

    /** Says what comes next while something is not passed and no check is due. */
    @FunctionalInterface
    interface Order {
        Choice next(Tutor tutor, Instant now, Chance chance);
    }

    private final Order order;
    private final SimulatedLearner learner;
    private final TaskBank bank;
    private final Chance chance;
    private Tutor tutor;
    private Instant now = FIRST_DAY;
    private int day;
    private double lampSeconds;
    private double sessionSeconds;
    private double masteredSeconds = Double.NaN;
    private Skill lastMissing = Skill.CODE_MEANING;
    private int passes;
    private int falsePasses;
    private int drills;

    Course(Order order, SimulatedLearner learner, TaskBank bank, Chance chance) {
        this.order = order;
        this.learner = learner;
        this.bank = bank;
        this.chance = chance;
        this.tutor = Tutor.beginning(bank.facts());
    }

    CourseResult run() {
        while (lampSeconds < MOST_LAMP_SECONDS) {
            if (sessionSeconds >= SESSION_SECONDS) {
                nextDay();
            }
            Optional<Skill> check = checkDue();
            if (check.isEmpty() && tutor.allPassed()) {
                if (allTrulyMastered()) {
                    return result(true);
                }
                reopenWhatIsNotMastered();
                continue;
            }
            practise(check.map(skill -> new Choice(skill, Level.FULL, "", Choice.Why.CHECK_DUE))
                    .orElseGet(() -> order.next(tutor, now, chance)));
        }
        return result(false);
    }

    private void practise(Choice choice) {
        Task task = bank.draw(choice.skill(), choice.level(), chance);
        String item = choice.item().isEmpty() && choice.skill().knowledge() == Knowledge.FACT
                ? bank.facts().get(chance.below(bank.facts().size()))
                : choice.item();
        lampSeconds += task.lampSeconds();
        sessionSeconds += task.lampSeconds();
        drills++;
        now = now.plusMillis((long) (1000 * (task.lampSeconds() + ANSWERING_SECONDS)));
        List<Credit> credits = learner.answer(task, item, now);
        Tutor before = tutor;
        tutor = tutor.after(credits, now);
        countPasses(before, credits);
        if (Double.isNaN(masteredSeconds) && allTrulyMastered()) {
            masteredSeconds = lampSeconds;
        }
    }

    private void countPasses(Tutor before, List<Credit> credits) {
        credits.stream().map(Credit::skill).distinct().forEach(skill -> {
            boolean granted = before.record(skill).pass().isEmpty()
                    && tutor.record(skill).pass().isPresent();
            if (granted) {
                passes++;
                falsePasses += trulyMastered(skill) ? 0 : 1;
            }
        });
    }

    private Optional<Skill> checkDue() {
        return Arrays.stream(Skill.values())
                .filter(skill -> tutor.record(skill)
                        .pass()
                        .filter(pass -> pass.checkIsDue(now))
                        .isPresent())
                .findFirst();
    }

    private boolean trulyMastered(Skill skill) {
        return learner.trueChance(skill, now) >= MasteryRule.STANDARD;
    }

    private boolean allTrulyMastered() {
        // What was missing last time is most likely missing still.
        if (!trulyMastered(lastMissing)) {
            return false;
        }
        for (Skill skill : Skill.values()) {
            if (!trulyMastered(skill)) {
                lastMissing = skill;
                return false;
            }
        }
        return true;
    }

    /** An examiner at the end finds out what was passed too early. */
    private void reopenWhatIsNotMastered() {
        for (Skill skill : Skill.values()) {
            if (!trulyMastered(skill)) {
                tutor = tutor.reopened(skill);
            }
        }
    }

    /** Every day is a practice day, so that nothing of the practised gain is lost in between. */
    private void nextDay() {
        day++;
        now = FIRST_DAY.plus(Duration.ofDays(day));
        sessionSeconds = 0;
    }

    private CourseResult result(boolean finished) {
        double later = Arrays.stream(Skill.values())
                .mapToDouble(skill -> learner.trueChanceAfter(skill, LATER_DAYS, now))
                .sum();
        return new CourseResult(
                finished,
                (Double.isNaN(masteredSeconds) ? lampSeconds : masteredSeconds) / 60,
                lampSeconds / 60,
                drills,
                day + 1,
                passes,
                falsePasses,
                later / Skill.values().length);
    }
}
