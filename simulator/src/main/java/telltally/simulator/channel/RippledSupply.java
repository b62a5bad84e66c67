package telltally.simulator.channel;

/**
 * A supply with the ripple of a generator on it, a sine that rises from 0 at the start.
 *
 * @param peakToPeakVolts 0 to 50
 * @param hertz 0 to 1 000 000
 */
public record RippledSupply(Supply under, double peakToPeakVolts, double hertz) implements Supply {
    public RippledSupply {
        Bounds.check("ripple volts", peakToPeakVolts, 0, 50);
        Bounds.check("ripple frequency", hertz, 0, 1_000_000);
    }

    @Override
    public double voltsAt(long atNanos) {
        return under.voltsAt(atNanos) + peakToPeakVolts / 2 * StrictMath.sin(2 * Math.PI * hertz * atNanos / 1e9);
    }
}
