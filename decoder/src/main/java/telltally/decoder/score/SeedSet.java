package telltally.decoder.score;

import java.util.List;
import telltally.simulator.channel.ChannelRecipe;

/**
 * A named family of random cases that every decoder is held to.
 *
 * @param why what is hard about it, and for whom it matters
 * @param channel what spoils the recordings on their way to the observer
 * @param noted seeds of which somebody wants to be sure, within the range or not
 * @param lowered every time that a floor was lowered, and why
 */
public record SeedSet(
        String id,
        String why,
        SeedSource source,
        ChannelRecipe channel,
        SeedRange seeds,
        List<NotedSeed> noted,
        Digests digests,
        Floors floors,
        List<LoweredFloor> lowered) {
    public SeedSet {
        noted = List.copyOf(noted);
        lowered = List.copyOf(lowered);
    }

    /** Seeds one after the other. */
    public record SeedRange(long from, int count) {
        public SeedRange {
            if (count < 1 || from > Long.MAX_VALUE - count) {
                throw new IllegalArgumentException("no range: " + count + " seeds from " + from);
            }
        }

        boolean holds(long seed) {
            return seed >= from && seed < from + count;
        }
    }

    public record NotedSeed(long seed, String why) {}

    /**
     * What the generated cases must come out as.
     *
     * @param per how many seeds go into one digest
     * @param sha256 64 hexadecimal digits for each of {@link #blocks}
     */
    public record Digests(int per, List<String> sha256) {
        public Digests {
            sha256 = List.copyOf(sha256);
        }
    }

    /** Every seed of the set exactly once. */
    public List<SeedBlock> blocks() {
        return SeedBlock.cut(seeds, noted, digests.per());
    }
}
