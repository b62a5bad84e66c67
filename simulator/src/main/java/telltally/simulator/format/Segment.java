package telltally.simulator.format;

/** A part of what is sent, by the time that its faults belong to. */
public enum Segment {
    /** Faults that are there now, engine off. */
    PRESENT("present"),
    /** Faults remembered from earlier. */
    STORED("stored"),
    /** Faults found with the engine running. */
    RUNNING("running"),
    /** The result of the cylinder balance test. */
    BALANCE("balance"),
    /** All codes of a format that knows no segments. */
    CODES("codes");

    private final String key;

    Segment(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }
}
