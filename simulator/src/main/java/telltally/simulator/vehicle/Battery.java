package telltally.simulator.vehicle;

/**
 * The battery as the wiring meets it: a voltage behind a resistance, so that a tired one sags when coils are switched on.
 *
 * @param volts at rest, or what the charging system holds while the engine runs
 * @param internalOhms of the battery and its posts
 * @param disconnectedSinceDrive whether it was off since the vehicle was last driven: nothing stored, nothing learned
 */
public record Battery(double volts, double internalOhms, boolean disconnectedSinceDrive) {
    /** Beyond a jump start by two batteries in a row nothing of a 12 V vehicle lives on. */
    private static final double MOST_VOLTS = 32;

    public Battery {
        if (!(volts >= 0 && volts <= MOST_VOLTS)) {
            throw new IllegalArgumentException("a battery of " + volts + " V");
        }
        Circuit.requireOhms(internalOhms);
    }

    /** Charged and at rest: 12.6 V, common practice, no source; the resistance is typical, from memory. */
    public static Battery charged() {
        return new Battery(12.6, 0.01, false);
    }

    public Battery withVolts(double changed) {
        return new Battery(changed, internalOhms, disconnectedSinceDrive);
    }

    public Battery disconnected() {
        return new Battery(volts, internalOhms, true);
    }
}
