package telltally.trainer.mastery;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/**
 * What a learner can do and what to practise next: a value that folds over answers, so that it can be rebuilt from a
 * history at any time.
 *
 * <p>A learner may practise anything at any level instead of what is proposed; the tutor takes the answers as they come
 * and goes on from there.
 *
 * @param records what is known of each skill of the path
 * @param block the skill that is being learnt on its own, if any
 * @param facts the items of the facts that are to be learnt, in the order to meet them; empty to leave that to chance
 */
public record Tutor(Map<Skill, SkillRecord> records, Optional<Skill> block, List<String> facts) {
    /** How many learnt skills may wait to be shown before no new one is begun. */
    private static final int MOST_WAITING = 3;

    /** How often a learnt skill comes between the drills on a new one. */
    private static final double MIXED_SHARE = 1.0 / 3;

    private static final int WEAK_ANSWERS = 5;

    public Tutor {
        records = Collections.unmodifiableMap(new EnumMap<>(records));
        facts = List.copyOf(facts);
    }

    /** Somebody who has answered nothing yet; which facts there are to learn is left to chance. */
    public static Tutor beginning() {
        return beginning(List.of());
    }

    /**
     * Somebody who has answered nothing yet.
     *
     * @param facts the items of the facts that are to be learnt, in the order to meet them
     */
    public static Tutor beginning(List<String> facts) {
        Map<Skill, SkillRecord> records = new EnumMap<>(Skill.class);
        for (Skill skill : Skill.values()) {
            records.put(skill, SkillRecord.of(skill));
        }
        return new Tutor(records, Optional.empty(), facts);
    }

    /**
     * After one drill.
     *
     * @param credits what the answer says, the drill's own skill first
     * @param when it was answered; not before earlier answers
     */
    public Tutor after(List<Credit> credits, Instant when) {
        if (credits.isEmpty()) {
            return this;
        }
        Map<Skill, SkillRecord> next = new EnumMap<>(records);
        for (Credit credit : credits) {
            next.computeIfPresent(credit.skill(), (skill, known) -> known.after(credit, when));
        }
        Skill own = credits.get(0).skill();
        return new Tutor(next, block(next, own), facts);
    }

    /** With a pass taken back by somebody who doubts it; it has to be earned by new answers. */
    public Tutor reopened(Skill skill) {
        Map<Skill, SkillRecord> next = new EnumMap<>(records);
        next.put(skill, record(skill).reopened());
        return new Tutor(next, block, facts);
    }

    /** Whoever practises something that is not learnt yet, stays with it. */
    private Optional<Skill> block(Map<Skill, SkillRecord> next, Skill own) {
        Stream<Skill> wanted = Stream.concat(Stream.of(own), block.stream());
        return wanted.filter(skill -> known(next, skill).stage() == Stage.LEARNING)
                .findFirst();
    }

    /** What to practise next. */
    public Choice next(Instant now, Chance chance) {
        return checkDue(now)
                .or(() -> toLearnOrMix(chance, now))
                .or(() -> factDue(now))
                .orElseGet(
                        () -> new Choice(longestAgo(Stream.of(Skill.values())), Level.FULL, "", Choice.Why.KEEP_IT_UP));
    }

    private Optional<Choice> checkDue(Instant now) {
        return inStage(Stage.PASSED)
                .filter(skill -> pass(skill).checkIsDue(now))
                .min(Comparator.comparing(skill -> pass(skill).checkDue().orElse(Instant.MAX)))
                .map(skill -> new Choice(skill, Level.FULL, "", Choice.Why.CHECK_DUE));
    }

    private Optional<Choice> toLearnOrMix(Chance chance, Instant now) {
        List<Skill> waiting = inStage(Stage.LEARNT).toList();
        Optional<Skill> learning = block.or(() -> inStage(Stage.LEARNING).findFirst())
                .or(() -> inStage(Stage.NEW).findFirst());
        boolean mix = !waiting.isEmpty()
                && (learning.isEmpty() || waiting.size() >= MOST_WAITING || chance.happens(MIXED_SHARE));
        return mix
                ? Optional.of(practised(longestAgo(waiting.stream()), now, true))
                : learning.map(skill -> practised(skill, now, false));
    }

    private Choice practised(Skill skill, Instant now, boolean mixed) {
        SkillRecord known = record(skill);
        Level level = known.grasp().nextLevel();
        String item = known.grasp() instanceof FactGrasp memories ? fact(memories, now) : "";
        if (mixed) {
            return new Choice(skill, level, item, Choice.Why.MIXED_IN);
        }
        if (known.stage() == Stage.NEW) {
            return new Choice(skill, level, item, Choice.Why.NEXT_ON_THE_PATH);
        }
        return new Choice(skill, level, item, reason(known.grasp(), level));
    }

    private static Choice.Why reason(Grasp grasp, Level level) {
        if (grasp instanceof CountingGrasp counting && counting.triesFullLevel()) {
            return Choice.Why.EASIER_DID_NOT_HELP;
        }
        return level.full() ? Choice.Why.READY_FOR_FULL_LEVEL : Choice.Why.AS_HARD_AS_HELPS;
    }

    /** What is due comes before what is new, and what is new before what is weakest. */
    private String fact(FactGrasp memories, Instant now) {
        return memories.forgetting(now)
                .or(() -> memories.unmet(facts))
                .or(() -> facts.isEmpty() ? Optional.empty() : memories.weakest(now))
                .orElse("");
    }

    private Optional<Choice> factDue(Instant now) {
        return Stream.of(Skill.values())
                .filter(skill -> record(skill).grasp() instanceof FactGrasp)
                .flatMap(skill -> ((FactGrasp) record(skill).grasp())
                        .due(now).map(item -> new Choice(skill, Level.FULL, item, Choice.Why.FACT_DUE)).stream())
                .findFirst();
    }

    /** What is believed of each skill that was met, in the order of the path. */
    public List<Belief> beliefs(Instant now) {
        return records.values().stream()
                .filter(known -> known.stage() != Stage.NEW)
                .map(known -> belief(known, "", known.atFullLevel(), now))
                .toList();
    }

    /** What goes wrong most at full level, the worst first: items whose standard is missed by the raw share. */
    public List<Belief> weakSpots(Instant now) {
        List<Belief> weak = new ArrayList<>();
        for (SkillRecord known : records.values()) {
            known.items().forEach((item, window) -> {
                Tally tally = window.tally();
                if (tally.asked() >= WEAK_ANSWERS && tally.share() < MasteryRule.STANDARD) {
                    weak.add(belief(known, item, window, now));
                }
            });
        }
        weak.sort(Comparator.comparingDouble(belief -> belief.bounds().high()));
        return List.copyOf(weak);
    }

    private static Belief belief(SkillRecord known, String item, Window window, Instant now) {
        Tally tally = window.tally();
        return new Belief(
                known.skill(),
                item,
                known.stage(),
                known.pass().filter(pass -> pass.checkIsDue(now)).isPresent(),
                tally,
                tally.bounds(),
                known.grasp().chanceRight(Level.FULL, now),
                known.grasp().nextLevel());
    }

    /** What is known of one skill. */
    public SkillRecord record(Skill skill) {
        return known(records, skill);
    }

    private static SkillRecord known(Map<Skill, SkillRecord> records, Skill skill) {
        return Objects.requireNonNull(records.get(skill), () -> "no record of " + skill);
    }

    public Stage stage(Skill skill) {
        return record(skill).stage();
    }

    /** Whether every skill is passed. */
    public boolean allPassed() {
        return records.values().stream().allMatch(known -> known.pass().isPresent());
    }

    private Pass pass(Skill skill) {
        return record(skill).pass().orElseThrow();
    }

    private Stream<Skill> inStage(Stage stage) {
        return Arrays.stream(Skill.values()).filter(skill -> stage(skill) == stage);
    }

    private Skill longestAgo(Stream<Skill> skills) {
        return skills.min(Comparator.comparing(skill -> record(skill).asked())).orElseThrow();
    }
}
