package telltally.decoder.lattice;

import java.util.Arrays;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Light;

/**
 * One automaton run over the flashes of one recording through one channel: every way of pairing flashes sent with
 * flashes seen, with missed ones in between and ghosts left out. Layer {@code i + 1} of the lattice is flash {@code i};
 * a node's tag is the flash sent; an arc's tag is the edge.
 */
final class Pass {
    private static final double BEAM = 1e-8;
    private static final double NEGLIGIBLE = 1e-9;
    private static final int MOST_GHOSTS = 3;
    /** A flash that is cut by the recording's brink and yet whole. */
    private static final double CUT_WHOLE = 1e-3;

    private static final double SMEARED = 1e-3;
    /** A ghost is shorter than this share of the shortest flash. */
    private static final double GHOST_SHARE = 0.65;

    private final Automaton automaton;
    private final Flashes flashes;
    private final Channel channel;
    private final double[] gapMean;
    private final double[] gapPerDeviation;
    private final double[] gapDensity;
    private final double[] broadLog;
    private final double[] missedPower;
    private final int[] nodeAt;
    private final double[] lightDensity;
    private final Lattice lattice;
    private int sink = -1;
    private double most;
    /** The gaps of a fixed length that reach the gap seen last. */
    private int gapsFrom;

    private int gapsTo;

    private Pass(Automaton automaton, Flashes flashes, Channel channel) {
        this.automaton = automaton;
        this.flashes = flashes;
        this.channel = channel;
        int gaps = automaton.gaps.length;
        gapMean = new double[gaps];
        gapPerDeviation = new double[gaps];
        gapDensity = new double[gaps];
        for (int i = 0; i < gaps; i++) {
            Gap gap = automaton.gaps[i];
            gapMean[i] = gap.seconds() * channel.scale() - channel.biasSeconds();
            gapPerDeviation[i] = 1 / channel.deviation(gap.squares());
        }
        broadLog = new double[gaps];
        for (int i = automaton.fixedGaps; i < gaps; i++) {
            Gap gap = automaton.gaps[i];
            broadLog[i] = gap.kind() == GapKind.BROAD ? gap.logRange() : 1;
        }
        missedPower = new double[Automaton.MOST_MISSED + 1];
        missedPower[0] = 1;
        for (int i = 1; i < missedPower.length; i++) {
            missedPower[i] = missedPower[i - 1] * channel.missed();
        }
        nodeAt = new int[automaton.nodes];
        lightDensity = new double[automaton.lights.length];
        lattice = new Lattice(flashes.count + 2);
    }

    /** Runs over all flashes, from the beginning of the recording to its end. */
    static Pass run(Automaton automaton, Flashes flashes, Channel channel) {
        Pass pass = new Pass(automaton, flashes, channel);
        pass.sweep();
        return pass;
    }

    Lattice lattice() {
        return lattice;
    }

    /** The last node, or -1 where no path explains the flashes. */
    int sink() {
        return sink;
    }

    /** Natural logarithm of the density of all paths; negative infinity where there is none. */
    double logSum() {
        return sink < 0 || lattice.forward(sink) == 0 ? Double.NEGATIVE_INFINITY : lattice.logSum(sink);
    }

    /** The arcs of the best path in order. */
    int[] bestPath() {
        int length = 0;
        for (int node = sink; lattice.bestArc(node) >= 0; node = lattice.arcFrom(lattice.bestArc(node))) {
            length++;
        }
        int[] path = new int[length];
        for (int node = sink; length > 0; node = lattice.arcFrom(path[length])) {
            path[--length] = lattice.bestArc(node);
        }
        return path;
    }

    boolean cutAtStart() {
        return flashes.cutAtStart;
    }

    /** Which flash seen a node of the lattice is; -1 for the start, the count of flashes for the end. */
    int flashOf(int latticeNode) {
        return lattice.layer(latticeNode) - 1;
    }

    private void sweep() {
        lattice.beginLayer();
        lattice.source(Automaton.START, 1);
        lattice.endLayer();
        for (int flash = 0; flash < flashes.count; flash++) {
            lattice.beginLayer();
            Arrays.fill(nodeAt, -1);
            most = 0;
            lights(flash);
            double ghosts = 1;
            for (int before = flash - 1; before >= -1 && ghosts > 0 && before >= flash - 1 - MOST_GHOSTS; before--) {
                reach(flash, before, ghosts);
                ghosts = before < 0 ? 0 : ghosts * ghost(before, flash);
            }
            lattice.endLayer();
        }
        finish();
    }

    /** How well this flash fits each light of the automaton. */
    private void lights(int flash) {
        double length = flashes.lit(flash);
        boolean cut = flash == flashes.count - 1 && flashes.cutAtEnd;
        for (int i = 0; i < lightDensity.length; i++) {
            lightDensity[i] = (1 - channel.missed()) * density(automaton.lights[i], length, cut);
        }
    }

    private double density(Light light, double length, boolean cut) {
        if (light.broad()) {
            boolean fits = length <= light.mostSeconds() && (cut || length >= light.seconds());
            return fits ? 1 / (length * 13.8) * (light.mostSeconds() < 100 ? 7 : 1) : 0;
        }
        if (light.seconds() == 0) {
            return 0;
        }
        double mean = light.seconds() * channel.scale() + channel.biasSeconds();
        double deviation = channel.deviation(light.seconds() * light.seconds());
        double z = (length - mean) / deviation;
        return cut ? Noise.beyond(z) : Noise.density(z) / deviation + smear(length, mean);
    }

    /** A pulse beside it that ran into it, or any other mishap, may change a length by up to a third. */
    private static double smear(double length, double mean) {
        return length > 0.67 * mean && length < 1.33 * mean ? SMEARED / mean : 0;
    }

    /** The weight of taking a flash for one that was not sent, in the gap that ends with another. */
    private double ghost(int flash, int next) {
        double length = flashes.lit(flash);
        double most = GHOST_SHARE * automaton.shortestLight * channel.scale();
        if (length > most) {
            return 0;
        }
        double from = flash == 0 ? flashes.start[0] - flashes.leadSeconds : flashes.end[flash - 1];
        double to = next == flashes.count ? flashes.end[flash] + flashes.tailSeconds : flashes.start[next];
        return channel.ghost() * 2 * (1 - length / most) / most / Math.max(1e-3, to - from);
    }

    private double weight(int edge) {
        return automaton.edgeWeight[edge] * missedPower[automaton.edgeMissed[edge]];
    }

    private void reach(int flash, int before, double ghosts) {
        if (before < 0) {
            lead(flash, ghosts);
            return;
        }
        gaps(flashes.start[flash] - flashes.end[before]);
        int last = lattice.lastNode(before + 1);
        for (int node = lattice.firstNode(before + 1); node < last; node++) {
            double here = lattice.forward(node);
            if (here >= BEAM) {
                int from = lattice.tag(node);
                int broad = automaton.firstBroadEdge[from];
                follow(node, here * ghosts, automaton.firstEdge[from], broad, ghosts);
                follow(node, here * ghosts, broad, automaton.firstEdge[from + 1], ghosts);
            }
        }
    }

    /** Follows edges of one node, in ascending order of their gaps, as far as those reach the gap seen. */
    private void follow(int node, double here, int firstEdge, int lastEdge, double ghosts) {
        for (int edge = firstEdge; edge < lastEdge; edge++) {
            int gap = automaton.edgeGap[edge];
            if (gap >= gapsTo && gap < automaton.fixedGaps) {
                return;
            }
            double density = gapDensity[gap];
            if (density > 0) {
                double weight = density * lightDensity[automaton.lightOf[automaton.edgeTo[edge]]] * weight(edge);
                // What falls so far behind another way into this flash can't come to matter.
                if (here * weight > most) {
                    most = Math.max(most, here * weight * NEGLIGIBLE);
                    add(node, edge, weight * ghosts);
                }
            }
        }
    }

    private void add(int node, int edge, double weight) {
        int to = automaton.edgeTo[edge];
        if (nodeAt[to] < 0) {
            nodeAt[to] = lattice.node(to);
        }
        lattice.arc(node, nodeAt[to], weight, edge);
    }

    /** Densities of one gap seen, for every gap of the automaton that lies between flashes. */
    private void gaps(double length) {
        for (int i = gapsFrom; i < gapsTo; i++) {
            gapDensity[i] = 0;
        }
        int gap = 0;
        while (gap < automaton.fixedGaps && (length - gapMean[gap]) * gapPerDeviation[gap] >= Noise.REACH) {
            gap++;
        }
        gapsFrom = gap;
        for (; gap < automaton.fixedGaps; gap++) {
            double z = (length - gapMean[gap]) * gapPerDeviation[gap];
            if (z <= -Noise.REACH) {
                break;
            }
            gapDensity[gap] = Noise.density(z) * gapPerDeviation[gap] + smear(length, gapMean[gap]);
        }
        gapsTo = gap;
        for (int i = automaton.fixedGaps; i < gapDensity.length; i++) {
            Gap broad = automaton.gaps[i];
            boolean fits = broad.kind() == GapKind.BROAD && length >= broad.seconds() && length <= broad.mostSeconds();
            gapDensity[i] = fits ? 1 / (length * broadLog[i]) : 0;
        }
    }

    private void begin(int edge, double density) {
        double weight = density * weight(edge);
        if (weight > most) {
            most = weight * NEGLIGIBLE;
            add(0, edge, weight);
        }
    }

    private void lead(int flash, double ghosts) {
        double lead = flashes.leadSeconds + flashes.start[flash] - flashes.start[0];
        boolean cut = flash == 0 && flashes.cutAtStart;
        for (int edge = automaton.firstEdge[Automaton.START]; edge < automaton.firstEdge[Automaton.START + 1]; edge++) {
            int gap = automaton.edgeGap[edge];
            int light = automaton.lightOf[automaton.edgeTo[edge]];
            if (automaton.gaps[gap].kind() == GapKind.LEAD) {
                double start = cut ? (automaton.lights[light].broad() ? 1 : CUT_WHOLE) : 1;
                begin(edge, leadDensity(lead) * start * lightDensity[light] * ghosts);
            } else if (cut) {
                double whole = (1 - channel.missed()) * density(automaton.lights[light], flashes.lit(0), true);
                begin(edge, whole);
            } else {
                double rest = Noise.beyond((lead - gapMean[gap]) * gapPerDeviation[gap]);
                begin(edge, rest * lightDensity[light] * ghosts);
            }
        }
    }

    /**
     * How likely a recording is to begin so long before the first flash. Who begins to record just before it is rarer
     * than who begins within a list.
     */
    private static double leadDensity(double seconds) {
        return seconds < 0.13 ? 0.03 : seconds < 1 ? 0.5 : 0.06;
    }

    /** How likely a recording is to end so long after the last flash. */
    private static double tailDensity(double seconds) {
        return seconds < 1 ? 0.5 : 0.06;
    }

    private void finish() {
        lattice.beginLayer();
        sink = lattice.node(Automaton.END);
        double ghosts = 1;
        int last = flashes.count - 1;
        for (int before = last; before >= 0 && ghosts > 0 && before >= last - MOST_GHOSTS; before--) {
            double tail = flashes.tailSeconds + flashes.end[last] - flashes.end[before];
            boolean cut = before == last && flashes.cutAtEnd;
            for (int node = lattice.firstNode(before + 1); node < lattice.lastNode(before + 1); node++) {
                int from = lattice.tag(node);
                for (int edge = automaton.firstEnd[from]; edge < automaton.firstEnd[from + 1]; edge++) {
                    int gap = automaton.edgeGap[edge];
                    double density;
                    if (automaton.gaps[gap].kind() == GapKind.TAIL) {
                        density = tailDensity(tail) * (cut ? CUT_WHOLE : 1);
                    } else {
                        density = cut ? 1 : Noise.beyond((tail - gapMean[gap]) * gapPerDeviation[gap]);
                    }
                    double weight = weight(edge);
                    if (density * weight * ghosts > 0) {
                        lattice.arc(node, sink, density * weight * ghosts, edge);
                    }
                }
            }
            ghosts *= ghost(before, flashes.count);
        }
        lattice.endLayer();
    }
}
