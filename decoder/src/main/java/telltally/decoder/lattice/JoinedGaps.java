package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;

/** Gaps by number: those of single steps, and what two of them make together with the flash between that was not seen. */
final class JoinedGaps {
    /** What joins to no gap: a part of one that was cut by the brink of the recording. */
    static final int NONE = -2;

    private static final int UNKNOWN = -1;

    private final Light[] lights;
    private final int plain;
    private final List<Gap> gaps;
    private final Map<Gap, Integer> numbers = new HashMap<>();
    /** By gap, light unseen and gap of a step: the number of all three in a row. */
    private int[] joined = {};

    /** @param plain those of single steps; they keep their numbers */
    JoinedGaps(List<Gap> plain, Light[] lights) {
        this.lights = lights;
        this.plain = plain.size();
        gaps = new ArrayList<>(plain);
        for (int i = 0; i < this.plain; i++) {
            numbers.put(plain.get(i), i);
        }
    }

    Gap get(int number) {
        return gaps.get(number);
    }

    /** How many there are so far. */
    int count() {
        return gaps.size();
    }

    /**
     * The number of the gap that two make, or {@link #NONE}.
     *
     * @param after the gap of a single step
     */
    int join(int before, int light, int after) {
        int at = (before * lights.length + light) * plain + after;
        if (at >= joined.length) {
            int known = joined.length;
            joined = Arrays.copyOf(joined, Math.max(2 * known, (before + 1) * lights.length * plain));
            Arrays.fill(joined, known, joined.length, UNKNOWN);
        }
        if (joined[at] == UNKNOWN) {
            joined[at] = number(before, lights[light], after);
        }
        return joined[at];
    }

    private int number(int before, Light unseen, int after) {
        Gap one = gaps.get(before);
        Gap two = gaps.get(after);
        if (one.kind() == GapKind.FIXED && two.kind() == GapKind.FIXED) {
            double light = unseen.seconds();
            return number(new Gap(
                    GapKind.FIXED,
                    one.seconds() + light + two.seconds(),
                    one.squares() + light * light + two.squares(),
                    0,
                    0));
        }
        if (one.kind() == GapKind.LEAD_CUT || two.kind() == GapKind.TAIL_CUT) {
            return NONE;
        }
        // Beside a gap of any length the unseen flash adds nothing that could be told.
        return one.kind() == GapKind.FIXED || two.kind() == GapKind.TAIL ? after : before;
    }

    private int number(Gap one) {
        Integer known = numbers.putIfAbsent(one, gaps.size());
        if (known != null) {
            return known;
        }
        gaps.add(one);
        return gaps.size() - 1;
    }
}
