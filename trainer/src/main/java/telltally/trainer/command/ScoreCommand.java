package telltally.trainer.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.CardReader;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.report.CardHtml;
import telltally.decoder.card.report.CardText;
import telltally.decoder.card.report.ComparisonText;
import telltally.decoder.card.run.Extent;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.card.run.RunOrder;
import telltally.decoder.card.run.ScoreRun;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedLibrary;
import telltally.decoder.score.SeedLibrary.SeedFile;
import telltally.decoder.score.SeedSet;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

@Command(
        name = "score",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Scores a decoder on seed sets: what was sent is known, what is read is counted.",
            "Exit status 1 where it falls below a floor, a digest does not match, or a case cannot be run."
        })
final class ScoreCommand implements Callable<Integer> {
    private static final Pattern SHARD = Pattern.compile("([0-9]{1,9})/([0-9]{1,9})");

    private static final String USUAL = "lattice";

    private final Streams streams;

    @ArgGroup(heading = "%nWhat is scored:%n", validate = false)
    private Subject subject = new Subject();

    @ArgGroup(heading = "%nHow much of it:%n", validate = false)
    private Amount amount = new Amount();

    @ArgGroup(heading = "%nOne case instead of a score:%n", validate = false)
    private One one = new One();

    @ArgGroup(heading = "%nWhat comes of it:%n", validate = false)
    private Answers answers = new Answers();

    static final class Subject {
        @Option(names = "--decoder", paramLabel = "ID", description = "plain, lattice (default), or one of your own.")
        private @Nullable String decoder;

        @Option(
                names = "--run",
                paramLabel = "\"COMMAND\"",
                description = "A decoder in any language: started and asked by the line protocol of DEVELOPERS.md.")
        private @Nullable String run;

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
    }

    static final class Amount {
        @Option(
                names = "--sessions",
                paramLabel = "N",
                description =
                        "So many sessions in all, beyond the sets' own seeds where need be; one session is one recording on one line.")
        private @Nullable Long sessions;

        @Option(names = "--times", paramLabel = "K", description = "So many times each set's own seeds.")
        private @Nullable Integer times;

        @Option(
                names = "--alone",
                description = "Without the plain decoder and the told lattice beside it; several times as fast.")
        private boolean alone;

        @Option(
                names = "--threads",
                paramLabel = "N",
                description = "Workers (default: one for each processor). The card is the same with any number.")
        private @Nullable Integer threads;

        @Option(
                names = "--shard",
                paramLabel = "K/N",
                description = "Only the Kth of N parts, for a sweep over several machines.")
        private @Nullable String shard;

        @Option(
                names = "--merge",
                paramLabel = "FILE",
                arity = "1..*",
                description = "Instead of a run: puts the cards of shards together; the same bytes as unsharded.")
        private List<Path> merge = List.of();
    }

    static final class One {
        @Option(
                names = "--seed",
                paramLabel = "N",
                description = "Shows the case of this seed: what was sent beside what was read. Needs --set.")
        private @Nullable Long seed;

        @Option(names = "--lesson", paramLabel = "ID", description = "Which of the set's lessons, if it has several.")
        private @Nullable String lesson;

        @Option(
                names = "--out",
                paramLabel = "DIR",
                description = "Also writes the case as files: lamp, pin, truth, reading, timeline.")
        private @Nullable Path out;
    }

    static final class Answers {
        @Option(names = "--json", description = "The card as JSON instead of text.")
        private boolean json;

        @Option(names = "--save", paramLabel = "FILE", description = "Also writes the card's JSON into a file.")
        private @Nullable Path save;

        @Option(
                names = "--html",
                paramLabel = "FILE",
                description = "Also writes a page with curves and tables that opens from disk.")
        private @Nullable Path html;

        @Option(
                names = "--raise-floors",
                description = "Raises the floors in the files of --seeds to what was reached; none is lowered.")
        private boolean raiseFloors;

        @Option(
                names = "--against",
                paramLabel = "FILE",
                description = "Compares with a saved card: what got better or worse beyond chance.")
        private @Nullable Path against;
    }

    ScoreCommand(Streams streams) {
        this.streams = streams;
    }

    /** A card, and how long its sessions took where they were run just now. */
    private record Scored(ScoreCard card, Optional<ReadingTimes> times) {}

    @Override
    public Integer call() throws ProblemException {
        if (one.seed != null) {
            return show(one.seed);
        }
        if (answers.raiseFloors) {
            checkFloorsCanRise();
        }
        Optional<ScoreCard> before = Optional.empty();
        if (answers.against != null) {
            before = Optional.of(CardReader.read(answers.against));
        }
        Scored scored = amount.merge.isEmpty() ? run() : new Scored(merged(), Optional.empty());
        ScoreCard card = scored.card();
        String json = CardJson.text(card);
        Optional<Comparison> comparison = before.map(each -> Comparison.of(card, each));
        write(answers.save, json);
        if (answers.html != null) {
            write(answers.html, CardHtml.text(card, scored.times(), comparison));
        }
        streams.out().print(answers.json ? json : CardText.text(card, scored.times()));
        if (comparison.isPresent()) {
            String text = ComparisonText.text(comparison.get(), String.valueOf(answers.against));
            // JSON stays alone on its stream, so that another program can read it.
            (answers.json ? streams.err() : streams.out()).print(text);
        }
        if (answers.raiseFloors) {
            raiseFloors(card);
        }
        return card.holds() ? ExitStatus.DONE : ExitStatus.FELL_SHORT;
    }

    private int show(long seed) throws ProblemException {
        if (subject.sets.size() != 1) {
            throw new ProblemException(Problem.of("--seed", "needs exactly one --set, whose case it is"));
        }
        Entrant entrant = entrant();
        ScoreCase shown = ScoreCase.of(sets().get(0), seed, Optional.ofNullable(one.lesson));
        for (Line line : lines()) {
            Outcome outcome = shown.read(entrant, line, subject.toldFormat);
            streams.out().print(shown.text(line, entrant.id(), outcome));
            if (one.out != null) {
                shown.write(one.out, line, outcome);
            }
        }
        return ExitStatus.DONE;
    }

    private Scored run() throws ProblemException {
        Entrant entrant = entrant();
        List<SeedSet> sets = sets();
        RunOrder order =
                new RunOrder(sets, extent(sets), lines(), subject.toldFormat, !amount.alone, part(), threads());
        if (!streams.progressSeen()) {
            return scored(ScoreRun.of(order, entrant, arguments(), ScoreRun.Progress.NONE));
        }
        ScoreProgress progress = new ScoreProgress(streams, System::nanoTime);
        try {
            return scored(ScoreRun.of(order, entrant, arguments(), progress));
        } finally {
            progress.end();
        }
    }

    private Entrant entrant() throws ProblemException {
        String command = subject.run;
        if (command == null) {
            return ScoredDecoder.named(decoderId());
        }
        if (subject.decoder != null) {
            throw new ProblemException(Problem.of("--run", "and --decoder name two decoders; expected one"));
        }
        return ScoredDecoder.program(command, streams);
    }

    private String decoderId() {
        return subject.decoder == null ? USUAL : subject.decoder;
    }

    private static Scored scored(ScoreRun.Result result) {
        return new Scored(result.card(), Optional.of(result.times()));
    }

    private ScoreCard merged() throws ProblemException {
        ScoreCard sum = CardReader.read(amount.merge.get(0));
        for (Path file : amount.merge.subList(1, amount.merge.size())) {
            try {
                sum = sum.plus(CardReader.read(file));
            } catch (IllegalArgumentException e) {
                throw new ProblemException(
                        Problem.of(file.toString(), "cannot be merged with those before it: " + e.getMessage()));
            }
        }
        return sum;
    }

    private List<SeedSet> sets() throws ProblemException {
        List<SeedSet> all = subject.seeds.isEmpty()
                ? SeedLibrary.shipped()
                : SeedLibrary.read(subject.seeds).stream().map(SeedFile::set).toList();
        if (subject.sets.isEmpty()) {
            return all;
        }
        List<SeedSet> chosen = new ArrayList<>();
        for (String id : subject.sets) {
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

    private List<Line> lines() throws ProblemException {
        String wanted = subject.line;
        if (wanted == null) {
            return List.of(Line.values());
        }
        return List.of(Arrays.stream(Line.values())
                .filter(each -> each.key().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new ProblemException(
                        Problem.of("--line", "is " + Problem.quoted(wanted) + "; expected lamp or pin"))));
    }

    private Extent extent(List<SeedSet> sets) throws ProblemException {
        if (amount.sessions != null && amount.times != null) {
            throw new ProblemException(Problem.of("--sessions", "and --times say the same thing in two ways"));
        }
        if (amount.sessions != null) {
            return Extent.sessions(atLeastOne("--sessions", amount.sessions), sets, lines());
        }
        return amount.times == null ? Extent.OWN : new Extent(atLeastOne("--times", amount.times), 1);
    }

    private static long atLeastOne(String option, long number) throws ProblemException {
        if (number < 1 || number > Integer.MAX_VALUE) {
            throw new ProblemException(
                    Problem.of(option, "is " + number + "; expected a number from 1 to " + Integer.MAX_VALUE));
        }
        return number;
    }

    private int threads() throws ProblemException {
        Integer wanted = amount.threads;
        if (wanted == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        if (wanted < 1 || wanted > 1024) {
            throw new ProblemException(Problem.of("--threads", "is " + wanted + "; expected a number from 1 to 1024"));
        }
        return wanted;
    }

    private Part part() throws ProblemException {
        String wanted = amount.shard;
        if (wanted == null) {
            return Part.WHOLE;
        }
        Matcher matcher = SHARD.matcher(wanted);
        if (matcher.matches()) {
            int number = Integer.parseInt(matcher.group(1));
            int of = Integer.parseInt(matcher.group(2));
            if (number >= 1 && number <= of) {
                return new Part(of, List.of(number));
            }
        }
        throw new ProblemException(Problem.of(
                "--shard", "is " + Problem.quoted(wanted) + "; expected K/N, such as 1/4 for the first of four"));
    }

    private void raiseFloors(ScoreCard card) throws ProblemException {
        if (card.sets().stream().anyMatch(set -> !set.flaws().isEmpty())) {
            streams.error("--raise-floors: nothing rises while a digest does not match or a case cannot be run");
            return;
        }
        for (String rise : new FloorRaises(subject.seeds).raise(card)) {
            streams.error(rise);
        }
    }

    private void checkFloorsCanRise() throws ProblemException {
        boolean partial = amount.sessions != null
                || amount.times != null
                || amount.shard != null
                || subject.line != null
                || subject.toldFormat
                || !amount.merge.isEmpty();
        if (subject.seeds.isEmpty()) {
            throw new ProblemException(
                    Problem.of("--raise-floors", "needs --seeds: the files in which floors are to rise"));
        }
        if (partial) {
            throw new ProblemException(Problem.of(
                    "--raise-floors",
                    "goes with neither --sessions, --times, --shard, --line, --merge nor --told-format:"
                            + " floors stand for a set's own cases, whole"));
        }
    }

    /** What another run needs to make one of these cases again. */
    private List<String> arguments() {
        List<String> words = new ArrayList<>(
                subject.run == null ? List.of("--decoder", decoderId()) : List.of("--run", subject.run));
        subject.seeds.forEach(place -> words.addAll(List.of("--seeds", place.toString())));
        if (subject.toldFormat) {
            words.add("--told-format");
        }
        return words;
    }

    private static void write(@Nullable Path file, String text) throws ProblemException {
        if (file == null) {
            return;
        }
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new ProblemException(Problem.of(
                    file.toString(), "cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage()));
        }
    }
}
