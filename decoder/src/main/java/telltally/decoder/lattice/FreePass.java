package telltally.decoder.lattice;

import java.util.Arrays;
import telltally.decoder.lattice.Automaton.GapKind;

/** An automaton run over the flashes of one recording. An arc's tag is the edge. */
final class FreePass extends Pass {
    private static final double BEAM = 1e-8;
    private static final double NEGLIGIBLE = 1e-9;

    private final Automaton automaton;
    private final Densities densities;
    private final int[] nodeAt;
    private double most;

    private FreePass(Densities densities, Flashes flashes, Channel channel, Lattice lattice) {
        super(flashes, channel, lattice, densities.automaton.shortestLight, BEAM);
        this.automaton = densities.automaton;
        this.densities = densities;
        nodeAt = new int[automaton.nodes];
    }

    static FreePass run(Densities densities, Flashes flashes, Channel channel, Lattice lattice) {
        densities.through(channel);
        FreePass pass = new FreePass(densities, flashes, channel, lattice);
        pass.sweep();
        return pass;
    }

    @Override
    void begin(int flash) {
        Arrays.fill(nodeAt, -1);
        most = 0;
        densities.lights.lookAt(flashes.lit(flash), isCutAtEnd(flash));
    }

    @Override
    void gap(double seconds) {
        densities.lookAtGap(seconds);
    }

    /** Follows the edges of one node, in ascending order of their gaps, as far as those reach the gap looked at. */
    @Override
    void follow(int node, double here, double ghosts) {
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
        double weight = densities.gap[automaton.edgeGap[edge]]
                * densities.lights.density[automaton.lightOf[to]]
                * densities.edge[edge];
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

    @Override
    void lead(int flash, double seconds, boolean cut, double ghosts) {
        double seen = flashes.lit(flash);
        for (int edge = automaton.firstEdge[Automaton.START]; edge < automaton.firstEdge[Automaton.START + 1]; edge++) {
            int gap = automaton.edgeGap[edge];
            int light = automaton.lightOf[automaton.edgeTo[edge]];
            double density;
            if (automaton.gaps[gap].kind() == GapKind.LEAD) {
                double start = cut && !automaton.lights[light].broad() ? CUT_WHOLE : 1;
                density = leadDensity(seconds) * start * densities.lights.density[light] * ghosts;
            } else if (cut) {
                density = densities.lights.of(light, seen, true);
            } else {
                density = densities.gapBeyond(gap, seconds) * densities.lights.density[light] * ghosts;
            }
            double weight = density * densities.edge[edge];
            if (weight > most) {
                most = weight * NEGLIGIBLE;
                add(0, edge, weight);
            }
        }
    }

    @Override
    void end(int node, double seconds, boolean cut, double ghosts) {
        int from = lattice.tag(node);
        for (int edge = automaton.firstEnd[from]; edge < automaton.firstEnd[from + 1]; edge++) {
            int gap = automaton.edgeGap[edge];
            double density;
            if (automaton.gaps[gap].kind() == GapKind.TAIL) {
                density = tailDensity(seconds) * (cut ? CUT_WHOLE : 1);
            } else {
                density = cut ? 1 : densities.gapBeyond(gap, seconds);
            }
            double weight = density * densities.edge[edge] * ghosts;
            if (weight > 0) {
                lattice.arc(node, sink(), weight, edge);
            }
        }
    }
}
