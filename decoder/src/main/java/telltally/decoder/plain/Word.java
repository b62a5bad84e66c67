package telltally.decoder.plain;

import java.util.List;
import telltally.decoder.plain.Parse.Part;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/**
 * A group of flashes that says something together: a code, a separator, a lone count.
 *
 * @param cost of its lengths and of flashes that were not seen: how badly it fits
 */
record Word(GroupKind kind, Segment segment, String digits, double cost, List<Part> parts) {
    Word {
        parts = List.copyOf(parts);
    }

    int firstRun() {
        return parts.get(0).firstRun();
    }

    int lastRun() {
        return parts.get(parts.size() - 1).lastRun();
    }

    /** Whether it stands in a list of codes, readable or not. */
    boolean listed() {
        return kind == GroupKind.CODE || kind == GroupKind.UNREADABLE;
    }
}
