package telltally.trainer.drill;

import java.util.List;
import java.util.Optional;
import telltally.trainer.lesson.Marking;

/**
 * An answer marked.
 *
 * @param right whether the whole answer is right
 * @param credits what it says about each skill that it concerns; that on the drill's own skill comes first
 * @param marking what was written under what was sent; empty where nothing was to be written
 */
public record Marked(boolean right, List<Mistake> mistakes, List<Credit> credits, Optional<Marking> marking) {
    public Marked {
        mistakes = List.copyOf(mistakes);
        credits = List.copyOf(credits);
    }

    /** Every credit of one skill. */
    public List<Credit> credits(Skill skill) {
        return credits.stream().filter(credit -> credit.skill() == skill).toList();
    }
}
