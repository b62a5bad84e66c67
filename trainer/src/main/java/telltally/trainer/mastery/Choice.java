package telltally.trainer.mastery;

import telltally.trainer.drill.Level;
import telltally.trainer.drill.Said;
import telltally.trainer.drill.Skill;

/**
 * What to practise next.
 *
 * @param item what in the skill it is to be about, such as a digit or a code; empty for chance to decide
 * @param seen of a weak spot, the answers that say so
 */
public record Choice(Skill skill, Level level, String item, Why why, Tally seen) {
    /** The reason, each with a text of its own. */
    public enum Why {
        /** It comes next on the path. */
        NEXT_ON_THE_PATH,
        /** It is being learnt, as hard as it should be. */
        AS_HARD_AS_HELPS,
        /** It goes well enough for the full level. */
        READY_FOR_FULL_LEVEL,
        /** Easier drills did not bring it further. */
        EASIER_DID_NOT_HELP,
        /** It is learnt and comes among others, to be shown. */
        MIXED_IN,
        /** A pass is to be checked after days. */
        CHECK_DUE,
        /** A fact would soon be forgotten. */
        FACT_DUE,
        /** It goes wrong too often at full level, and comes again by itself. */
        WEAK_SPOT,
        /** All is passed; this was longest ago. */
        KEEP_IT_UP;

        /** Whether it comes between what is being learnt, for a reason of its own. */
        public boolean leavesThePath() {
            return this == MIXED_IN || this == CHECK_DUE || this == FACT_DUE || this == WEAK_SPOT;
        }
    }

    public Choice(Skill skill, Level level, String item, Why why) {
        this(skill, level, item, why, Tally.NONE);
    }

    /** The reason, to be said before the drill: a weak spot is not named, since it would name the answer. */
    public Said announced() {
        return why == Why.WEAK_SPOT ? Said.of("tutor.why-announced-WEAK_SPOT") : said();
    }

    /** The reason, to be said to the learner. */
    public Said said() {
        return Said.of(
                "tutor.why-" + why.name(),
                Said.of("tutor.skill-" + skill.name()),
                level.value(),
                item,
                seen.right(),
                seen.asked());
    }
}
