package telltally.trainer.mastery;

import telltally.trainer.drill.Said;

/** How far a learner is with one skill. */
public enum Stage {
    /** Nothing was answered yet. */
    NEW,
    /** In practice, alone. */
    LEARNING,
    /** Learnt well enough to be mixed with other skills; not yet shown often enough. */
    LEARNT,
    /** The mastery rule's claim was shown; checks are to come. */
    PASSED,
    /** Every check was held. */
    KEPT;

    /** Its name, to be said to the learner. */
    public Said said() {
        return Said.of("tutor.stage-" + name());
    }
}
