package telltally.trainer.mastery;

import telltally.trainer.drill.Level;
import telltally.trainer.drill.Said;
import telltally.trainer.drill.Skill;

/**
 * One thing that the tutor believes, with what it rests on.
 *
 * @param item what in the skill it is about, such as a digit; empty for the skill as a whole
 * @param checkIsDue whether a pass that was earned earlier has to be shown again now
 * @param latest the latest answers at full level
 * @param bounds between which chances of a right answer at full level the truth lies, by these answers (Wilson, 95 %)
 * @param expected the chance that the model of this kind of knowledge expects at full level
 * @param level what would be practised at next
 */
public record Belief(
        Skill skill,
        String item,
        Stage stage,
        boolean checkIsDue,
        Tally latest,
        Bounds bounds,
        double expected,
        Level level) {

    /** In one sentence: {@code 9s at full level are your weak spot: 6 of 11}. */
    public Said said() {
        if (!item.isEmpty()) {
            String kind = skill == Skill.COUNT_A_DIGIT ? "tutor.weak-digit" : "tutor.weak-item";
            return Said.of(kind, item, latest.right(), latest.asked(), skillName());
        }
        return Said.of(
                "tutor.belief-" + stage.name() + (checkIsDue ? "-DUE" : ""),
                skillName(),
                latest.right(),
                latest.asked(),
                percent(bounds.low()),
                percent(bounds.high()),
                level.value(),
                percent(expected));
    }

    private Said skillName() {
        return Said.of("tutor.skill-" + skill.name());
    }

    private static int percent(double chance) {
        return (int) Math.round(100 * chance);
    }
}
