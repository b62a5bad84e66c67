package telltally.decoder.card;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import telltally.decoder.score.Outcome.Failure;

/**
 * Everything that is counted of a decoder's sessions.
 *
 * @param readAs how many sessions were taken for which format, by its id; {@link #NO_FORMAT} and {@link #NO_ANSWER} are two
 *     more
 * @param failures how many sessions got no answer, and how that came
 */
public record Tally(
        Counts counts, SortedMap<String, Long> readAs, Map<Failure, Long> failures, Calibration calibration) {
    /** The decoder found no format. In brackets: no format can be called so. */
    public static final String NO_FORMAT = "(none)";

    /** The decoder did not answer. */
    public static final String NO_ANSWER = "(no answer)";

    public static final Tally NOTHING =
            new Tally(Counts.NOTHING, new TreeMap<>(), new EnumMap<>(Failure.class), Calibration.NOTHING);

    public Tally {
        readAs = Collections.unmodifiableSortedMap(new TreeMap<>(readAs));
        EnumMap<Failure, Long> copy = new EnumMap<>(Failure.class);
        copy.putAll(failures);
        failures = Collections.unmodifiableMap(copy);
    }

    public Tally plus(Tally other) {
        TreeMap<String, Long> formats = new TreeMap<>(readAs);
        other.readAs.forEach((format, count) -> formats.merge(format, count, Long::sum));
        EnumMap<Failure, Long> kinds = new EnumMap<>(Failure.class);
        kinds.putAll(failures);
        other.failures.forEach((kind, count) -> kinds.merge(kind, count, Long::sum));
        return new Tally(counts.plus(other.counts), formats, kinds, calibration.plus(other.calibration));
    }

    public long unanswered() {
        return failures.values().stream().mapToLong(Long::longValue).sum();
    }
}
