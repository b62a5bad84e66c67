package telltally.simulator.vehicle;

/** Whether the engine turns while the controller looks; what it may expect depends on it. */
public enum Phase {
    ENGINE_OFF,
    ENGINE_RUNNING
}
