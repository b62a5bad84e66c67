package telltally.simulator.channel;

/** A supply voltage over time. */
public sealed interface Supply permits RippledSupply, StartingDip, SteadySupply {
    /** @param atNanos from the start of the recording */
    double voltsAt(long atNanos);
}
