package telltally.simulator.vehicle;

import java.util.List;
import java.util.OptionalInt;

/**
 * The answer of a cylinder balance test. It does not say why a cylinder is weak.
 *
 * @param weak their numbers, the one that does least first
 * @param dropsRpm by cylinder, as far as they were measured
 */
public record BalanceVerdict(Outcome outcome, List<Integer> weak, List<Double> dropsRpm) {
    public static final int ALL_CONTRIBUTE_FLASHES = 9;

    public enum Outcome {
        ALL_CONTRIBUTE,
        WEAK,
        /** The throttle was touched, the engine stalled, or no cylinder made a difference. */
        SPOILED
    }

    public BalanceVerdict {
        weak = List.copyOf(weak);
        dropsRpm = List.copyOf(dropsRpm);
        if (weak.isEmpty() == (outcome == Outcome.WEAK)) {
            throw new IllegalArgumentException(outcome + " with " + weak + " weak");
        }
    }

    /** What the lamp sends: one cylinder, the weakest, or nine when all contribute; nothing after a spoiled test. */
    public OptionalInt flashes() {
        return switch (outcome) {
            case ALL_CONTRIBUTE -> OptionalInt.of(ALL_CONTRIBUTE_FLASHES);
            case WEAK -> OptionalInt.of(weak.get(0));
            case SPOILED -> OptionalInt.empty();
        };
    }
}
