package telltally.simulator.vehicle;

/**
 * How long the controller takes over what in a balance test. For each cylinder: bring the speed back, leave the air as
 * it is, average with all firing, cut the injector and let the speed settle, average again.
 *
 * @param riseSeconds once, before the first cylinder
 */
public record BalancePlan(
        double speedRpm,
        double riseSeconds,
        double recoverSeconds,
        double stillSeconds,
        double baselineSeconds,
        double settleSeconds,
        double averageSeconds) {
    public BalancePlan {
        if (!(speedRpm > 0
                && riseSeconds >= 0
                && recoverSeconds >= 0
                && stillSeconds >= 0
                && baselineSeconds > 0
                && settleSeconds >= 0
                && averageSeconds > 0)) {
            throw new IllegalArgumentException("a balance test needs a speed and time to average");
        }
    }

    /** 1500 rpm and five minutes for eight cylinders (common practice, no source); the split is ours. */
    public static BalancePlan usual() {
        return new BalancePlan(1500, 12, 8, 5, 9, 5, 9);
    }

    public double secondsPerCylinder() {
        return recoverSeconds + stillSeconds + baselineSeconds + settleSeconds + averageSeconds;
    }

    public double seconds(int cylinders) {
        return riseSeconds + cylinders * secondsPerCylinder();
    }
}
