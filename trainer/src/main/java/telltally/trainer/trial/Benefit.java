package telltally.trainer.trial;

/**
 * How much a drill teaches, by how likely it is answered rightly: phi + (1 - phi) x e^((1 - x²)/2) with x the normal
 * quantile of that chance, nothing below one half. It is greatest, 1, at 0.84, after the rule for gradient learners
 * (Wilson, Shenhav, Straccia and Cohen 2019, Nature Communications 10:4646), which was never measured on people counting.
 */
final class Benefit {
    private static final int STEPS = 2000;

    private final double[] table = new double[STEPS + 1];

    Benefit(double phi) {
        for (int i = 0; i <= STEPS; i++) {
            double x = Normal.quantile(Math.min((double) i / STEPS, 1 - 1e-9));
            table[i] = phi + (1 - phi) * Math.max(0, x) * StrictMath.exp((1 - x * x) / 2);
        }
    }

    double of(double chanceRight) {
        return table[(int) Math.round(chanceRight * STEPS)];
    }
}
