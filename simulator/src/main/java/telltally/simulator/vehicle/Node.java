package telltally.simulator.vehicle;

/** A point of the wiring that a meter's probe can touch, or that only the controller sees. */
public record Node(String name) {
    /** The battery's negative post, and with it the body. All volts count from here. */
    public static final Node GROUND = new Node("battery:negative");

    public static final Node BATTERY_POSITIVE = new Node("battery:positive");

    /** Where the controller's own supply arrives inside it. */
    public static final Node CONTROLLER_SUPPLY = new Node("controller:supply rail");

    /** The rail, inside the controller, that feeds its sensors. */
    public static final Node REFERENCE = new Node("controller:reference rail");
}
