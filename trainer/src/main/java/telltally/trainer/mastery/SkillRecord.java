package telltally.trainer.mastery;

import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Skill;

/**
 * What is known about one skill.
 *
 * @param atFullLevel the latest answers at full level, since the last failed check
 * @param items the latest answers at full level by what they were about, such as a digit
 * @param answers how many answers there were, at any level
 * @param asked when the last of them was given
 * @param pass what the mastery rule has granted
 */
public record SkillRecord(
        Skill skill,
        Grasp grasp,
        Window atFullLevel,
        SortedMap<String, Window> items,
        int answers,
        Instant asked,
        Optional<Pass> pass) {

    public SkillRecord {
        items = Collections.unmodifiableSortedMap(items);
    }

    static SkillRecord of(Skill skill) {
        return new SkillRecord(
                skill, Grasp.beginning(skill), Window.EMPTY, new TreeMap<>(), 0, Instant.MIN, Optional.empty());
    }

    public Stage stage() {
        if (pass.isPresent()) {
            return pass.get().checkDue().isPresent() ? Stage.PASSED : Stage.KEPT;
        }
        if (answers == 0) {
            return Stage.NEW;
        }
        return grasp.learnt() ? Stage.LEARNT : Stage.LEARNING;
    }

    SkillRecord after(Credit credit, Instant when) {
        Grasp nextGrasp = grasp.after(credit, when);
        if (!credit.level().full()) {
            return with(nextGrasp, atFullLevel, items, when, granted(nextGrasp, atFullLevel, when));
        }
        Window window = atFullLevel.plus(credit.right());
        if (pass.isEmpty()) {
            return with(nextGrasp, window, itemsAfter(credit), when, granted(nextGrasp, window, when));
        }
        Optional<Pass> checked = pass.get().after(credit.right(), when);
        // A pass that is taken back has to be earned by new answers.
        Window kept = checked.isPresent() ? window : Window.EMPTY;
        return with(nextGrasp, kept, itemsAfter(credit), when, checked);
    }

    SkillRecord reopened() {
        return new SkillRecord(skill, grasp, Window.EMPTY, items, answers, asked, Optional.empty());
    }

    private Optional<Pass> granted(Grasp nextGrasp, Window window, Instant when) {
        return pass.isEmpty() && nextGrasp.mastered(window) ? Optional.of(Pass.at(when)) : pass;
    }

    private SortedMap<String, Window> itemsAfter(Credit credit) {
        if (credit.item().isEmpty()) {
            return items;
        }
        SortedMap<String, Window> next = new TreeMap<>(items);
        next.merge(credit.item(), Window.EMPTY.plus(credit.right()), (known, first) -> known.plus(credit.right()));
        return next;
    }

    private SkillRecord with(
            Grasp nextGrasp,
            Window window,
            SortedMap<String, Window> nextItems,
            Instant when,
            Optional<Pass> nextPass) {
        return new SkillRecord(skill, nextGrasp, window, nextItems, answers + 1, when, nextPass);
    }
}
