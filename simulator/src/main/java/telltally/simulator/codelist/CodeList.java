package telltally.simulator.codelist;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.format.Segment;

/**
 * What each code of a piece of equipment means, and which condition sets it.
 *
 * @param meanings by code, in the order of the file
 * @param rules in the order of the file, which is the order in which a controller sends codes
 */
public record CodeList(String id, String title, String notes, Map<String, String> meanings, List<Rule> rules) {
    /**
     * @param condition as the controller detects it
     * @param segments those in which the code is sent for it
     */
    public record Rule(String code, String condition, List<Segment> segments) {
        public Rule {
            segments = List.copyOf(segments);
        }
    }

    public CodeList {
        meanings = Collections.unmodifiableMap(new LinkedHashMap<>(meanings));
        rules = List.copyOf(rules);
    }

    /** A list of meanings alone; no condition sets any of its codes. */
    public CodeList(String id, String title, String notes, Map<String, String> meanings) {
        this(id, title, notes, meanings, List.of());
    }

    public Optional<String> meaning(String code) {
        return Optional.ofNullable(meanings.get(code));
    }

    /** The codes that conditions set in a segment, each once, in the order of the list. */
    public List<String> codesFor(Collection<String> conditions, Segment segment) {
        if (conditions.isEmpty()) {
            return List.of();
        }
        return rules.stream()
                .filter(rule -> rule.segments().contains(segment) && conditions.contains(rule.condition()))
                .map(Rule::code)
                .distinct()
                .toList();
    }
}
