package telltally.simulator.channel;

import telltally.simulator.chance.Chance;

/** Settles the strengths of one impairment, each from a stream of its own, named by the strength. */
public record StrengthDraw(Chance chance) {
    public double of(String name, Strength strength) {
        return strength.drawnFrom(chance.stream(name));
    }
}
