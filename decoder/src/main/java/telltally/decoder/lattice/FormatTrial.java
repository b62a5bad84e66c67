package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** One recording read in one format. */
final class FormatTrial {
    private static final int BEGINNING = 40;
    private static final int MOST_RUNS = 3;
    /** Logarithm of the ratio of the longest to the shortest gap that there may be. */
    private static final double ANY_GAP_LOG_RANGE = 20.7;

    final FormatModel model;
    final Flashes flashes;
    Channel channel = Channel.firstGuess(1);
    private final Flashes lookedAt;
    private final KnownNoise noise;
    final LatticeStock stock;
    private final Densities densities;
    private @Nullable Pass last;
    private @Nullable GroupFinder finder;
    final List<Region> regions = new ArrayList<>();
    double logEvidence = Double.NEGATIVE_INFINITY;

    /** A first look: the beginning of the recording only, with each of a few clocks. */
    FormatTrial(
            FormatModel model, Flashes flashes, List<CoarseClock.Fit> clocks, KnownNoise noise, LatticeStock stock) {
        this.model = model;
        this.flashes = flashes;
        this.noise = noise;
        this.stock = stock;
        this.densities = new Densities(model.grammar.automaton);
        lookedAt = flashes.count > BEGINNING ? flashes.slice(0, BEGINNING) : flashes;
        for (CoarseClock.Fit clock : noise.clockScale().isPresent() ? clocks.subList(0, 1) : clocks) {
            Channel guess = noise.in(Channel.firstGuess(clock.scale()));
            Pass pass = FreePass.run(densities, lookedAt, guess, stock.take());
            if (pass.logSum() > logEvidence) {
                logEvidence = pass.logSum();
                channel = guess;
                replace(pass);
            } else {
                stock.giveBack(pass);
            }
        }
    }

    private void replace(@Nullable Pass pass) {
        stock.giveBack(last);
        last = pass;
    }

    /** Whether the format can have sent the flashes at all; nothing more may be asked for where it can't. */
    boolean isPossible() {
        return logEvidence > Double.NEGATIVE_INFINITY;
    }

    int lookedAt() {
        return lookedAt.count;
    }

    /** Fits the channel to what was found and runs over the whole recording, again where that changes the channel. */
    void run() {
        Automaton automaton = model.grammar.automaton;
        Channel fitted = noise.in(ChannelFit.fitted(pass(), automaton, lookedAt, channel));
        int runs = 0;
        do {
            channel = fitted;
            replace(FreePass.run(densities, flashes, channel, stock.take()));
            fitted = noise.in(ChannelFit.fitted(pass(), automaton, flashes, channel));
        } while (++runs < MOST_RUNS && !fitted.nearly(channel));
        logEvidence = pass().logSum() + prior(channel);
    }

    /** What it found is not needed any more. */
    void dismiss() {
        replace(null);
    }

    /** Finds groups and lists. */
    void read() {
        GroupFinder found = new GroupFinder(model, pass());
        found.find();
        finder = found;
        replace(null);
        regions();
    }

    GroupFinder finder() {
        return Objects.requireNonNull(finder);
    }

    private Pass pass() {
        return Objects.requireNonNull(last);
    }

    /** Clocks near nominal are usual, far ones are not. */
    private static double prior(Channel channel) {
        double off = Math.abs(StrictMath.log(channel.scale()));
        double near = off / 0.025;
        double exact = off / 0.004;
        double far = Math.max(0, off - 0.223) / 0.04;
        double density = 1.3 * StrictMath.exp(-far * far / 2)
                + 5 * StrictMath.exp(-near * near / 2)
                + 20 * StrictMath.exp(-exact * exact / 2);
        return StrictMath.log(Math.max(density, 1e-12));
    }

    private void regions() {
        List<Found> groups = new ArrayList<>();
        boolean sessions = model.format.sessions().isPresent();
        Segment segment = sessions ? firstSegment() : Segment.CODES;
        for (Found group : finder().groups) {
            if (group.afterUnseenSeparator) {
                close(segment, groups, false);
                groups = new ArrayList<>();
                segment = Segment.STORED;
            }
            if (group.kind == GroupKind.CODE && !group.signs.isEmpty()) {
                groups.add(group);
            } else if (sessions && (group.kind == GroupKind.SEPARATOR)) {
                close(segment, groups, false);
                groups = new ArrayList<>();
                segment = Segment.STORED;
            }
        }
        close(segment, groups, true);
    }

    private void close(Segment segment, List<Found> groups, boolean last) {
        if (!groups.isEmpty()) {
            boolean midway = finder().startsMidway && finder().groups.indexOf(groups.get(0)) <= 1;
            ListStructure list = new ListStructure(model, groups, midway, last && finder().stopsEarly);
            logEvidence += list.logEvidence;
            regions.add(new Region(segment, groups, list));
        }
    }

    private Segment firstSegment() {
        boolean separator =
                has(GroupKind.SEPARATOR) || finder().groups.stream().anyMatch(group -> group.afterUnseenSeparator);
        if (separator) {
            return Segment.PRESENT;
        }
        if (has(GroupKind.CYLINDERS) || has(GroupKind.PROMPT)) {
            return Segment.RUNNING;
        }
        double around = model.format.sessions().orElseThrow().aroundSeparatorNanos() * 1e-9 * channel.scale();
        if (flashes.tailSeconds < 1.25 * around) {
            return finder().startsMidway ? Segment.STORED : Segment.PRESENT;
        }
        return flashes.leadSeconds > 1.3 * around ? Segment.RUNNING : Segment.STORED;
    }

    void settle() {
        boolean cut = finder().startsMidway || finder().stopsEarly;
        regions.forEach(region -> region.settle(this, cut));
    }

    boolean has(GroupKind kind) {
        return finder().groups.stream().anyMatch(group -> group.kind == kind);
    }

    /**
     * How much better the format explains the flashes than lengths of any size would, for each flash, as a logarithm:
     * the Bayes factor against a sender whose flashes and gaps are evenly likely on a logarithmic scale.
     */
    double gainAFlash() {
        double anyLengths = 0;
        for (int i = 0; i < flashes.count; i++) {
            anyLengths -= TabledLog.of(flashes.lit(i) * LightDensities.ANY_LOG_RANGE);
            if (i + 1 < flashes.count) {
                anyLengths -= TabledLog.of((flashes.start[i + 1] - flashes.end[i]) * ANY_GAP_LOG_RANGE);
            }
        }
        return (logEvidence - anyLengths) / Math.max(1, flashes.count);
    }

    double unexplainedShare() {
        return (double) finder().unexplained / Math.max(1, flashes.count);
    }
}
