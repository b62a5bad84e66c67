package telltally.trainer.mastery;

/**
 * A rating of ability on the scale of item difficulties, in logits: the Elo rating as used for learners and items
 * (Pelánek 2016, "Applications of the Elo rating system in adaptive educational systems", Computers and Education
 * 98:169-179). The step shrinks with the number of answers as first/(1 + shrink n).
 *
 * @param ability in logits; equal to an item's difficulty where the chance of a right answer is one half
 * @param answers how many answers went into it
 */
public record Elo(double ability, int answers) {
    private static final double FIRST_STEP = 1.0;
    private static final double SHRINK = 0.05;

    public static Elo at(double ability) {
        return new Elo(ability, 0);
    }

    /** The chance of a right answer to an item of this difficulty: Rasch's model. */
    public double chanceRight(double difficulty) {
        return Logistic.of(ability - difficulty);
    }

    /**
     * The chance where one in so many is right by guessing.
     *
     * @param guess from 0 to 1: 1/k for one of k answers
     */
    public double chanceRight(double difficulty, double guess) {
        return guess + (1 - guess) * chanceRight(difficulty);
    }

    /** After one more answer, with the shrinking step. */
    public Elo after(double difficulty, boolean right) {
        return after(difficulty, right, step());
    }

    /** After one more answer, with this step. */
    public Elo after(double difficulty, boolean right, double step) {
        return new Elo(ability + step * ((right ? 1 : 0) - chanceRight(difficulty)), answers + 1);
    }

    /** How far one answer moves the rating at most. */
    public double step() {
        return FIRST_STEP / (1 + SHRINK * answers);
    }
}
