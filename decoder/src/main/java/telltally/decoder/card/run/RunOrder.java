package telltally.decoder.card.run;

import java.util.List;
import telltally.decoder.card.Part;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedSet;

/**
 * What is to be run.
 *
 * @param extent how many seeds of each set
 * @param lines where the decoder listens, as far as a set has it; in the order of {@link Line}
 * @param toldFormat whether the decoder gets the one format of each session, even where it could find out
 * @param beside whether the plain decoder and the lattice run over the same sessions
 * @param threads one or more; the card is the same with any number
 */
public record RunOrder(
        List<SeedSet> sets,
        Extent extent,
        List<Line> lines,
        boolean toldFormat,
        boolean beside,
        Part part,
        int threads) {
    public RunOrder {
        sets = List.copyOf(sets);
        lines = lines.stream().distinct().sorted().toList();
        if (threads < 1 || lines.isEmpty() || sets.isEmpty()) {
            throw new IllegalArgumentException("nothing to run, or nobody to do it");
        }
    }
}
