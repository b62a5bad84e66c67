package telltally.trainer.mastery;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** What the tutor would have a learner practise at a certain moment: what is due, else what is weak, else the path. */
record Proposal(Tutor tutor, Instant now, Chance chance) {
    /**
     * How often a learnt skill comes between the drills on what is being learnt: with forty drills a day and eight skills
     * that wait, each about once a day. Common practice, no source.
     */
    private static final double MIXED_SHARE = 0.2;

    /** How often a weak spot comes before anything else. Common practice, no source. */
    private static final double WEAK_SHARE = 0.2;

    Choice choice() {
        return checkDue()
                .or(this::weakSpot)
                .or(this::learnOrMix)
                .or(this::factDue)
                .orElseGet(() -> new Choice(longestAgo(tutor.path()), Level.FULL, "", Choice.Why.KEEP_IT_UP));
    }

    private Optional<Choice> checkDue() {
        return inStage(Stage.PASSED)
                .filter(skill -> pass(skill).checkIsDue(now))
                .min(Comparator.comparing(skill -> pass(skill).checkDue().orElse(Instant.MAX)))
                .map(skill -> new Choice(skill, Level.FULL, "", Choice.Why.CHECK_DUE));
    }

    /** Facts have days of their own, on which they come again. */
    private Optional<Choice> weakSpot() {
        return tutor.weakSpots(now).stream()
                .filter(weak -> !tutor.leftOut().contains(weak.skill()))
                .filter(weak -> tutor.record(weak.skill()).grasp() instanceof CountingGrasp)
                .findFirst()
                .filter(weak -> chance.happens(WEAK_SHARE))
                .map(weak -> new Choice(weak.skill(), Level.FULL, weak.item(), Choice.Why.WEAK_SPOT, weak.latest()));
    }

    private Optional<Choice> learnOrMix() {
        List<Skill> waiting = inStage(Stage.LEARNT).toList();
        Optional<Skill> learning = tutor.toLearn();
        boolean mix = !waiting.isEmpty() && (learning.isEmpty() || chance.happens(MIXED_SHARE));
        return mix
                ? Optional.of(practised(longestAgo(waiting.stream()), Choice.Why.MIXED_IN))
                : learning.map(skill -> practised(skill, reason(tutor.record(skill))));
    }

    private Choice practised(Skill skill, Choice.Why why) {
        return new Choice(
                skill,
                tutor.record(skill).grasp().nextLevel(),
                facts(skill).map(this::fact).findFirst().orElse(""),
                why);
    }

    private static Choice.Why reason(SkillRecord known) {
        if (known.stage() == Stage.NEW) {
            return Choice.Why.NEXT_ON_THE_PATH;
        }
        if (known.grasp() instanceof CountingGrasp counting && counting.triesFullLevel()) {
            return Choice.Why.EASIER_DID_NOT_HELP;
        }
        return known.grasp().nextLevel().full() ? Choice.Why.READY_FOR_FULL_LEVEL : Choice.Why.AS_HARD_AS_HELPS;
    }

    /** What is due comes before what is new, and what is new before what is weakest. */
    private String fact(FactGrasp memories) {
        return memories.forgetting(now)
                .or(() -> memories.unmet(tutor.facts()))
                .or(() -> tutor.facts().isEmpty() ? Optional.empty() : memories.weakest(now))
                .orElse("");
    }

    private Optional<Choice> factDue() {
        return tutor.path()
                .flatMap(skill -> facts(skill)
                        .flatMap(memories -> memories.due(now).stream())
                        .map(item -> new Choice(skill, Level.FULL, item, Choice.Why.FACT_DUE)))
                .findFirst();
    }

    private Stream<FactGrasp> facts(Skill skill) {
        return tutor.record(skill).grasp() instanceof FactGrasp memories ? Stream.of(memories) : Stream.empty();
    }

    private Pass pass(Skill skill) {
        return tutor.record(skill).pass().orElseThrow();
    }

    private Stream<Skill> inStage(Stage stage) {
        return tutor.path().filter(skill -> tutor.stage(skill) == stage);
    }

    private Skill longestAgo(Stream<Skill> skills) {
        return skills.min(Comparator.comparing(skill -> tutor.record(skill).asked()))
                .orElseThrow();
    }
}
