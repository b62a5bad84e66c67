package telltally.trainer.mastery;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;

/**
 * Facts, each with a memory of its own that fades and is refreshed.
 *
 * @param memories by the credit's item
 */
public record FactGrasp(SortedMap<String, Memory> memories) implements Grasp {
    static final FactGrasp BEGINNING = new FactGrasp(new TreeMap<>());

    /** What a fact that was never asked for is remembered with. */
    private static final double NEVER_MET = 0.05;

    /** So many facts at least, all freshly remembered, before facts are mixed with other skills. */
    private static final int FIRST_FACTS = 5;

    public FactGrasp {
        memories = Collections.unmodifiableSortedMap(new TreeMap<>(memories));
    }

    @Override
    public Grasp after(Credit credit, Instant when) {
        Fsrs.Grade grade = credit.right() ? Fsrs.Grade.GOOD : Fsrs.Grade.AGAIN;
        Memory known = memories.get(credit.item());
        SortedMap<String, Memory> next = new TreeMap<>(memories);
        next.put(credit.item(), known == null ? Memory.first(grade, when) : known.after(grade, when));
        return new FactGrasp(next);
    }

    /** On average over the facts met so far. */
    @Override
    public double chanceRight(Level level, Instant now) {
        return memories.values().stream()
                .mapToDouble(memory -> memory.chanceRight(now))
                .average()
                .orElse(NEVER_MET);
    }

    @Override
    public Level nextLevel() {
        return Level.FULL;
    }

    @Override
    public boolean learnt() {
        return memories.size() >= FIRST_FACTS
                && memories.values().stream().allMatch(memory -> memory.stage() == Memory.Stage.REVIEW);
    }

    @Override
    public boolean mastered(Window atFullLevel) {
        return MasteryRule.shown(atFullLevel);
    }

    /** Something of a list that was never asked for. */
    Optional<String> unmet(List<String> facts) {
        return facts.stream().filter(fact -> !memories.containsKey(fact)).findFirst();
    }

    /** What would be forgotten first. */
    Optional<String> weakest(Instant now) {
        return memories.entrySet().stream()
                .min(Comparator.comparingDouble(entry -> entry.getValue().chanceRight(now)))
                .map(Map.Entry::getKey);
    }

    /** The fact that was due longest ago of those whose day has come; the first minutes do not count. */
    Optional<String> forgetting(Instant now) {
        return due(now).filter(fact -> {
            Memory memory = memories.get(fact);
            return memory != null && memory.stage() == Memory.Stage.REVIEW;
        });
    }

    /** The fact that has been due longest. */
    public Optional<String> due(Instant now) {
        return memories.entrySet().stream()
                .filter(entry -> !entry.getValue().due().isAfter(now))
                .min(Comparator.comparing(entry -> entry.getValue().due()))
                .map(Map.Entry::getKey);
    }
}
