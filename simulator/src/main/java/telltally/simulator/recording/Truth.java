package telltally.simulator.recording;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;

/**
 * The codes that were really sent.
 *
 * @param formatId the flash format they were sent in; {@link #NO_FORMAT} where nothing was sent
 * @param codes each code once per segment, in the order sent
 * @param groups every group of flashes, at the instants of sending
 */
public record Truth(String formatId, Map<Segment, List<String>> codes, List<SentGroup> groups) {
    /** Stands for a format where nothing was sent in one. */
    public static final String NO_FORMAT = "none";

    /** The truth of a recording in which nobody sent anything. */
    public static Truth nothing() {
        return new Truth(NO_FORMAT, Map.of(), List.of());
    }

    public Truth {
        EnumMap<Segment, List<String>> copy = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> copy.put(segment, List.copyOf(list)));
        codes = Collections.unmodifiableMap(copy);
        groups = List.copyOf(groups);
    }
}
