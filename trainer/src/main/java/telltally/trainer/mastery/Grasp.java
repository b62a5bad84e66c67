package telltally.trainer.mastery;

import java.time.Instant;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** How well one skill is grasped, by the model that fits its kind of knowledge. An immutable value. */
public sealed interface Grasp permits CountingGrasp, RuleGrasp, FactGrasp {
    /** Before anything was answered. */
    static Grasp beginning(Skill skill) {
        return switch (skill.knowledge()) {
            case COUNTING -> CountingGrasp.BEGINNING;
            case RULE -> RuleGrasp.BEGINNING;
            case FACT -> FactGrasp.BEGINNING;
        };
    }

    /** After an answer that concerns this skill. */
    Grasp after(Credit credit, Instant when);

    /** The chance that a drill at this level is answered rightly. */
    double chanceRight(Level level, Instant now);

    /** The level to practise at next. */
    Level nextLevel();

    /** Whether it is learnt well enough to be mixed with other skills. */
    boolean learnt();

    /** Whether the mastery rule's claim is shown. */
    boolean mastered(Window atFullLevel);
}
