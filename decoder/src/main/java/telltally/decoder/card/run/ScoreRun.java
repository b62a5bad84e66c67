package telltally.decoder.card.run;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.RightCases;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.SeedSet;
import telltally.simulator.Simulation;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.format.FormatCatalog;

/**
 * Runs a decoder over seed sets. Workers take block after block; what a block adds to the card is added at once and the
 * block forgotten, so that memory does not grow with the sweep. Counts add up in any order, so the card does not tell how
 * many workers there were.
 */
public final class ScoreRun {
    private final RunOrder order;
    private final Entrant entrant;
    private final Progress progress;
    private final boolean told;
    private final FormatCatalog formats = FormatCatalog.shipped();
    private final List<Task> tasks = new ArrayList<>();
    private final List<SetCard> cards = new ArrayList<>();
    private final ReadingTimes times = new ReadingTimes();
    private final AtomicInteger next = new AtomicInteger();
    private final long sessions;
    private long done;

    /** Is told how far a run has come, from any thread, one at a time. */
    public interface Progress {
        /** What nobody watches. */
        Progress NONE = (done, all) -> {};

        void sessions(long done, long all);

        /** The decoder failed all sessions that were tried beforehand, and is not asked for any more. */
        default void givenUp(String decoder, Outcome.Failed why) {}
    }

    /** What came of a run; the times are not part of the card. */
    public record Result(ScoreCard card, ReadingTimes times) {}

    /** @param set its index among the sets */
    private record Task(int set, Block block) {}

    private ScoreRun(RunOrder order, Entrant entrant, Progress progress) {
        this.order = order;
        this.told = order.toldFormat() || entrant.traits().wantsFormat();
        this.progress = progress;
        Optional<Outcome.Failed> failure = new Trial(order, told, formats).failureOf(entrant);
        failure.ifPresent(why -> progress.givenUp(entrant.id(), why));
        this.entrant = failure.<Entrant>map(why -> new GivenUp(entrant, why)).orElse(entrant);
        long blocks = 0;
        long cases = 0; // on every line that is listened to
        for (SeedSet set : order.sets()) {
            SeedSet run = order.extent().of(set);
            List<Block> all = Block.cut(set, run);
            long lines = lines(set).count();
            for (Block block : all) {
                if (order.part().holds(blocks++)) {
                    tasks.add(new Task(cards.size(), block));
                    cases += block.cases() * lines;
                }
            }
            cards.add(empty(set, run, all.stream().mapToInt(Block::cases).sum()));
        }
        this.sessions = cases;
    }

    /**
     * @param arguments what a later run of the same kind is started with
     * @throws IllegalStateException if Telltally itself fails; nothing that a decoder or a seed set does has that effect
     */
    public static Result of(RunOrder order, Entrant entrant, List<String> arguments, Progress progress) {
        ScoreRun run = new ScoreRun(order, entrant, progress);
        run.work();
        ScoreCard card =
                new ScoreCard(entrant.id(), Simulation.GENERATOR_VERSION, arguments, run.told, order.part(), run.cards);
        return new Result(card, run.times);
    }

    private void work() {
        ExecutorService workers = Executors.newFixedThreadPool(order.threads());
        try {
            List<Callable<Void>> same = new ArrayList<>();
            for (int i = 0; i < order.threads(); i++) {
                same.add(this::workUntilAllIsDone);
            }
            for (Future<Void> each : workers.invokeAll(same)) {
                each.get();
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a worker failed: " + e.getCause(), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } finally {
            workers.shutdownNow();
        }
    }

    private Void workUntilAllIsDone() {
        try (Worker worker = new Worker(order, entrant, told, formats)) {
            for (int i = next.getAndIncrement(); i < tasks.size(); i = next.getAndIncrement()) {
                Task task = tasks.get(i);
                add(task, worker.card(task.block(), soFar(task.set())));
            }
            synchronized (this) {
                times.add(worker.times());
            }
        } catch (RuntimeException | Error e) {
            next.set(tasks.size()); // the others need not go on
            throw e;
        }
        return null;
    }

    private synchronized SetCard soFar(int set) {
        return cards.get(set);
    }

    private synchronized void add(Task task, SetCard card) {
        cards.set(task.set(), cards.get(task.set()).plus(card));
        done += (long) task.block().cases() * card.lines().size();
        progress.sessions(done, sessions);
    }

    private Stream<Line> lines(SeedSet set) {
        return order.lines().stream().filter(set.lines()::contains);
    }

    private SetCard empty(SeedSet set, SeedSet run, int cases) {
        SetCard.Title title = new SetCard.Title(
                set.id(),
                set.why(),
                set.curve(),
                set.channel().steps().stream().map(ChannelRecipe.Step::kind).toList(),
                set.seeds().from(),
                run.seeds().count(),
                cases,
                fingerprint(set));
        List<LineCard> lines = lines(set)
                .map(line -> new LineCard(line, List.of(), new RightCases(cases, new BitSet()), List.of()))
                .toList();
        return new SetCard(title, run.floors().of(entrant.id()), List.of(), lines);
    }

    private static String fingerprint(SeedSet set) {
        try {
            MessageDigest all = MessageDigest.getInstance("SHA-256");
            String sums = String.join("\n", set.digests().sha256());
            return HexFormat.of().formatHex(all.digest(sums.getBytes(StandardCharsets.US_ASCII)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
