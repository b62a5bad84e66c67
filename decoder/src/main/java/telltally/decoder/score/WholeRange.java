package telltally.decoder.score;

import telltally.simulator.chance.Chance;

/** Whole numbers from one to another, both of them among them. */
public record WholeRange(int from, int to) {
    public WholeRange {
        if (to < from) {
            throw new IllegalArgumentException("nothing lies from " + from + " to " + to);
        }
    }

    /** Every one equally likely. */
    int drawnFrom(Chance chance) {
        return from + chance.below(to - from + 1);
    }
}
