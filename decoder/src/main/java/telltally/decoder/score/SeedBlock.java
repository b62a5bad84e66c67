package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import telltally.decoder.score.SeedSet.NotedSeed;
import telltally.decoder.score.SeedSet.SeedRange;

/**
 * The seeds that one digest is made of.
 *
 * @param number counted from 1
 */
public record SeedBlock(int number, List<Long> seeds) {
    public SeedBlock {
        seeds = List.copyOf(seeds);
    }

    /** The range in blocks of a size, the last one perhaps shorter; then noted seeds outside it, in one block. */
    static List<SeedBlock> cut(SeedRange range, List<NotedSeed> noted, int per) {
        List<SeedBlock> blocks = new ArrayList<>();
        for (int done = 0; done < range.count(); done += per) {
            long from = range.from() + done;
            int size = Math.min(per, range.count() - done);
            List<Long> seeds = LongStream.range(from, from + size).boxed().toList();
            blocks.add(new SeedBlock(blocks.size() + 1, seeds));
        }
        List<Long> others = noted.stream()
                .map(NotedSeed::seed)
                .filter(seed -> !range.holds(seed))
                .toList();
        if (!others.isEmpty()) {
            blocks.add(new SeedBlock(blocks.size() + 1, others));
        }
        return blocks;
    }

    /** Such as {@code block 3, seeds 100 to 149}. */
    @Override
    public String toString() {
        return "block " + number + ", seeds " + seeds.get(0) + " to " + seeds.get(seeds.size() - 1);
    }
}
