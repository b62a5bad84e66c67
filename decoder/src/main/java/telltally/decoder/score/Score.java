package telltally.decoder.score;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;

/**
 * How much of what was sent was read.
 *
 * @param lists the segments that were sent; one where none was, the right answer being nothing
 * @param listsRight those read with exactly their codes, in the order sent; a segment without codes must be read as one,
 *     unless nothing at all was sent
 * @param codes the codes that were sent, each once per segment
 * @param codesRight those read in their segment
 * @param inventedCodes codes read in a segment in which they were not sent
 */
public record Score(int lists, int listsRight, int codes, int codesRight, int inventedCodes) {
    public static final Score NOTHING = new Score(0, 0, 0, 0, 0);

    public static Score of(Truth truth, Reading reading) {
        if (truth.codes().isEmpty()) {
            return ofNothing(reading);
        }
        boolean silence = truth.groups().isEmpty();
        Map<Segment, List<String>> read = reading.codes();
        int listsRight = 0;
        int codes = 0;
        int codesRight = 0;
        int codesRead = 0;
        for (Map.Entry<Segment, List<String>> sent : truth.codes().entrySet()) {
            List<String> found = read.get(sent.getKey());
            if (found == null ? silence : found.equals(sent.getValue())) {
                listsRight++;
            }
            Set<String> both = new HashSet<>(sent.getValue());
            codes += both.size();
            both.retainAll(found == null ? Set.of() : Set.copyOf(found));
            codesRight += both.size();
        }
        for (List<String> found : read.values()) {
            codesRead += Set.copyOf(found).size();
        }
        return new Score(truth.codes().size(), listsRight, codes, codesRight, codesRead - codesRight);
    }

    /** The one list that is no list: right where the decoder says that it read none. */
    private static Score ofNothing(Reading reading) {
        int invented = 0;
        for (List<String> found : reading.codes().values()) {
            invented += Set.copyOf(found).size();
        }
        return new Score(1, reading.codes().isEmpty() ? 1 : 0, 0, 0, invented);
    }

    public Score plus(Score other) {
        return new Score(
                lists + other.lists,
                listsRight + other.listsRight,
                codes + other.codes,
                codesRight + other.codesRight,
                inventedCodes + other.inventedCodes);
    }

    /** Whether nothing is missing and nothing was invented. */
    public boolean perfect() {
        return listsRight == lists && codesRight == codes && inventedCodes == 0;
    }
}
