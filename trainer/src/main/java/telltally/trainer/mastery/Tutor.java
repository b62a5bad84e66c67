package telltally.trainer.mastery;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/**
 * What a learner can do and what to practise next: a value that folds over answers, so that it can be rebuilt from a
 * history at any time.
 *
 * <p>A learner may practise anything at any level instead of what is proposed; the answers are taken for what they say, and
 * the path goes on where it was.
 *
 * @param records what is known of each skill of the path
 * @param block the skill that is being learnt on its own, if any
 * @param facts the items of the facts that are to be learnt, in the order to meet them; empty to leave that to chance
 * @param leftOut skills that are neither proposed nor waited for
 */
public record Tutor(Map<Skill, SkillRecord> records, Optional<Skill> block, List<String> facts, Set<Skill> leftOut) {
    private static final int WEAK_ANSWERS = 5;

    public Tutor {
        records = Collections.unmodifiableMap(new EnumMap<>(records));
        facts = List.copyOf(facts);
        leftOut = Set.copyOf(leftOut);
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
        return new Tutor(records, Optional.empty(), facts, Set.of());
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
        Optional<Skill> learning = toLearn().filter(skill -> known(next, skill).stage() == Stage.LEARNING);
        return new Tutor(next, learning, facts, leftOut);
    }

    /** With a pass taken back by somebody who doubts it; it has to be earned by new answers. */
    public Tutor reopened(Skill skill) {
        Map<Skill, SkillRecord> next = new EnumMap<>(records);
        next.put(skill, record(skill).reopened());
        return new Tutor(next, block, facts, leftOut);
    }

    /**
     * The same tutor that leaves some skills out from now on, and no others; what is known of them is kept.
     *
     * @throws IllegalArgumentException if none would be left
     */
    public Tutor leavingOut(Set<Skill> skills) {
        if (skills.containsAll(records.keySet())) {
            throw new IllegalArgumentException("at least one skill has to be left");
        }
        return new Tutor(records, block, facts, skills);
    }

    /** The skills that may be proposed, in the order of the path. */
    Stream<Skill> path() {
        return Stream.of(Skill.values()).filter(skill -> !leftOut.contains(skill));
    }

    /** What is to be learnt now: what was begun, else what comes first on the path; empty once all is learnt. */
    Optional<Skill> toLearn() {
        return block.filter(skill -> !leftOut.contains(skill) && stage(skill) == Stage.LEARNING)
                .or(() -> path().filter(skill -> stage(skill) == Stage.NEW || stage(skill) == Stage.LEARNING)
                        .findFirst());
    }

    /** What to practise next. */
    public Choice next(Instant now, Chance chance) {
        return new Proposal(this, now, chance).choice();
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

    /** Whether every skill is passed that is not left out. */
    public boolean allPassed() {
        return path().allMatch(skill -> record(skill).pass().isPresent());
    }
}
