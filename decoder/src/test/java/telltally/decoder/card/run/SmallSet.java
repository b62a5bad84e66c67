package telltally.decoder.card.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.score.CaseDigest;
import telltally.decoder.score.DecoderFloors;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSet.Digests;
import telltally.decoder.score.SeedSet.SeedRange;
import telltally.decoder.score.SeedSource;
import telltally.decoder.score.SeedSource.Frozen;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Seed sets of a few frozen recordings: of the seed n, n flashes that stand for the code n. */
final class SmallSet {
    static final FlashFormat FORMAT = FormatCatalog.shipped().all().get(0);

    private SmallSet() {}

    /** In blocks of two, with the digests of what can be made. The last seeds cannot. */
    static SeedSet of(String id, int recordings, int unmakable) {
        List<Line> lines = List.of(Line.values());
        SeedSet bare = of(id, recordings, unmakable, lines, new Digests(2, List.of()));
        List<String> sums =
                bare.blocks().stream().map(block -> digest(bare, block.seeds())).toList();
        return of(id, recordings, unmakable, lines, new Digests(2, sums));
    }

    /** Of all cases that can be made. */
    static String digest(SeedSet set, List<Long> seeds) {
        CaseDigest digest = new CaseDigest();
        int made = ((SeedSource.Recordings) set.source()).frozen().size();
        seeds.stream()
                .filter(seed -> seed <= made)
                .forEach(seed -> new SeedCases(set).of(seed).forEach(digest::add));
        return digest.hex();
    }

    static SeedSet of(String id, int recordings, int unmakable, List<Line> lines, Digests digests) {
        return new SeedSet(
                id,
                "small",
                Optional.empty(),
                lines,
                new SeedSource.Recordings(IntStream.rangeClosed(1, recordings)
                        .mapToObj(SmallSet::frozen)
                        .toList()),
                new ChannelRecipe(List.of()),
                new SeedRange(1, recordings + unmakable),
                List.of(),
                digests,
                new DecoderFloors(Map.of()),
                List.of());
    }

    private static Frozen frozen(int seed) {
        return new Frozen("recording " + seed, train(seed), Optional.of(FORMAT), truth(seed), "");
    }

    static PulseTrain train(int seed) {
        PulseTrain.Builder pulses = PulseTrain.builder().dark(1_000_000_000);
        for (int i = 0; i < seed; i++) {
            pulses.lit(500_000_000).dark(500_000_000);
        }
        return pulses.build();
    }

    static Truth truth(int seed) {
        return truth(Map.of(Segment.CODES, List.of(String.valueOf(seed))));
    }

    static Truth truth(Map<Segment, List<String>> codes) {
        List<SentGroup.SentSign> signs = List.of(new SentGroup.SentSign("1", List.of(new Interval(true, 1, 2))));
        return new Truth(FORMAT.id(), codes, List.of(new SentGroup(GroupKind.CODE, Segment.CODES, "1", signs)));
    }

    /** What a decoder says that counts the flashes. */
    static Reading counted(PulseTrain train) {
        long flashes = train.intervals().stream().filter(Interval::lit).count();
        return new Reading(
                Optional.of(new FormatEstimate(FORMAT.id(), 1, 1)),
                Map.of(Segment.CODES, List.of(String.valueOf(flashes))),
                List.of(),
                List.of());
    }
}
