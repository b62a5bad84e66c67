package telltally.decoder.card.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.score.SeedBlock;
import telltally.decoder.score.SeedSet;

/**
 * Seeds that one worker does in one go: as many as go into one digest.
 *
 * @param firstCase the index of its first case in the set
 * @param digest what its cases must come out as; empty for seeds beyond the set's own
 */
record Block(SeedSet set, SeedBlock seeds, int firstCase, Optional<String> digest) {
    /**
     * All blocks of a set.
     *
     * @param run the set as it is run, perhaps with more seeds
     */
    static List<Block> cut(SeedSet set, SeedSet run) {
        int each = Extent.casesPerSeed(set);
        List<SeedBlock> own = set.blocks();
        List<Block> blocks = new ArrayList<>();
        int done = 0;
        for (SeedBlock block : run.blocks()) {
            int index = block.number() - 1;
            boolean known = index < own.size() && own.get(index).seeds().equals(block.seeds());
            Optional<String> digest = known ? Optional.of(set.digests().sha256().get(index)) : Optional.empty();
            blocks.add(new Block(run, block, done, digest));
            done += block.seeds().size() * each;
        }
        return blocks;
    }

    int cases() {
        return seeds.seeds().size() * Extent.casesPerSeed(set);
    }
}
