package telltally.trainer.mastery;

/**
 * The latest answers, at most {@value #LONGEST}, right or wrong: what somebody can do now, not what they once could not.
 *
 * @param answers a bit for each, the latest lowest, set where it was right
 * @param length how many there are
 */
public record Window(int answers, int length) {
    /** How many answers are remembered. */
    public static final int LONGEST = 30;

    public static final Window EMPTY = new Window(0, 0);

    private static final int MASK = (1 << LONGEST) - 1;

    public Window {
        if (length < 0 || length > LONGEST || answers >>> length != 0) {
            throw new IllegalArgumentException("no row of " + length + " answers: " + Integer.toBinaryString(answers));
        }
    }

    public Window plus(boolean right) {
        return new Window((answers << 1 | (right ? 1 : 0)) & MASK, Math.min(length + 1, LONGEST));
    }

    public Tally tally() {
        return new Tally(Integer.bitCount(answers), length);
    }

    /** The latest of them. */
    public Tally latest(int count) {
        int kept = Math.min(count, length);
        return new Tally(Integer.bitCount(answers & (1 << kept) - 1), kept);
    }

    public boolean whole() {
        return length == LONGEST;
    }
}
