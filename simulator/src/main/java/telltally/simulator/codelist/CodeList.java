package telltally.simulator.codelist;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What each code of a piece of equipment means.
 *
 * @param meanings by code, in the order of the file
 */
public record CodeList(String id, String title, String notes, Map<String, String> meanings) {
    public CodeList {
        meanings = Collections.unmodifiableMap(new LinkedHashMap<>(meanings));
    }

    public Optional<String> meaning(String code) {
        return Optional.ofNullable(meanings.get(code));
    }
}
