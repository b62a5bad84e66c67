package telltally.trainer.drill;

/**
 * A drill that was answered: what has to be kept of it. Skill, level, item and seed make the drill again, and marking it
 * again gives the same marks.
 *
 * @param answer what was given
 * @param marked what it is worth
 * @param means how it was given
 * @param sendings how often everything was sent before the answer, at least once
 * @param free whether the learner paused or went back, which no vehicle allows
 * @param lagged whether display or sound came too late for the task to be fair
 */
public record Answered(
        Drill drill, Answer answer, Marked marked, Means means, int sendings, boolean free, boolean lagged) {
    /** How an answer gets from the head into the program. */
    public enum Means {
        /** Typed, as the flashes come or afterwards. */
        TYPED,
        /** Tapped along with the flashes, and read by a decoder. */
        TAPPED,
        /** Written on paper, and typed from there. */
        ON_PAPER
    }

    /** Whether it says anything about what the learner can do on a vehicle. */
    public boolean scored() {
        return !free && !lagged;
    }
}
