package telltally.decoder.card.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.SetCard.Flaw;
import telltally.decoder.card.run.LineSheet.Marks;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.score.CaseDigest;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.InProcess;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedCase;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedSet;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;

/** Does one block after the other, on one thread. */
final class Worker implements AutoCloseable {
    private static final Entrant PLAIN = new InProcess("plain", PlainDecoder::new);
    private static final Entrant LATTICE = new InProcess("lattice", LatticeDecoder::new);

    private final FormatCatalog formats;
    private final Entrant.Reader decoder;
    private final boolean told;
    private final boolean probabilities;
    private final Optional<Entrant.Reader> plain;
    private final Optional<Entrant.Reader> lattice;
    private final ReadingTimes times = new ReadingTimes();
    private Optional<Made> made = Optional.empty();

    /** The cases of the set at hand: what they share is worked out once. */
    private record Made(String setId, SeedCases cases, List<FlashFormat> candidates) {}

    Worker(RunOrder order, Entrant entrant, boolean told, FormatCatalog formats) {
        this.told = told;
        this.probabilities = entrant.traits().givesProbabilities();
        this.formats = formats;
        this.decoder = entrant.open();
        this.plain = order.beside() ? Optional.of(PLAIN.open()) : Optional.empty();
        this.lattice = order.beside() ? Optional.of(LATTICE.open()) : Optional.empty();
    }

    /**
     * What this block alone adds to its set.
     *
     * @param set the set's card, for its title, floors and lines
     */
    SetCard card(Block block, SetCard set) {
        List<FlashFormat> candidates = cases(block).candidates();
        List<LineSheet> sheets =
                set.lines().stream().map(line -> new LineSheet(line.line())).toList();
        List<Flaw> flaws = new ArrayList<>();
        CaseDigest digest = new CaseDigest();
        int index = block.firstCase();
        for (long seed : block.seeds().seeds()) {
            Optional<List<SeedCase>> cases = made(block, seed, flaws);
            for (SeedCase each : cases.orElse(List.of())) {
                digest.add(each);
                for (LineSheet sheet : sheets) {
                    sheet.add(index, each, marks(each, sheet.line(), candidates));
                }
                index++;
            }
            index = cases.isPresent() ? index : index + Extent.casesPerSeed(block.set());
        }
        if (flaws.isEmpty()) {
            checkDigest(block, digest, flaws);
        }
        int all = set.title().cases();
        return new SetCard(
                set.title(),
                set.floors(),
                flaws,
                sheets.stream().map(sheet -> sheet.card(all)).toList());
    }

    /** A case that cannot be made is a flaw of the set, not of the decoder, and must not go unnoticed. */
    private Optional<List<SeedCase>> made(Block block, long seed, List<Flaw> flaws) {
        try {
            List<SeedCase> cases = cases(block).cases().of(seed);
            int expected = Extent.casesPerSeed(block.set());
            if (cases.size() != expected) {
                throw new IllegalStateException(cases.size() + " cases instead of " + expected);
            }
            return Optional.of(cases);
        } catch (RuntimeException e) {
            flaws.add(new Flaw(block.seeds().number(), "seed " + seed + " cannot be run: " + e));
            return Optional.empty();
        }
    }

    private Made cases(Block block) {
        SeedSet set = block.set();
        if (made.isEmpty() || !made.get().setId().equals(set.id())) {
            made = Optional.of(new Made(set.id(), new SeedCases(set), set.candidates(formats)));
        }
        return made.get();
    }

    private static void checkDigest(Block block, CaseDigest digest, List<Flaw> flaws) {
        if (block.digest().isPresent() && !digest.hex().equals(block.digest().get())) {
            flaws.add(new Flaw(
                    block.seeds().number(),
                    block.seeds() + ": generated output changed: raise the generator version or undo"));
        }
    }

    private Marks marks(SeedCase given, Line line, List<FlashFormat> candidates) {
        PulseTrain train = line.train(given);
        // Where the right answer is nothing, there is no format to be told.
        List<FlashFormat> only = given.format().map(List::of).orElse(candidates);
        long before = System.nanoTime();
        Outcome outcome = decoder.read(train, told ? only : candidates);
        times.add(System.nanoTime() - before);
        return new Marks(
                Mark.of(given.truth(), outcome, probabilities),
                plain.map(each -> Mark.of(given.truth(), each.read(train, candidates), true)),
                lattice.map(each -> Mark.of(given.truth(), each.read(train, only), true)));
    }

    ReadingTimes times() {
        return times;
    }

    @Override
    public void close() {
        decoder.close();
        plain.ifPresent(Entrant.Reader::close);
        lattice.ifPresent(Entrant.Reader::close);
    }
}
