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

/**
 * Does one block after the other, on one thread. What a block adds to the card must not depend on the blocks that this
 * worker happened to do before, not even where the decoder fails: a block in which it does is read from its beginning by
 * a decoder that was opened for it, and the next one by another.
 */
final class Worker implements AutoCloseable {
    private static final Entrant PLAIN = new InProcess("plain", PlainDecoder::new);

    private final FormatCatalog formats;
    private final Entrant entrant;
    private final boolean told;
    private final boolean probabilities;
    private final Optional<Entrant.Reader> plain;
    private final Optional<LatticeDecoder> lattice;
    private final ReadingTimes times = new ReadingTimes();
    private Entrant.Reader decoder;
    private boolean opened = true;
    private Optional<Made> made = Optional.empty();

    /** The cases of the set at hand: what they share is worked out once. */
    private record Made(String setId, SeedCases cases, List<FlashFormat> candidates) {}

    /** One reading of a block, which may be thrown away. */
    private record BlockReading(SetCard card, ReadingTimes times) {
        boolean failed() {
            return card.lines().stream()
                    .anyMatch(line -> !line.decoder().failures().isEmpty());
        }
    }

    Worker(RunOrder order, Entrant entrant, boolean told, FormatCatalog formats) {
        this.told = told;
        this.probabilities = entrant.traits().givesProbabilities();
        this.formats = formats;
        this.entrant = entrant;
        this.decoder = entrant.open();
        this.plain = order.beside() ? Optional.of(PLAIN.open()) : Optional.empty();
        this.lattice = order.beside() ? Optional.of(new LatticeDecoder()) : Optional.empty();
    }

    /**
     * What this block alone adds to its set.
     *
     * @param set the set's card, for its title, floors and lines
     */
    SetCard card(Block block, SetCard set) {
        BlockReading read = read(block, set);
        if (read.failed() && !opened) {
            reopen();
            read = read(block, set);
        }
        opened = false;
        if (read.failed()) {
            reopen();
        }
        times.add(read.times());
        return read.card();
    }

    private void reopen() {
        decoder.close();
        decoder = entrant.open();
        opened = true;
    }

    private BlockReading read(Block block, SetCard set) {
        List<FlashFormat> candidates = cases(block).candidates();
        List<LineSheet> sheets =
                set.lines().stream().map(line -> new LineSheet(line.line())).toList();
        List<Flaw> flaws = new ArrayList<>();
        ReadingTimes blockTimes = new ReadingTimes();
        CaseDigest digest = new CaseDigest();
        int index = block.firstCase();
        for (long seed : block.seeds().seeds()) {
            Optional<List<SeedCase>> cases = made(block, seed, flaws);
            for (SeedCase each : cases.orElse(List.of())) {
                digest.add(each);
                for (LineSheet sheet : sheets) {
                    sheet.add(index, each, marks(each, sheet.line(), candidates, blockTimes));
                }
                index++;
            }
            index = cases.isPresent() ? index : index + Extent.casesPerSeed(block.set());
        }
        if (flaws.isEmpty()) {
            checkDigest(block, digest, flaws);
        }
        int all = set.title().cases();
        SetCard card = new SetCard(
                set.title(),
                set.floors(),
                flaws,
                sheets.stream().map(sheet -> sheet.card(all)).toList());
        return new BlockReading(card, blockTimes);
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

    private Marks marks(SeedCase given, Line line, List<FlashFormat> all, ReadingTimes blockTimes) {
        PulseTrain train = line.train(given);
        long before = System.nanoTime();
        Outcome outcome = decoder.read(train, given.candidates(all, told));
        blockTimes.add(System.nanoTime() - before);
        return new Marks(
                Mark.of(given.truth(), outcome, probabilities),
                plain.map(each -> Mark.of(given.truth(), each.read(train, all), true)),
                lattice.map(each -> Mark.of(given.truth(), told(each, given, train, all), true)));
    }

    /** What the probabilistic decoder reads that is told the format and the noise. */
    private static Outcome told(LatticeDecoder decoder, SeedCase given, PulseTrain train, List<FlashFormat> all) {
        return InProcess.outcome(
                () -> decoder.decode(train, given.candidates(all, true), ToldNoise.of(given.channel())));
    }

    ReadingTimes times() {
        return times;
    }

    @Override
    public void close() {
        decoder.close();
        plain.ifPresent(Entrant.Reader::close);
    }
}
