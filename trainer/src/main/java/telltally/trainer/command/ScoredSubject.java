package telltally.trainer.command;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import telltally.decoder.outside.Limits;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedLibrary;
import telltally.decoder.score.SeedLibrary.SeedFile;
import telltally.decoder.score.SeedSet;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** What is scored: which decoder, on which seed sets, where it listens. */
final class ScoredSubject {
    private static final String USUAL = "lattice";
    private static final double LEAST_PATIENCE_S = 0.1;
    private static final int MOST_PATIENCE_S = 3600;

    @Option(names = "--decoder", paramLabel = "ID", description = "plain, lattice (default), or one of your own.")
    private @Nullable String decoder;

    @Option(
            names = "--run",
            paramLabel = "\"COMMAND\"",
            description = "A decoder in any language: started and asked by the line protocol of DEVELOPERS.md.")
    private @Nullable String run;

    @Option(
            names = "--patience",
            paramLabel = "SECONDS",
            description = "How long the program of --run may take to start and for each answer (default: 10).")
    private @Nullable Double patience;

    @Option(
            names = "--seeds",
            paramLabel = "FILE-OR-DIR",
            description = "Seed sets; more than once for several places (default: those that ship).")
    private List<Path> seeds = List.of();

    @Option(names = "--set", paramLabel = "ID", split = ",", description = "Only these of the sets.")
    private List<String> sets = List.of();

    @Option(names = "--line", paramLabel = "LINE", description = "Only on the lamp, or only on the pin.")
    private @Nullable String line;

    @Option(
            names = "--told-format",
            description = "Tell the decoder each session's format; otherwise it has to find out.")
    private boolean toldFormat;

    /** @throws ProblemException if there is no such decoder, or two were named */
    Entrant entrant(Streams streams) throws ProblemException {
        String command = run;
        if (command != null && decoder != null) {
            throw new ProblemException(Problem.of("--run", "and --decoder name two decoders; expected one"));
        }
        if (command == null && patience != null) {
            throw new ProblemException(Problem.of("--patience", "is for the program of --run; there is none"));
        }
        return command == null ? ScoredDecoder.named(decoderId()) : ScoredDecoder.program(command, limits(), streams);
    }

    private Limits limits() throws ProblemException {
        if (patience == null) {
            return Limits.usual();
        }
        double seconds = patience;
        if (!(seconds >= LEAST_PATIENCE_S && seconds <= MOST_PATIENCE_S)) {
            throw new ProblemException(
                    Problem.of("--patience", "is " + patience + "; expected 0.1 to " + MOST_PATIENCE_S + " seconds"));
        }
        Duration each = Duration.ofMillis(Math.round(seconds * 1000));
        return Limits.usual().withTimes(each, each);
    }

    private String decoderId() {
        return decoder == null ? USUAL : decoder;
    }

    List<SeedSet> sets() throws ProblemException {
        List<SeedSet> all = seeds.isEmpty()
                ? SeedLibrary.shipped()
                : SeedLibrary.read(seeds).stream().map(SeedFile::set).toList();
        if (sets.isEmpty()) {
            return all;
        }
        List<SeedSet> chosen = new ArrayList<>();
        for (String id : sets) {
            chosen.add(all.stream()
                    .filter(set -> set.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new ProblemException(Problem.of(
                            "--set",
                            "nothing is called " + Problem.quoted(id) + "; expected one of "
                                    + String.join(
                                            ", ", all.stream().map(SeedSet::id).toList())))));
        }
        return chosen;
    }

    List<Line> lines() throws ProblemException {
        String wanted = line;
        if (wanted == null) {
            return List.of(Line.values());
        }
        return List.of(Arrays.stream(Line.values())
                .filter(each -> each.key().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new ProblemException(
                        Problem.of("--line", "is " + Problem.quoted(wanted) + "; expected lamp or pin"))));
    }

    /** Files and folders of seed sets; none where those that ship are meant. */
    List<Path> places() {
        return seeds;
    }

    boolean oneSet() {
        return sets.size() == 1;
    }

    boolean toldFormat() {
        return toldFormat;
    }

    /** Whether a set is scored less than whole. */
    boolean partial() {
        return line != null || toldFormat;
    }

    /** What another run needs to make one of these cases again. */
    List<String> arguments() {
        List<String> words = new ArrayList<>(run == null ? List.of("--decoder", decoderId()) : List.of("--run", run));
        if (patience != null) {
            words.addAll(List.of("--patience", patience.toString()));
        }
        seeds.forEach(place -> words.addAll(List.of("--seeds", place.toString())));
        if (toldFormat) {
            words.add("--told-format");
        }
        return words;
    }
}
