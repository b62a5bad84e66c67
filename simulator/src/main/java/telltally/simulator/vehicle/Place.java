package telltally.simulator.vehicle;

/** Where in a circuit something is wrong. Which wires there are depends on the circuit. */
public enum Place {
    /** Inside the sensor, switch or solenoid: replacing it helps. */
    PART("part"),
    /** The wire whose volts the controller judges. */
    SIGNAL_WIRE("signal-wire"),
    REFERENCE_WIRE("reference-wire"),
    RETURN_WIRE("return-wire"),
    SUPPLY_WIRE("supply-wire");

    private final String label;

    Place(String label) {
        this.label = label;
    }

    /** As it is written in files and in names of measurements. */
    public String label() {
        return label;
    }
}
