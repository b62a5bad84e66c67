package telltally.trainer.mastery;

/**
 * Forgetting and remembering of single facts by the open FSRS-6 model with its published default parameters
 * (open-spaced-repetition/py-fsrs, commit 3abe686, {@code fsrs/scheduler.py}; MIT licence). Stability is the number of
 * days after which the chance to remember has fallen to 0.9; difficulty runs from 1 to 10.
 */
public final class Fsrs {
    private static final double[] W = {
        0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
        1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542
    };
    private static final double LEAST_STABILITY_DAYS = 0.001;
    private static final double DECAY = -W[20];
    private static final double FACTOR = StrictMath.pow(0.9, 1 / DECAY) - 1;
    private static final int LONGEST_INTERVAL_DAYS = 36_500;

    /** How well a fact was remembered; the numbers are the model's. */
    public enum Grade {
        AGAIN(1),
        HARD(2),
        GOOD(3),
        EASY(4);

        private final int number;

        Grade(int number) {
            this.number = number;
        }
    }

    private Fsrs() {}

    /** The chance to remember so many days after the last review. */
    public static double retrievability(double days, double stabilityDays) {
        return StrictMath.pow(1 + FACTOR * days / stabilityDays, DECAY);
    }

    /** After how many whole days the chance to remember has fallen to the one wanted: 1 to 36500. */
    public static int intervalDays(double stabilityDays, double wanted) {
        double days = stabilityDays / FACTOR * (StrictMath.pow(wanted, 1 / DECAY) - 1);
        return (int) Math.min(Math.max(StrictMath.rint(days), 1), LONGEST_INTERVAL_DAYS);
    }

    static double firstStability(Grade grade) {
        return Math.max(W[grade.number - 1], LEAST_STABILITY_DAYS);
    }

    static double firstDifficulty(Grade grade) {
        return clampDifficulty(unclampedFirstDifficulty(grade));
    }

    static double nextDifficulty(double difficulty, Grade grade) {
        double change = -W[6] * (grade.number - 3) * (10 - difficulty) / 9;
        double towards = unclampedFirstDifficulty(Grade.EASY);
        return clampDifficulty(W[7] * towards + (1 - W[7]) * (difficulty + change));
    }

    /** Stability after a review on a later day. */
    static double nextStability(double difficulty, double stabilityDays, double retrievability, Grade grade) {
        double next = grade == Grade.AGAIN
                ? afterLapse(difficulty, stabilityDays, retrievability)
                : afterRecall(difficulty, stabilityDays, retrievability, grade);
        return Math.max(next, LEAST_STABILITY_DAYS);
    }

    /** Stability after another review on the same day. */
    static double sameDayStability(double stabilityDays, Grade grade) {
        double growth = StrictMath.exp(W[17] * (grade.number - 3 + W[18])) * StrictMath.pow(stabilityDays, -W[19]);
        double factor = grade.number >= 3 ? Math.max(growth, 1) : growth;
        return Math.max(stabilityDays * factor, LEAST_STABILITY_DAYS);
    }

    static double afterRecall(double difficulty, double stabilityDays, double retrievability, Grade grade) {
        double hard = grade == Grade.HARD ? W[15] : 1;
        double easy = grade == Grade.EASY ? W[16] : 1;
        return stabilityDays
                * (1
                        + StrictMath.exp(W[8])
                                * (11 - difficulty)
                                * StrictMath.pow(stabilityDays, -W[9])
                                * StrictMath.expm1(W[10] * (1 - retrievability))
                                * hard
                                * easy);
    }

    static double afterLapse(double difficulty, double stabilityDays, double retrievability) {
        double longTerm = W[11]
                * StrictMath.pow(difficulty, -W[12])
                * (StrictMath.pow(stabilityDays + 1, W[13]) - 1)
                * StrictMath.exp(W[14] * (1 - retrievability));
        return Math.min(longTerm, stabilityDays / StrictMath.exp(W[17] * W[18]));
    }

    private static double unclampedFirstDifficulty(Grade grade) {
        return W[4] - StrictMath.exp(W[5] * (grade.number - 1)) + 1;
    }

    private static double clampDifficulty(double difficulty) {
        return Math.min(Math.max(difficulty, 1), 10);
    }
}
