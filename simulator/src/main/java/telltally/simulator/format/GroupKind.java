package telltally.simulator.format;

/** What a group of flashes is. */
public enum GroupKind {
    CODE("code"),
    /** The single flash between present and stored codes. */
    SEPARATOR("separator"),
    /** The opening of the running test: half the number of cylinders. */
    CYLINDERS("cylinders"),
    /** One flash during the running test that asks for a short press of the throttle. */
    PROMPT("prompt"),
    /** The result of the cylinder balance test. */
    BALANCE("balance"),
    /** Light that is no flash: a bulb check, a lead-in, or even blinking that says there is nothing to report. */
    STEADY("steady"),
    /** Flashes that no rule of the format explains; only readings have them. */
    UNREADABLE("unreadable");

    private final String key;

    GroupKind(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }
}
