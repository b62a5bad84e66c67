package telltally.simulator.vehicle;

/** A span of volts that a controller compares with; both ends are in it. */
public record VoltageWindow(double lowVolts, double highVolts) {
    /** How a voltage must lie to the window for something to be reported. */
    public enum Comparison {
        BELOW,
        WITHIN,
        ABOVE,
        /** Below or above. */
        OUTSIDE
    }

    public VoltageWindow {
        if (!(lowVolts <= highVolts)) {
            throw new IllegalArgumentException("a window from " + lowVolts + " V up to " + highVolts + " V");
        }
    }

    public boolean holds(Comparison comparison, double volts) {
        return switch (comparison) {
            case BELOW -> volts < lowVolts;
            case WITHIN -> volts >= lowVolts && volts <= highVolts;
            case ABOVE -> volts > highVolts;
            case OUTSIDE -> volts < lowVolts || volts > highVolts;
        };
    }
}
