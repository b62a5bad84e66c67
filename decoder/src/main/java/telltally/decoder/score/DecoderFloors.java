package telltally.decoder.score;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The floors of a seed set, by the id of the decoder that they were found with.
 *
 * @param byDecoder in the order of the file
 */
public record DecoderFloors(Map<String, Floors> byDecoder) {
    /** The simplest decoder that works: whatever has no floors of its own is held to its. */
    public static final String PLAIN = "plain";

    public DecoderFloors {
        byDecoder = Collections.unmodifiableMap(new LinkedHashMap<>(byDecoder));
    }

    /** What this decoder is held to: its own floors, or else those of the plain one; empty where there are neither. */
    public Optional<Floors> of(String decoderId) {
        return own(decoderId).or(() -> own(PLAIN));
    }

    /** The floors that stand under this decoder's own name. */
    public Optional<Floors> own(String decoderId) {
        return Optional.ofNullable(byDecoder.get(decoderId));
    }
}
