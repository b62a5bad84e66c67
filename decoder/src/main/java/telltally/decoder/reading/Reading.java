package telltally.decoder.reading;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/**
 * What a decoder made of a pulse train.
 *
 * @param format the format that it was read in; empty where nothing fits
 * @param codes each code once per segment, in the order sent, repeats merged
 * @param groups every group of flashes in order of time
 */
public record Reading(
        Optional<FormatEstimate> format, Map<Segment, List<String>> codes, List<Group> groups, List<Warning> warnings) {
    public Reading {
        EnumMap<Segment, List<String>> copy = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> copy.put(segment, List.copyOf(list)));
        codes = Collections.unmodifiableMap(copy);
        groups = List.copyOf(groups);
        warnings = List.copyOf(warnings);
    }

    /**
     * @param probability that it is this format and none of the other candidates, 0 to 1
     * @param clockScale how much slower than nominal the sender was: 1.02 is 2 % longer flashes and gaps
     */
    public record FormatEstimate(String id, double probability, double clockScale) {}

    /**
     * A group of flashes.
     *
     * @param probability that these are the digits that were sent, 0 to 1
     * @param endNanos the end of the last flash
     * @param alternatives other digits it could have been, most probable first
     */
    public record Group(
            GroupKind kind,
            Segment segment,
            String digits,
            double probability,
            long startNanos,
            long endNanos,
            List<Alternative> alternatives) {
        public Group {
            alternatives = List.copyOf(alternatives);
            if (!(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException("a probability is 0 to 1, not " + probability);
            }
        }
    }

    /** Other digits that a group could have been. */
    public record Alternative(String digits, double probability) {}

    /** Something to look at or listen to again. */
    public record Warning(long atNanos, WarningKind kind, String text) {}

    /** A reading of nothing, and why. */
    public static Reading nothing(Warning why) {
        return new Reading(Optional.empty(), Map.of(), List.of(), List.of(why));
    }

    /**
     * Whether anything was decoded: a list of codes, or a format's way of saying that there is none.
     */
    public boolean decoded() {
        return format.isPresent() && !codes.isEmpty();
    }

    /** The codes of code and balance groups by segment, each once, in the order of the groups. */
    public static Map<Segment, List<String>> merged(List<Group> groups) {
        EnumMap<Segment, Set<String>> seen = new EnumMap<>(Segment.class);
        for (Group group : groups) {
            if (group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE) {
                seen.computeIfAbsent(group.segment(), segment -> new LinkedHashSet<>())
                        .add(group.digits());
            }
        }
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        seen.forEach((segment, list) -> codes.put(segment, List.copyOf(list)));
        return codes;
    }
}
