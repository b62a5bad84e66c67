package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** One recording read in one format. */
final class FormatTrial {
    final FormatModel model;
    final Flashes flashes;
    Channel channel = Channel.firstGuess(1);
    GroupFinder finder;
    final List<Region> regions = new ArrayList<>();
    double logEvidence = Double.NEGATIVE_INFINITY;

    FormatTrial(FormatModel model, Flashes flashes, CoarseClock.Fit[] clocks) {
        this.model = model;
        this.flashes = flashes;
        Automaton automaton = model.grammar.automaton;
        Pass best = attempt(automaton, clocks[0].scale());
        for (int i = 1; i < clocks.length; i++) {
            double before = logEvidence;
            Channel known = channel;
            Pass other = attempt(automaton, clocks[i].scale());
            if (logEvidence > before) {
                best = other;
            } else {
                logEvidence = before;
                channel = known;
            }
        }
        finder = new GroupFinder(model, best);
        finder.find();
        regions();
    }

    /** Runs from a first guess, fits the channel to what was found, and runs again. */
    private Pass attempt(Automaton automaton, double scale) {
        channel = Channel.firstGuess(scale);
        Pass pass = Pass.run(automaton, flashes, channel);
        for (int i = 0; i < 2; i++) {
            channel = ChannelFit.fitted(pass, automaton, flashes, channel);
            pass = Pass.run(automaton, flashes, channel);
        }
        logEvidence = pass.logSum() + prior(channel);
        return pass;
    }

    /** Clocks near nominal are usual, far ones are not. */
    private static double prior(Channel channel) {
        double off = Math.abs(StrictMath.log(channel.scale()));
        double near = off / 0.025;
        double far = Math.max(0, off - 0.23) / 0.06;
        double density = 1.3 * StrictMath.exp(-far * far / 2) + 6 * StrictMath.exp(-near * near / 2);
        return StrictMath.log(Math.max(density, 1e-12));
    }

    private void regions() {
        List<Found> groups = new ArrayList<>();
        boolean sessions = model.format.sessions().isPresent();
        Segment segment = sessions ? firstSegment() : Segment.CODES;
        for (Found group : finder.groups) {
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
            boolean midway = finder.startsMidway && finder.groups.indexOf(groups.get(0)) <= 1;
            ListStructure list = new ListStructure(model, groups, midway, last && finder.stopsEarly);
            logEvidence += list.logEvidence;
            regions.add(new Region(segment, groups, list));
        }
    }

    private Segment firstSegment() {
        boolean separator = has(GroupKind.SEPARATOR);
        if (separator) {
            return Segment.PRESENT;
        }
        if (has(GroupKind.CYLINDERS) || has(GroupKind.PROMPT)) {
            return Segment.RUNNING;
        }
        double around = model.format.sessions().orElseThrow().aroundSeparatorNanos() * 1e-9 * channel.scale();
        if (flashes.tailSeconds < 1.25 * around) {
            return finder.startsMidway ? Segment.STORED : Segment.PRESENT;
        }
        return flashes.leadSeconds > 1.3 * around ? Segment.RUNNING : Segment.STORED;
    }

    void settle() {
        boolean cut = finder.startsMidway || finder.stopsEarly;
        regions.forEach(region -> region.settle(model, flashes, channel, finder.groups, cut));
    }

    boolean has(GroupKind kind) {
        return finder.groups.stream().anyMatch(group -> group.kind == kind);
    }

    double unexplainedShare() {
        return (double) finder.unexplained / Math.max(1, flashes.count);
    }
}
