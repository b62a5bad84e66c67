package telltally.simulator.channel;

/**
 * What a battery does while an engine is cranked: it falls to its lowest as the starter bites, comes part of the way
 * back, wavers while the engine turns, and recovers. Straight lines between, a sine on the cranking level.
 *
 * @param startNanos when the starter is switched on
 * @param restVolts before and after
 * @param fallNanos from rest to the lowest
 * @param lowestVolts at the worst
 * @param lowNanos time at the lowest
 * @param returnNanos from the lowest to the cranking level
 * @param crankingVolts mean while the engine turns
 * @param waverVolts peak to peak while the engine turns
 * @param waverHertz compressions per second
 * @param crankingNanos how long the engine is turned
 * @param recoverNanos from the cranking level to rest
 */
public record StartingDip(
        long startNanos,
        double restVolts,
        long fallNanos,
        double lowestVolts,
        long lowNanos,
        long returnNanos,
        double crankingVolts,
        double waverVolts,
        double waverHertz,
        long crankingNanos,
        long recoverNanos)
        implements Supply {
    public StartingDip {
        Bounds.checkNotNegative("start of cranking", startNanos);
        Bounds.checkPositive("the fall", fallNanos);
        Bounds.checkNotNegative("time at the lowest", lowNanos);
        Bounds.checkPositive("the return", returnNanos);
        Bounds.checkNotNegative("cranking", crankingNanos);
        Bounds.checkPositive("the recovery", recoverNanos);
        Bounds.check("rest volts", restVolts, 0, 300);
        Bounds.check("lowest volts", lowestVolts, 0, 300);
        Bounds.check("cranking volts", crankingVolts, 0, 300);
        Bounds.check("wavering volts", waverVolts, 0, 300);
        Bounds.check("wavering frequency", waverHertz, 0, 1000);
    }

    /** The starting profile for 12 V, level I, of ISO 16750-2:2003, 4.5.3, quoted at second hand. */
    public static StartingDip twelveVolts(long startNanos) {
        return new StartingDip(
                startNanos, 12, 5_000_000, 8, 15_000_000, 50_000_000, 10.5, 2, 2, 1_000_000_000, 40_000_000);
    }

    /** The starting profile for 24 V of ISO 16750-2:2003, quoted at second hand: 20 s of cranking. */
    public static StartingDip twentyFourVolts(long startNanos) {
        return new StartingDip(
                startNanos, 24, 10_000_000, 8, 50_000_000, 50_000_000, 16, 2, 2, 20_000_000_000L, 40_000_000);
    }

    @Override
    public double voltsAt(long atNanos) {
        long since = atNanos - startNanos;
        if (since < 0) {
            return restVolts;
        }
        if (since < fallNanos) {
            return between(restVolts, lowestVolts, since, fallNanos);
        }
        since -= fallNanos;
        if (since < lowNanos) {
            return lowestVolts;
        }
        since -= lowNanos;
        if (since < returnNanos) {
            return between(lowestVolts, crankingVolts, since, returnNanos);
        }
        since -= returnNanos;
        if (since < crankingNanos) {
            return crankingVolts + waverVolts / 2 * StrictMath.sin(2 * Math.PI * waverHertz * since / 1e9);
        }
        since -= crankingNanos;
        return since < recoverNanos ? between(crankingVolts, restVolts, since, recoverNanos) : restVolts;
    }

    private static double between(double from, double to, long since, long lasting) {
        return from + (to - from) * since / lasting;
    }
}
