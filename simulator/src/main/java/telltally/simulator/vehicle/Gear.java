package telltally.simulator.vehicle;

/** What the selector or lever says. */
public enum Gear {
    PARK,
    NEUTRAL,
    ENGAGED
}
