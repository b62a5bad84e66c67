package telltally.simulator.channel;

/** @param volts 0 to 300, the same at every instant */
public record SteadySupply(double volts) implements Supply {
    public SteadySupply {
        Bounds.check("supply volts", volts, 0, 300);
    }

    @Override
    public double voltsAt(long atNanos) {
        return volts;
    }
}
