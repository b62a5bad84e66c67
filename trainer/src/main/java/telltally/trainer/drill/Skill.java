package telltally.trainer.drill;

import java.util.Locale;

/** What there is to learn, in the order of the path. */
public enum Skill {
    /** A code is written down as soon as it has been seen: the habit that saves the most. */
    WRITE_AT_ONCE(Knowledge.RULE),
    COUNT_A_DIGIT(Knowledge.COUNTING),
    HOLD_TWO_DIGITS(Knowledge.COUNTING),
    END_OF_A_DIGIT(Knowledge.COUNTING),
    END_OF_A_CODE(Knowledge.COUNTING),
    END_OF_THE_LIST(Knowledge.COUNTING),
    LONG_AND_SHORT(Knowledge.COUNTING),
    SEPARATOR(Knowledge.RULE),
    /** The pause around the separator against the pause between codes: the pair most easily confused. */
    SEPARATOR_PAUSE(Knowledge.COUNTING),
    CYLINDER_FLASHES(Knowledge.RULE),
    PASS_CODE(Knowledge.RULE),
    BULB_CHECK(Knowledge.RULE),
    SEGMENTS_APART(Knowledge.RULE),
    BALANCE_RESULT(Knowledge.RULE),
    FROM_THE_MIDDLE(Knowledge.COUNTING),
    MISSED_FLASH(Knowledge.COUNTING),
    GHOST_FLASH(Knowledge.COUNTING),
    DIM_LAMP(Knowledge.COUNTING),
    NEEDLE(Knowledge.COUNTING),
    BY_EAR(Knowledge.COUNTING),
    INTERRUPTION(Knowledge.COUNTING),
    /** Several codes held in the head and written afterwards: the largest single loss. */
    LIST_IN_THE_HEAD(Knowledge.COUNTING),
    CODE_MEANING(Knowledge.FACT);

    private final Knowledge knowledge;

    Skill(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    /** As files and keys of texts write it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
