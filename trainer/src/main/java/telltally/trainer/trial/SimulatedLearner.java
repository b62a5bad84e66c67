package telltally.trainer.trial;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Knowledge;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Fsrs;
import telltally.trainer.mastery.Memory;
import telltally.trainer.trial.Assumptions.Value;

/** Somebody who counts, errs, learns and forgets. What is hidden in here no order of practice can see. */
final class SimulatedLearner {
    private static final double DAY_SECONDS = 86_400;
    private static final double GUESSED_MEANING = 0.2;

    private final Person person;
    private final Assumptions assumed;
    private final Benefit benefit;
    private final TaskBank bank;
    private final Chance chance;
    private final Map<Skill, Double> ownDigits = new EnumMap<>(Skill.class);
    private final Set<Skill> knownRules = EnumSet.noneOf(Skill.class);
    private final Map<String, Memory> memories = new HashMap<>();
    private double digits;

    SimulatedLearner(Person person, Assumptions assumed, Benefit benefit, TaskBank bank, Chance chance) {
        this.person = person;
        this.assumed = assumed;
        this.benefit = benefit;
        this.bank = bank;
        this.chance = chance;
        for (Skill skill : Skill.values()) {
            ownDigits.put(skill, 0.0);
            if (skill.knowledge() == Knowledge.RULE && chance.happens(assumed.of(Value.RULE_KNOWN))) {
                knownRules.add(skill);
            }
        }
    }

    /** Watches, answers and learns from being told. The drill's own skill comes first among the credits. */
    List<Credit> answer(Task task, String item, Instant now) {
        Practice practice = practice(task.skill());
        boolean[] right = countedDigits(task, practice);
        List<Credit> credits = new ArrayList<>();
        double taught = taughtBy(task);
        switch (task.skill().knowledge()) {
            case COUNTING -> credits.add(own(task, "", counted(task, practice, right)));
            case RULE -> credits.add(own(task, "", followed(task.skill())));
            case FACT -> credits.add(own(task, item, recalled(item, now)));
        }
        if (task.written() && task.skill() != Skill.COUNT_A_DIGIT) {
            for (int i = 0; i < right.length; i++) {
                String digit = Integer.toString(task.flashes().get(i));
                credits.add(new Credit(Skill.COUNT_A_DIGIT, task.level(), digit, right[i]));
            }
        }
        digits += taught;
        ownDigits.merge(task.skill(), taught, Double::sum);
        return credits;
    }

    private static Credit own(Task task, String item, boolean right) {
        boolean digit = task.skill() == Skill.COUNT_A_DIGIT;
        return new Credit(
                task.skill(),
                task.level(),
                digit ? Integer.toString(task.flashes().get(0)) : item,
                right);
    }

    private boolean[] countedDigits(Task task, Practice practice) {
        boolean[] right = new boolean[task.flashes().size()];
        for (int i = 0; i < right.length; i++) {
            right[i] = chance.happens(practice.digit(task, task.flashes().get(i)));
        }
        return right;
    }

    private boolean counted(Task task, Practice practice, boolean[] digitsRight) {
        boolean all = chance.happens(practice.rest(task, assumed.of(Value.GLANCE_HARM)));
        if (Practice.countsDigits(task)) {
            for (boolean each : digitsRight) {
                all &= each;
            }
        }
        return all;
    }

    private boolean followed(Skill rule) {
        boolean known = knownRules.contains(rule);
        if (!known && chance.happens(assumed.of(Value.RULE_LEARNT))) {
            knownRules.add(rule);
        }
        return chance.happens(known ? 1 - assumed.of(Value.RULE_SLIP) : assumed.of(Value.RULE_GUESS));
    }

    private boolean recalled(String fact, Instant now) {
        Memory memory = memories.get(fact);
        boolean remembered = memory != null && chance.happens(memory.chanceRight(now));
        Fsrs.Grade grade = remembered ? Fsrs.Grade.GOOD : Fsrs.Grade.AGAIN;
        memories.put(fact, memory == null ? Memory.first(grade, now) : memory.after(grade, now));
        return remembered || chance.happens(GUESSED_MEANING);
    }

    /** How much practice a drill would be now, in digits of the best difficulty. */
    double taughtBy(Task task) {
        double seen = task.flashes().size() * (1 + (task.passes() - 1) * assumed.of(Value.REPEAT_WORTH));
        boolean counting = task.skill().knowledge() == Knowledge.COUNTING;
        return seen * (counting ? benefit.of(chanceRight(task, practice(task.skill()))) : 1);
    }

    /** Days without practice take some of what it gained. */
    void rest(double days) {
        double kept = StrictMath.pow(2, -days / assumed.of(Value.HALF_LIFE_DAYS));
        digits = kept(digits, assumed.of(Value.SLIP_DIGITS) * person.pace(), kept);
        double scale = assumed.of(Value.OWN_DIGITS) * person.pace();
        ownDigits.replaceAll((skill, own) -> kept(own, scale, kept));
    }

    /** So much practice as leaves this share of the gain. */
    private static double kept(double practised, double scale, double share) {
        return -scale * StrictMath.log1p(share * StrictMath.expm1(-practised / scale));
    }

    /** The true chance of a right answer at full level; for a rule whether it is known. */
    double trueChance(Skill skill, Instant now) {
        return switch (skill.knowledge()) {
            case COUNTING -> {
                Practice practice = practice(skill);
                List<Task> all = bank.all(skill, Level.FULL);
                yield all.stream()
                                .mapToDouble(task -> chanceRight(task, practice))
                                .sum()
                        / all.size();
            }
            case RULE -> knownRules.contains(skill) ? 1 - assumed.of(Value.RULE_SLIP) : assumed.of(Value.RULE_GUESS);
            case FACT ->
                bank.facts().stream().mapToDouble(fact -> remembered(fact, now)).sum()
                        / bank.facts().size();
        };
    }

    private double remembered(String fact, Instant now) {
        Memory memory = memories.get(fact);
        return memory == null ? 0 : memory.chanceRight(now);
    }

    /** The same if nothing were practised for so many days. */
    double trueChanceAfter(Skill skill, double days, Instant now) {
        SimulatedLearner later = new SimulatedLearner(person, assumed, benefit, bank, Chance.of(0));
        later.digits = digits;
        later.ownDigits.putAll(ownDigits);
        later.knownRules.clear();
        later.knownRules.addAll(knownRules);
        later.memories.putAll(memories);
        later.rest(days);
        return later.trueChance(skill, now.plus(Duration.ofSeconds((long) (days * DAY_SECONDS))));
    }

    /** What endless practice would lead to. */
    double bestChance(Skill skill) {
        if (skill.knowledge() != Knowledge.COUNTING) {
            return 1;
        }
        Practice best = Practice.of(person, assumed, Double.MAX_VALUE, Double.MAX_VALUE);
        List<Task> all = bank.all(skill, Level.FULL);
        return all.stream().mapToDouble(task -> chanceRight(task, best)).sum() / all.size();
    }

    private Practice practice(Skill skill) {
        return Practice.of(person, assumed, digits, ownDigits.getOrDefault(skill, 0.0));
    }

    private double chanceRight(Task task, Practice practice) {
        double rest = practice.rest(task, assumed.of(Value.GLANCE_HARM));
        return Practice.countsDigits(task) ? rest * practice.digits(task) : rest;
    }
}
