package telltally.simulator.vehicle;

/**
 * How often a balance test errs, from theory. With the air held the indicated power is steady but for the variation of
 * single firings, so the speed is a first-order process: linearised, dx = -x/s dt + noise, with the engine's settling
 * time s ({@link EngineMake#settlingSeconds}). The mean of such a process over a span T has the variance
 *
 * <p>v = (K k p)^2 (c/T) (g1^2 + g2^2 + ...) (1 - (s/T)(1 - exp(-T/s)))
 *
 * <p>with K rpm per watt, k the cycle variation, p the power of a sound cylinder, c the seconds of a cycle and g the
 * strengths of the cylinders that fire (average of an Ornstein-Uhlenbeck process; D. T. Gillespie, "Exact numerical
 * simulation of the Ornstein-Uhlenbeck process and its integral", Physical Review E 54, 2084, 1996, where the variance
 * of the integral is given). Drops are differences of two such means and thus nearly normal. Cylinder i is named when
 * D(i) - q * mean of the other drops is below zero, q being the threshold; that is a normal quantity too, so the
 * probability is a tail of the normal distribution.
 */
public final class BalancePrediction {
    private final Cylinders cylinders;
    private final double thresholdShare;
    private final double[] dropRpm;
    private final double[] variance;

    private BalancePrediction(Cylinders cylinders, double thresholdShare, double[] dropRpm, double[] variance) {
        this.cylinders = cylinders;
        this.thresholdShare = thresholdShare;
        this.dropRpm = dropRpm;
        this.variance = variance;
    }

    /** For an engine without load. */
    public static BalancePrediction of(EngineMake make, Cylinders cylinders, BalancePlan plan, BalanceJudge judge) {
        int count = cylinders.count();
        double strengths = 0;
        double squares = 0;
        for (int cylinder = 1; cylinder <= count; cylinder++) {
            strengths += cylinders.strength(cylinder);
            squares += cylinders.strength(cylinder) * cylinders.strength(cylinder);
        }
        double power = make.wattsToHold(plan.speedRpm(), 0);
        double soundPower = power / strengths;
        double before = variance(make, plan.speedRpm(), soundPower, squares, plan.baselineSeconds());
        double[] drop = new double[count];
        double[] variance = new double[count];
        for (int i = 0; i < count; i++) {
            double strength = cylinders.strength(i + 1);
            double missing = soundPower * strength;
            double firstGuess = make.rpmHeldBy(power - missing, 0);
            double rpm = make.rpmHeldBy(power - missing * silentShare(make, cylinders, firstGuess), 0);
            drop[i] = (plan.speedRpm() - rpm) * settledShare(make.settlingSeconds(rpm, 0), plan);
            double left = squares - strength * strength;
            variance[i] = before + variance(make, rpm, soundPower, left, plan.averageSeconds());
        }
        return new BalancePrediction(cylinders, judge.thresholdShare(), drop, variance);
    }

    /**
     * How long a silent turn waits against the mean of all: the crankshaft is fastest then. It loses d = T a / (J w) an
     * interval of angle a, gains a little more than that at each firing, and is half of d above its mean when the silent
     * turn comes.
     */
    private static double silentShare(EngineMake make, Cylinders cylinders, double rpm) {
        double radiansPerSecond = rpm / EngineMake.RPM_PER_RADIAN_PER_SECOND;
        double torque = make.constantFriction() + make.linearFriction() * radiansPerSecond;
        double energy = make.inertia() * radiansPerSecond * radiansPerSecond;
        return 1 - torque * cylinders.firingIntervalRadians() / energy / 2;
    }

    private static double variance(EngineMake make, double rpm, double soundPower, double squares, double seconds) {
        double step = make.rpmPerWatt(rpm, 0) * make.cycleVariation() * soundPower;
        double cycleSeconds = 120 / rpm;
        double memory = 1 - meanOfDecay(seconds / make.settlingSeconds(rpm, 0));
        return step * step * cycleSeconds / seconds * squares * memory;
    }

    /** What the averaged drop is of the whole drop, part of the settling still going on. */
    private static double settledShare(double settlingSeconds, BalancePlan plan) {
        double left = StrictMath.exp(-plan.settleSeconds() / settlingSeconds);
        return 1 - left * meanOfDecay(plan.averageSeconds() / settlingSeconds);
    }

    /** Mean of exp(-u) for u from 0 to x. */
    private static double meanOfDecay(double x) {
        return -StrictMath.expm1(-x) / x;
    }

    public double dropRpm(int cylinder) {
        return dropRpm[cylinder - 1];
    }

    public double deviationRpm(int cylinder) {
        return Math.sqrt(variance[cylinder - 1]);
    }

    /** How probably this cylinder is named weak: an error if it is sound, a find if it is not. */
    public double probabilityNamed(int cylinder) {
        double others = 0;
        double othersVariance = 0;
        int count = dropRpm.length - 1;
        for (int i = 0; i <= count; i++) {
            if (i != cylinder - 1) {
                others += dropRpm[i] / count;
                othersVariance += variance[i] / count / count;
            }
        }
        double mean = dropRpm[cylinder - 1] - thresholdShare * others;
        double spread = Math.sqrt(variance[cylinder - 1] + thresholdShare * thresholdShare * othersVariance);
        if (spread == 0) {
            return mean < 0 ? 1 : 0;
        }
        return NormalTail.beyond(mean / spread);
    }

    /**
     * The probability that a sound cylinder is named or a weak one is not is no more than this: the sum over the
     * cylinders (Boole's inequality). For small sums it is nearly that, as two wrong names at once are rare.
     */
    public double wrongVerdictAtMost() {
        double sum = 0;
        for (int cylinder = 1; cylinder <= dropRpm.length; cylinder++) {
            boolean sound = cylinders.byNumber().get(cylinder - 1).weakness() == Cylinder.Weakness.NONE;
            double named = probabilityNamed(cylinder);
            sum += sound ? named : 1 - named;
        }
        return Math.min(1, sum);
    }
}
