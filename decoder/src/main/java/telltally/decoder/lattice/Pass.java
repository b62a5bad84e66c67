package telltally.decoder.lattice;

import java.util.Arrays;
import telltally.decoder.lattice.Automaton.GapKind;

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

    private final Automaton automaton;
    private final Densities densities;
    private final Flashes flashes;
    private final int[] nodeAt;
    private final Lattice lattice;
    private int sink = -1;
    private double most;

    private Pass(Densities densities, Flashes flashes, Lattice lattice) {
        this.automaton = densities.automaton;
        this.densities = densities;
        this.flashes = flashes;
        this.lattice = lattice;
        nodeAt = new int[automaton.nodes];
    }

    /** Runs over all flashes, from the beginning of the recording to its end. */
    static Pass run(Automaton automaton, Flashes flashes, Channel channel) {
        return run(new Densities(automaton), flashes, channel, new Lattice());
    }

    /** @param lattice is used up, until {@link #lattice} is needed no more */
    static Pass run(Densities densities, Flashes flashes, Channel channel, Lattice lattice) {
        densities.through(channel);
        lattice.clear();
        Pass pass = new Pass(densities, flashes, lattice);
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
            densities.lookAtFlash(flashes.lit(flash), flash == flashes.count - 1 && flashes.cutAtEnd);
            double ghosts = 1;
            for (int before = flash - 1; before >= -1 && ghosts > 0 && before >= flash - 1 - MOST_GHOSTS; before--) {
                reach(flash, before, ghosts);
                ghosts = before < 0 ? 0 : ghosts * ghost(before, flash);
            }
            lattice.endLayer();
        }
        finish();
    }

    /** The weight of taking a flash for one that was not sent, in the gap that ends with another. */
    private double ghost(int flash, int next) {
        double from = flash == 0 ? flashes.start[0] - flashes.leadSeconds : flashes.end[flash - 1];
        double to = next == flashes.count ? flashes.end[flash] + flashes.tailSeconds : flashes.start[next];
        return densities.ghost(flashes.lit(flash), to - from);
    }

    private void reach(int flash, int before, double ghosts) {
        if (before < 0) {
            lead(flash, ghosts);
            return;
        }
        densities.lookAtGap(flashes.start[flash] - flashes.end[before]);
        double least = BEAM * lattice.scale(before + 1);
        double worth = ghosts * lattice.relative(before + 1);
        int last = lattice.lastNode(before + 1);
        for (int node = lattice.firstNode(before + 1); node < last; node++) {
            double here = lattice.forward(node);
            if (here >= least) {
                follow(node, here * worth, ghosts);
            }
        }
    }

    /** Follows the edges of one node, in ascending order of their gaps, as far as those reach the gap looked at. */
    private void follow(int node, double here, double ghosts) {
        int[] gapOf = automaton.edgeGap;
        int from = lattice.tag(node);
        int broad = automaton.firstBroadEdge[from];
        int last = automaton.firstEdge[from + 1];
        int gapFrom = densities.gapFrom;
        int gapTo = densities.gapTo;
        int edge = automaton.firstEdge[from];
        while (edge < broad && gapOf[edge] < gapFrom) {
            edge++;
        }
        for (; edge < broad && gapOf[edge] < gapTo; edge++) {
            follow(node, edge, here, ghosts);
        }
        for (edge = broad; edge < last; edge++) {
            follow(node, edge, here, ghosts);
        }
    }

    private void follow(int node, int edge, double here, double ghosts) {
        int to = automaton.edgeTo[edge];
        double weight =
                densities.gap[automaton.edgeGap[edge]] * densities.light[automaton.lightOf[to]] * densities.edge[edge];
        // What falls so far behind another way into this flash can't come to matter.
        if (here * weight > most) {
            most = Math.max(most, here * weight * NEGLIGIBLE);
            add(node, edge, weight * ghosts);
        }
    }

    private void add(int node, int edge, double weight) {
        int to = automaton.edgeTo[edge];
        if (nodeAt[to] < 0) {
            nodeAt[to] = lattice.node(to);
        }
        lattice.arc(node, nodeAt[to], weight, edge);
    }

    private void begin(int edge, double density) {
        double weight = density * densities.edge[edge];
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
                double start = cut && !automaton.lights[light].broad() ? CUT_WHOLE : 1;
                begin(edge, Densities.lead(lead) * start * densities.light[light] * ghosts);
            } else if (cut) {
                begin(edge, densities.whole(light, flashes.lit(0)));
            } else {
                begin(edge, densities.gapBeyond(gap, lead) * densities.light[light] * ghosts);
            }
        }
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
                    double weight = tail(automaton.edgeGap[edge], tail, cut) * densities.edge[edge] * ghosts;
                    if (weight > 0) {
                        lattice.arc(node, sink, weight, edge);
                    }
                }
            }
            ghosts *= ghost(before, flashes.count);
        }
        lattice.endLayer();
    }

    private double tail(int gap, double seconds, boolean cut) {
        if (automaton.gaps[gap].kind() == GapKind.TAIL) {
            return Densities.tail(seconds) * (cut ? CUT_WHOLE : 1);
        }
        return cut ? 1 : densities.gapBeyond(gap, seconds);
    }
}
