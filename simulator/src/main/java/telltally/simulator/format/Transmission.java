package telltally.simulator.format;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.signal.PulseTrain;

/**
 * A message as pulses, and what they are.
 *
 * @param lamp what a perfect lamp shows
 * @param wire the output itself: the lamp's pulses and the fast lists before them; level 1 is pulled low, lamp lit
 * @param groups every group that the lamp shows, in order
 * @param codes each code once per segment, in the order sent; a pass code is a code
 */
public record Transmission(PulseTrain lamp, PulseTrain wire, List<SentGroup> groups, Map<Segment, List<String>> codes) {
    public Transmission {
        groups = List.copyOf(groups);
        EnumMap<Segment, List<String>> copy = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> copy.put(segment, List.copyOf(list)));
        codes = Collections.unmodifiableMap(copy);
    }
}
