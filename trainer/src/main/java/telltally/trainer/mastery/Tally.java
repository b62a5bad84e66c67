package telltally.trainer.mastery;

/** How many of the answers asked for were right. */
public record Tally(int right, int asked) {
    public static final Tally NONE = new Tally(0, 0);

    public Tally {
        if (right < 0 || right > asked) {
            throw new IllegalArgumentException(right + " right of " + asked);
        }
    }

    public Tally plus(boolean rightAgain) {
        return new Tally(right + (rightAgain ? 1 : 0), asked + 1);
    }

    public int wrong() {
        return asked - right;
    }

    /** The raw share right, from 0 to 1; one half where nothing was asked. */
    public double share() {
        return asked == 0 ? 0.5 : (double) right / asked;
    }

    /**
     * The score interval (Wilson 1927; NIST/SEMATECH handbook 7.2.4.1) for the chance of a right answer.
     *
     * @param z how many standard deviations wide to each side: 1.959964 for 95 % between the bounds
     */
    public Bounds wilson(double z) {
        if (asked == 0) {
            return new Bounds(0, 1);
        }
        double share = share();
        double square = z * z / asked;
        double middle = share + square / 2;
        double half = z * Math.sqrt(share * (1 - share) / asked + square / (4 * asked));
        // At the ends rounding would leave a bound a hair outside or short of the end itself.
        double low = right == 0 ? 0 : (middle - half) / (1 + square);
        double high = right == asked ? 1 : (middle + half) / (1 + square);
        return new Bounds(low, high);
    }

    /** Wilson's interval at 95 %. */
    public Bounds bounds() {
        return wilson(Bounds.Z_95);
    }
}
