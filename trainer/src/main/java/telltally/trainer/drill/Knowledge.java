package telltally.trainer.drill;

/** What kind of thing is learnt; each kind is followed by a model of its own. */
public enum Knowledge {
    /** Done better or worse, harder or easier: counting. */
    COUNTING,
    /** Understood or not: what a lone flash between two lists is. */
    RULE,
    /** Remembered or forgotten: what a code means. */
    FACT
}
