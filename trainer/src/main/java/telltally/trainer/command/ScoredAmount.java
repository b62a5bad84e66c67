package telltally.trainer.command;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import telltally.decoder.card.CardReader;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.run.Extent;
import telltally.decoder.card.run.RunOrder;
import telltally.decoder.score.Line;
import telltally.decoder.score.SeedSet;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** How much of it is run, and how: sessions, threads, shards, or shards put together. */
final class ScoredAmount {
    private static final Pattern SHARD = Pattern.compile("([0-9]{1,9})/([0-9]{1,9})");
    private static final int MOST_THREADS = 1024;

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

    /** @throws ProblemException if an option makes no sense */
    RunOrder order(ScoredSubject subject) throws ProblemException {
        List<SeedSet> sets = subject.sets();
        List<Line> lines = subject.lines();
        return new RunOrder(sets, extent(sets, lines), lines, subject.toldFormat(), !alone, part(), threads());
    }

    boolean merges() {
        return !merge.isEmpty();
    }

    /** Whether other sessions are run than the sets' own, or not all of them here. */
    boolean partial() {
        return sessions != null || times != null || shard != null || merges();
    }

    ScoreCard merged() throws ProblemException {
        ScoreCard sum = CardReader.read(merge.get(0));
        for (Path file : merge.subList(1, merge.size())) {
            try {
                sum = sum.plus(CardReader.read(file));
            } catch (IllegalArgumentException e) {
                throw new ProblemException(
                        Problem.of(file.toString(), "cannot be merged with those before it: " + e.getMessage()));
            }
        }
        return sum;
    }

    private Extent extent(List<SeedSet> sets, List<Line> lines) throws ProblemException {
        if (sessions != null && times != null) {
            throw new ProblemException(Problem.of("--sessions", "and --times say the same thing in two ways"));
        }
        if (sessions != null) {
            return Extent.sessions(atLeastOne("--sessions", sessions), sets, lines);
        }
        return times == null ? Extent.OWN : new Extent(atLeastOne("--times", times), 1);
    }

    private static long atLeastOne(String option, long number) throws ProblemException {
        if (number < 1 || number > Integer.MAX_VALUE) {
            throw new ProblemException(
                    Problem.of(option, "is " + number + "; expected a number from 1 to " + Integer.MAX_VALUE));
        }
        return number;
    }

    private int threads() throws ProblemException {
        Integer wanted = threads;
        if (wanted == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        if (wanted < 1 || wanted > MOST_THREADS) {
            throw new ProblemException(
                    Problem.of("--threads", "is " + wanted + "; expected a number from 1 to " + MOST_THREADS));
        }
        return wanted;
    }

    private Part part() throws ProblemException {
        String wanted = shard;
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
}
