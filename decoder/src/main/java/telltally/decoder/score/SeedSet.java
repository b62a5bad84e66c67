package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;

/**
 * A named family of random cases that every decoder is held to.
 *
 * @param why what is hard about it, and for whom it matters
 * @param curve where it stands on a curve of accuracy against noise; empty where on none
 * @param lines where a decoder listens, and is held to the floors, each for itself
 * @param channel what spoils the recordings on their way to the observer
 * @param noted seeds of which somebody wants to be sure, within the range or not
 * @param lowered every time that a floor was lowered, and why
 */
public record SeedSet(
        String id,
        String why,
        Optional<CurvePoint> curve,
        List<Line> lines,
        SeedSource source,
        ChannelRecipe channel,
        SeedRange seeds,
        List<NotedSeed> noted,
        Digests digests,
        DecoderFloors floors,
        List<LoweredFloor> lowered) {
    public SeedSet {
        lines = List.copyOf(lines);
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

    /**
     * The formats that a decoder is told of, as it does not know which it will be: those that ship, and those that only
     * this set sends in.
     */
    public List<FlashFormat> candidates(FormatCatalog shipped) {
        List<FlashFormat> all = new ArrayList<>(shipped.all());
        all.addAll(source.formats());
        return FormatCatalog.of(all).all();
    }

    /**
     * Another number of seeds of the same family, from the same first one, without the noted seeds. It has no digests,
     * and no floors either: they hold for exactly the seeds of the file.
     */
    public SeedSet withCount(int count) {
        return new SeedSet(
                id,
                why,
                curve,
                lines,
                source,
                channel,
                new SeedRange(seeds.from(), count),
                List.of(),
                new Digests(digests.per(), List.of()),
                new DecoderFloors(Map.of()),
                List.of());
    }

    /** Every seed of the set exactly once. */
    public List<SeedBlock> blocks() {
        return SeedBlock.cut(seeds, noted, digests.per());
    }
}
