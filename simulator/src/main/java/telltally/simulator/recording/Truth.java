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
 * @param formatId the flash format they were sent in
 * @param codes each code once per segment, in the order sent
 * @param groups every group of flashes, at the instants of sending
 */
public record Truth(String formatId, Map<Segment, List<String>> codes, List<SentGroup> groups) {
    public Truth {
        EnumMap<Segment, List<String>> copy = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> copy.put(segment, List.copyOf(list)));
        codes = Collections.unmodifiableMap(copy);
        groups = List.copyOf(groups);
    }
}
