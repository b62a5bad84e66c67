package telltally.decoder.card;

import java.util.Comparator;
import java.util.Optional;
import telltally.decoder.score.Outcome.Failure;

/**
 * A case that was read wrong, named so that it can be made again.
 *
 * @param index of the case in its set, from 0
 * @param origin the lesson that was played, or "random message"
 * @param errors codes that are wrong, lost or invented, and lists that are not right
 * @param sent the codes by segment, such as {@code present 34 42, stored 11}
 * @param read likewise, what the decoder said
 * @param failure how it failed to answer, where it did
 */
public record WorstCase(
        int index,
        long seed,
        String origin,
        String format,
        long errors,
        String sent,
        String read,
        Optional<Failure> failure) {
    /** The worst one first; of equals, the first of the set. */
    public static final Comparator<WorstCase> WORST_FIRST = Comparator.comparing(
                    WorstCase::failure, Comparator.comparing(Optional::isEmpty))
            .thenComparing(Comparator.comparingLong(WorstCase::errors).reversed())
            .thenComparingInt(WorstCase::index);
}
