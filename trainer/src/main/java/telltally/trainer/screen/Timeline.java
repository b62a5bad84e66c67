package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.SentGroup;

/**
 * What was sent, group by group, with the learner's answer under it. Values to be drawn.
 *
 * @param pieces in the order sent
 */
public record Timeline(List<Piece> pieces) {
    public Timeline {
        pieces = List.copyOf(pieces);
    }

    /** What a light was to the learner. */
    public enum Look {
        SEEN,
        /** Sent, but not seen. */
        MISSED,
        /** Seen, but never sent. */
        GHOST
    }

    /** A light, from the start of the drill. */
    public record Bar(Look look, long startNanos, long endNanos) {}

    /**
     * One digit of a code.
     *
     * @param written empty where nothing was written for it
     */
    public record Digit(String sent, String written, boolean right, long startNanos, long endNanos) {}

    /** A dark between two groups, and what is said about it. */
    public record Pause(long lengthNanos, String told) {}

    /** How the answer stands to a group. */
    public enum Verdict {
        RIGHT,
        WRONG,
        /** Nothing was to be written for it. */
        NONE
    }

    /**
     * A group of flashes.
     *
     * @param name what it is
     * @param before the dark since the group before it; empty where it is the first, or was never sent
     * @param taps the learner's own, near it
     * @param digits empty where nothing is to be counted
     * @param written the whole of what was written for it; empty where nothing was
     * @param group to be shown again; empty where nothing whole was sent
     * @param spoken all of it for somebody who hears it
     */
    public record Piece(
            String name,
            Verdict verdict,
            Optional<Pause> before,
            long startNanos,
            long endNanos,
            List<Bar> bars,
            List<Bar> taps,
            List<Digit> digits,
            String written,
            Optional<SentGroup> group,
            String spoken) {
        public Piece {
            bars = List.copyOf(bars);
            taps = List.copyOf(taps);
            digits = List.copyOf(digits);
        }
    }

    /** The longest of all pieces, so that they can be drawn to one scale. */
    public long longestNanos() {
        return pieces.stream()
                .mapToLong(piece -> piece.endNanos() - piece.startNanos())
                .max()
                .orElse(1);
    }
}
