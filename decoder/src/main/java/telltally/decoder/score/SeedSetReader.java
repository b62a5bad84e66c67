package telltally.decoder.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.decoder.score.SeedSet.Digests;
import telltally.decoder.score.SeedSet.NotedSeed;
import telltally.decoder.score.SeedSet.SeedRange;
import telltally.simulator.Simulation;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.scenario.ChannelFields;

/** Reads a seed set from its file. */
public final class SeedSetReader {
    public static final String SCHEMA = "telltally/seeds/1";

    private static final int MOST_SEEDS = 100_000;
    private static final int MOST_GENERATOR = 1_000_000;
    private static final int MOST_STRENGTH = 1_000_000;

    private final Fields file;
    private final Problems problems;
    private final NamedFiles files;
    private final boolean frozen;

    private SeedSetReader(Fields file, Path path, boolean frozen) {
        this.file = file;
        this.problems = file.problems();
        this.files = new NamedFiles(path, problems);
        this.frozen = frozen;
    }

    /**
     * @throws ProblemException with every problem of the file, and after them those of the files that it names; a
     *     generator version other than {@link Simulation#GENERATOR_VERSION} is one, digests that are too few or too
     *     many another
     */
    public static SeedSet read(Path path) throws ProblemException {
        return read(path, true);
    }

    /** Reads a set whose digests are still to be drawn: neither they nor the generator version need to be right. */
    static SeedSet readUndrawn(Path path) throws ProblemException {
        return read(path, false);
    }

    private static SeedSet read(Path path, boolean frozen) throws ProblemException {
        TextFile source = TextFile.read(path, TextFile.DOCUMENT_BYTES);
        Fields file = Fields.of(source, new Problems(source.name()));
        return new SeedSetReader(file, path, frozen).set();
    }

    private SeedSet set() throws ProblemException {
        file.schema(SCHEMA);
        String id = file.id("id");
        boolean generated = !file.has(SourceFields.RECORDINGS);
        if (generated) {
            generator();
        } else {
            tellMeaningless("generator", "curve", "lines", "channel", "seeds", "cases");
        }
        String why = file.text("why");
        Optional<CurvePoint> curve = file.optionalObject("curve").map(SeedSetReader::curve);
        List<Line> lines = generated ? lines() : List.of(Line.LAMP);
        SeedSource source = new SourceFields(file, files).read();
        ChannelRecipe channel = ChannelFields.read(generated ? file.objects("channel") : List.of());
        int before = problems.count();
        SeedRange seeds = source instanceof SeedSource.Recordings recordings
                ? new SeedRange(1, Math.max(1, recordings.frozen().size()))
                : file.object("seeds").map(this::seeds).orElse(new SeedRange(0, 1));
        List<NotedSeed> noted = generated ? noted() : List.of();
        Digests digests = file.object("digests").map(this::digests).orElse(new Digests(1, List.of()));
        if (frozen && problems.count() == before) {
            checkNumber(digests, seeds, noted);
        }
        DecoderFloors floors = file.object("floors").map(FloorFields::read).orElse(new DecoderFloors(Map.of()));
        List<LoweredFloor> lowered = new LoweredFields(floors, file).read(file.objects("lowered"));
        file.close();
        throwIfAny();
        return new SeedSet(id, why, curve, lines, source, channel, seeds, noted, digests, floors, lowered);
    }

    private void tellMeaningless(String... names) {
        file.skip(names);
        for (String name : names) {
            if (file.has(name)) {
                file.problem(name, "has no meaning here; recordings are frozen, whatever is generated today");
            }
        }
    }

    private void throwIfAny() throws ProblemException {
        List<Problem> all = new ArrayList<>(problems.all());
        all.addAll(files.inside());
        if (!all.isEmpty()) {
            throw new ProblemException(all);
        }
    }

    private static CurvePoint curve(Fields curve) {
        CurvePoint point =
                new CurvePoint(curve.id("family"), curve.number("strength", 0, MOST_STRENGTH), curve.text("unit"));
        curve.close();
        return point;
    }

    private List<Line> lines() {
        int before = problems.count();
        List<Line> found = new ArrayList<>();
        for (PlacedText named : file.optionalTexts("lines")) {
            Optional<Line> line = Stream.of(Line.values())
                    .filter(each -> each.key().equals(named.text()))
                    .findFirst();
            if (line.isEmpty() || found.contains(line.get())) {
                problems.add(
                        named.place(),
                        named.pointer(),
                        "is " + Problem.quoted(named.text()) + "; expected \"lamp\" and \"pin\", each at most once");
            }
            line.ifPresent(found::add);
        }
        if (!file.has("lines")) {
            return List.of(Line.values());
        }
        if (found.isEmpty() && problems.count() == before) {
            file.problem("lines", "is empty; at least one was expected");
        }
        return found;
    }

    private void generator() {
        int before = problems.count();
        int generator = file.whole("generator", 1, MOST_GENERATOR);
        if (frozen && generator != Simulation.GENERATOR_VERSION && problems.count() == before) {
            file.problem(
                    "generator",
                    "is " + generator + "; these recordings would be generated by version "
                            + Simulation.GENERATOR_VERSION
                            + ". Draw the digests anew, as seeds/README.md says, or use the Telltally that generates "
                            + generator);
        }
    }

    private SeedRange seeds(Fields seeds) {
        long from = seeds.wholeLong("from");
        int count = seeds.whole("count", 1, MOST_SEEDS);
        seeds.close();
        if (from > Long.MAX_VALUE - MOST_SEEDS) {
            seeds.problem("from", "is so great that the numbers end before the seeds do");
            return new SeedRange(0, 1);
        }
        return new SeedRange(from, count);
    }

    private List<NotedSeed> noted() {
        List<NotedSeed> noted = new ArrayList<>();
        for (Fields each : file.objects("cases")) {
            int before = problems.count();
            long seed = each.wholeLong("seed");
            if (noted.stream().anyMatch(other -> other.seed() == seed) && problems.count() == before) {
                each.problem("seed", "stands twice; each seed was expected once");
            }
            noted.add(new NotedSeed(seed, each.text("why")));
            each.close();
        }
        return noted;
    }

    private Digests digests(Fields fields) {
        int per = fields.whole("per", 1, MOST_SEEDS);
        List<PlacedText> sums = fields.texts("sha256");
        for (PlacedText sum : sums) {
            if (!sum.text().matches("[0-9a-f]{64}")) {
                problems.add(
                        sum.place(),
                        sum.pointer(),
                        "is " + Problem.quoted(sum.text()) + "; expected 64 small hexadecimal digits");
            }
        }
        fields.close();
        return new Digests(per, sums.stream().map(PlacedText::text).toList());
    }

    private void checkNumber(Digests digests, SeedRange seeds, List<NotedSeed> noted) {
        int found = digests.sha256().size();
        int expected = SeedBlock.cut(seeds, noted, digests.per()).size();
        if (found != expected) {
            file.problem(
                    "digests",
                    "holds " + found + " of SHA-256; expected " + expected + ", one for every " + digests.per()
                            + " of the seeds and one for all cases outside their range; seeds/README.md says how they"
                            + " are drawn");
        }
    }
}
