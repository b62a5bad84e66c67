package telltally.decoder.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.simulator.Simulation;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.TruthJson;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.trace.EdgeCsv;

/**
 * Looks for messages that a built-in decoder misreads through noise that it ought to see through, makes each as simple
 * as it stays misread, writes it as a frozen recording with its truth, and prints its entry for {@code recordings} of a
 * seed set. One for each pair of formats, sent and read.
 *
 * <pre>mvn -q -Pprogram -pl decoder -am process-test-classes \
 *   -Dprogram=telltally.decoder.score.FailureHunt -Dprogram.args="plain 20000 1 FOLDER"</pre>
 */
final class FailureHunt {
    /** Each simpler case is given this many tries of noise to be misread. */
    private static final int TRIES = 40;

    /** A train that stays misread with its edges on these marks is written so. */
    private static final List<Long> MARKS_NANOS = List.of(10_000_000L, 1_000_000L, 1_000L, 1L);

    private final Decoder decoder;
    private final Path folder;
    private final List<FlashFormat> formats = FormatCatalog.shipped().all();
    private final Set<String> signatures = new HashSet<>();
    private final Set<String> written = new HashSet<>();

    private FailureHunt(Decoder decoder, Path folder) {
        this.decoder = decoder;
        this.folder = folder;
    }

    /** @param args plain or lattice, how many messages, the first seed, and the folder to write to */
    public static void main(String[] args) throws IOException {
        Decoder decoder = args[0].equals("lattice") ? new LatticeDecoder() : new PlainDecoder();
        FailureHunt hunt = new FailureHunt(decoder, Path.of(args[3]));
        long first = Long.parseLong(args[2]);
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            hunt.look(seed);
        }
        System.out.println(args[1] + " messages from " + first + ": " + hunt.signatures.size() + " kinds misread, "
                + hunt.written.size() + " of them written");
    }

    private void look(long seed) throws IOException {
        HuntCase found = HuntCase.drawnFrom(Chance.of(seed).stream("hunt"), formats);
        if (isMisread(found) && signatures.add(signature(found))) {
            HuntCase simplest = simplest(found);
            if (written.add(simplest.format().id() + simplest.message())) {
                write(simplest, seed);
            }
        }
    }

    private boolean isMisread(HuntCase each) {
        return isMisread(each, each.train());
    }

    private boolean isMisread(HuntCase each, PulseTrain train) {
        return !Score.of(each.truth(), decoder.decode(train, formats)).perfect();
    }

    private String signature(HuntCase each) {
        return each.format().id() + " as " + readAs(decoder.decode(each.train(), formats));
    }

    private static String readAs(Reading reading) {
        return reading.format().map(FormatEstimate::id).orElse("nothing");
    }

    private HuntCase simplest(HuntCase found) {
        HuntCase simplest = found;
        Optional<HuntCase> simpler = Optional.of(found);
        while (simpler.isPresent()) {
            simplest = simpler.get();
            simpler = simplest.simpler().flatMap(each -> misread(each).stream()).findFirst();
        }
        return simplest;
    }

    private Optional<HuntCase> misread(HuntCase simpler) {
        int tries = simpler.noises().isEmpty() ? 1 : TRIES;
        return LongStream.range(0, tries)
                .mapToObj(simpler::withNoiseSeed)
                .filter(this::isMisread)
                .findFirst();
    }

    private void write(HuntCase found, long seed) throws IOException {
        PulseTrain train = found.train();
        for (long mark : MARKS_NANOS) {
            Optional<PulseTrain> marked = marked(found.train(), mark).filter(each -> isMisread(found, each));
            if (marked.isPresent()) {
                train = marked.get();
                break;
            }
        }
        String name = decoder.id() + "-" + seed;
        Recording recording = new Recording(name, seed, Simulation.GENERATOR_VERSION, train, train, found.truth());
        Files.writeString(folder.resolve(name + ".csv"), EdgeCsv.text(train));
        Files.writeString(folder.resolve(name + ".truth.json"), TruthJson.text(recording));
        Reading read = decoder.decode(train, formats);
        System.out.println("    {\"edges\": \"" + name + ".csv\", \"truth\": \"" + name + ".truth.json\", \"why\": \""
                + found + "; " + decoder.id() + " read " + HuntCase.words(read.codes()) + " as " + readAs(read)
                + "\"},");
    }

    /** Every edge on the nearest mark; empty where two would fall together. */
    private static Optional<PulseTrain> marked(PulseTrain train, long mark) {
        long[] edges = new long[train.edgeCount()];
        long before = 0;
        for (int i = 0; i < edges.length; i++) {
            edges[i] = (train.edgeNanos(i) + mark / 2) / mark * mark;
            if (edges[i] <= before) {
                return Optional.empty();
            }
            before = edges[i];
        }
        long end = (train.endNanos() + mark / 2) / mark * mark;
        return end <= before ? Optional.empty() : Optional.of(PulseTrain.of(train.litAtStart(), end, edges));
    }
}
