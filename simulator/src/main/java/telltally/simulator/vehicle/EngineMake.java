package telltally.simulator.vehicle;

/**
 * What an engine is, whichever of its cylinders do their work. Energies and powers are indicated ones: what the gas
 * gives, before friction.
 *
 * @param inertia of everything that turns with the crankshaft, kg m^2
 * @param constantFriction that part of the friction torque which does not depend on speed, N m
 * @param linearFriction that part which grows with speed, N m s per radian; more than zero
 * @param fullChargeJoules energy of one firing of a sound cylinder filled to the brim
 * @param fullAirWatts what all the air the throttle can let in would give with every cylinder sound
 * @param cycleVariation standard deviation of a firing's energy from one cycle to the next, as a share of its mean
 * @param idleRpm the speed the controller holds with the throttle closed
 * @param limitRpm above this nothing is injected
 * @param compressorNewtonMetres what the air conditioning takes
 */
public record EngineMake(
        double inertia,
        double constantFriction,
        double linearFriction,
        double fullChargeJoules,
        double fullAirWatts,
        double cycleVariation,
        double idleRpm,
        double limitRpm,
        double compressorNewtonMetres) {
    static final double RPM_PER_RADIAN_PER_SECOND = 30 / Math.PI;

    public EngineMake {
        requirePositive("inertia", inertia);
        requirePositive("linear friction", linearFriction);
        requirePositive("energy of a full charge", fullChargeJoules);
        requirePositive("power of all the air", fullAirWatts);
        requirePositive("idle speed", idleRpm);
        requirePositive("speed limit", limitRpm);
        if (!(constantFriction >= 0 && cycleVariation >= 0 && cycleVariation < 1 && compressorNewtonMetres >= 0)) {
            throw new IllegalArgumentException("friction " + constantFriction + " N m, variation " + cycleVariation
                    + ", compressor " + compressorNewtonMetres + " N m");
        }
    }

    /**
     * Half a litre a cylinder. The friction amounts to mean effective pressures of 1.1 bar at 750 and 1.4 bar at 1500 rpm
     * and the variation to 3 percent; all figures are typical, from memory.
     */
    public static EngineMake usual(int cylinders) {
        return new EngineMake(
                0.05 * cylinders,
                3.5 * cylinders,
                0.0125 * cylinders,
                500,
                25_000.0 * cylinders,
                0.03,
                750,
                6000,
                2.0 * cylinders);
    }

    public EngineMake withCycleVariation(double share) {
        return new EngineMake(
                inertia,
                constantFriction,
                linearFriction,
                fullChargeJoules,
                fullAirWatts,
                share,
                idleRpm,
                limitRpm,
                compressorNewtonMetres);
    }

    /** Indicated power that keeps this speed against friction and a load, P = (T0 + TL) w + b w^2. */
    public double wattsToHold(double speedRpm, double loadNewtonMetres) {
        double radiansPerSecond = speedRpm / RPM_PER_RADIAN_PER_SECOND;
        return radiansPerSecond * (constantFriction + loadNewtonMetres + linearFriction * radiansPerSecond);
    }

    /** The speed at which this indicated power is used up: the inverse of {@link #wattsToHold}. */
    public double rpmHeldBy(double watts, double loadNewtonMetres) {
        double torque = constantFriction + loadNewtonMetres;
        double root = Math.sqrt(torque * torque + 4 * linearFriction * watts);
        return (root - torque) / (2 * linearFriction) * RPM_PER_RADIAN_PER_SECOND;
    }

    /**
     * How many rpm a watt more of steady power gives: dw = dP / (T0 + TL + 2 b w), the derivative of
     * {@link #rpmHeldBy}.
     */
    public double rpmPerWatt(double speedRpm, double loadNewtonMetres) {
        return RPM_PER_RADIAN_PER_SECOND / steepness(speedRpm, loadNewtonMetres);
    }

    /**
     * How fast the speed comes to rest at a steady power. J dw/dt = P/w - T0 - TL - b w, linearised at the rest, decays
     * with the time constant J w / (T0 + TL + 2 b w).
     */
    public double settlingSeconds(double speedRpm, double loadNewtonMetres) {
        return inertia * speedRpm / RPM_PER_RADIAN_PER_SECOND / steepness(speedRpm, loadNewtonMetres);
    }

    private double steepness(double speedRpm, double loadNewtonMetres) {
        return constantFriction + loadNewtonMetres + 2 * linearFriction * speedRpm / RPM_PER_RADIAN_PER_SECOND;
    }

    private static void requirePositive(String what, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(what + " of " + value);
        }
    }
}
