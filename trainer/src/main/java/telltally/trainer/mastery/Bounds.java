package telltally.trainer.mastery;

/** Between which chances of a right answer the truth lies, with the confidence that whoever computed it states. */
public record Bounds(double low, double high) {
    /** The two-sided 95 % point of the normal distribution. */
    public static final double Z_95 = 1.959963984540054;

    public Bounds {
        if (!(0 <= low && low <= high && high <= 1)) {
            throw new IllegalArgumentException("no bounds of a chance: " + low + " to " + high);
        }
    }
}
