package telltally.simulator.channel;

import telltally.simulator.chance.Chance;

/** How strong something is: one value, or a range from which each seed draws evenly. */
public record Strength(double from, double to) {
    public Strength {
        if (!(from <= to)) {
            throw new IllegalArgumentException("a range cannot reach from " + from + " to " + to);
        }
    }

    public static Strength of(double value) {
        return new Strength(value, value);
    }

    /** One value draws nothing. */
    double drawnFrom(Chance chance) {
        return from == to ? from : chance.between(from, to);
    }
}
