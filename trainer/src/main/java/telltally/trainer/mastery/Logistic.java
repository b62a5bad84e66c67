package telltally.trainer.mastery;

/** The logistic function and its inverse. */
final class Logistic {
    private Logistic() {}

    /** 1/(1 + e^-x). */
    static double of(double logit) {
        return 1 / (1 + StrictMath.exp(-logit));
    }

    static double logit(double chance) {
        return StrictMath.log(chance / (1 - chance));
    }
}
