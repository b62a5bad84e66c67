package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The flashes that a sender may send, and what may follow each of them. A node is one flash that was sent; a step leads
 * from a flash to the next over one gap; an edge is one to three steps in a row whose flashes in between were not seen,
 * and its gap is as long as all of them together.
 */
final class Automaton {
    static final int START = 0;
    static final int END = 1;
    static final int MOST_MISSED = 2;

    /** How long a flash is: around a length, or anything within bounds. */
    record Light(double seconds, double mostSeconds) {
        boolean broad() {
            return mostSeconds > 0;
        }
    }

    /** What is known of a gap. */
    enum GapKind {
        /** Around a length. */
        FIXED,
        /** Anything within bounds, evenly in the logarithm. */
        BROAD,
        /** The dark before the first flash of a recording that begins before it. */
        LEAD,
        /** What is left of a gap that the recording began in. */
        LEAD_CUT,
        /** The dark after the last flash of all. */
        TAIL,
        /** The beginning of a gap that the recording ended in. */
        TAIL_CUT
    }

    /**
     * @param seconds the nominal length; the least one of a broad gap
     * @param squares sum of the squares of the nominal lengths that make it up
     * @param mostSeconds the greatest length of a broad gap
     * @param logRange logarithm of the ratio of the two
     */
    record Gap(GapKind kind, double seconds, double squares, double mostSeconds, double logRange) {
        /** The dark before the first flash, and after the last. */
        static final Gap LEAD = new Gap(GapKind.LEAD, 0, 0, 0, 0);

        static final Gap TAIL = new Gap(GapKind.TAIL, 0, 0, 0, 0);

        static Gap fixed(double seconds) {
            return new Gap(GapKind.FIXED, seconds, seconds * seconds, 0, 0);
        }

        static Gap broad(double least, double most) {
            return new Gap(GapKind.BROAD, least, 0, most, StrictMath.log(most / least));
        }

        /** A part of this gap: what was left of it, or as much as there was. */
        Gap cut(GapKind how) {
            return new Gap(how, seconds, squares, 0, 0);
        }
    }

    /** What a step leaves behind. */
    enum Ends {
        NOTHING,
        SIGN,
        GROUP
    }

    /**
     * From one flash to the next.
     *
     * @param sign text of the sign that ends here; empty where none does
     * @param repeat whether the gap says that the list begins again
     */
    record Step(int from, int to, Gap gap, double weight, Ends ends, String sign, boolean repeat) {}

    final int nodes;
    final int[] lightOf;
    final Light[] lights;
    /** Those of a fixed length first, in ascending order. */
    final Gap[] gaps;

    final int fixedGaps;
    final Step[] steps;
    /** Edges of a node between flashes: from firstEdge[node] to firstEdge[node + 1], in ascending order of their gaps. */
    final int[] firstEdge;
    /** The first of those whose gap is not of a fixed length; they stand last. */
    final int[] firstBroadEdge;
    /** Edges of a node to the end: from firstEnd[node] to firstEnd[node + 1]. */
    final int[] firstEnd;

    final int[] edgeTo;
    final int[] edgeGap;
    final int[] edgeMissed;
    final double[] edgeWeight;
    /** The steps of edge e: from e * (MOST_MISSED + 1) on, one more than it has missed flashes. */
    private final int[] edgeSteps;

    final double shortestLight;

    private Automaton(Builder builder) {
        nodes = builder.nodes;
        lightOf = Arrays.copyOf(builder.lightOf, nodes);
        lights = builder.lights.all().toArray(new Light[0]);
        steps = builder.steps.toArray(new Step[0]);
        double shortest = Double.MAX_VALUE;
        for (Light light : lights) {
            shortest = light.broad() || light.seconds() == 0 ? shortest : Math.min(shortest, light.seconds());
        }
        shortestLight = shortest;
        EdgeComposer composer = new EdgeComposer(this, builder.missable, builder.gapOf, builder.gaps.all());
        composer.compose();
        gaps = composer.gaps();
        fixedGaps = composer.fixedGaps();
        firstEdge = composer.firstEdge;
        firstBroadEdge = composer.firstBroadEdge;
        firstEnd = composer.firstEnd;
        edgeTo = composer.to();
        edgeGap = composer.gap();
        edgeMissed = composer.missed();
        edgeWeight = composer.weight();
        edgeSteps = composer.steps();
    }

    Light light(int node) {
        return lights[lightOf[node]];
    }

    /** A step of an edge: 0 for the first, as many as it has missed flashes for the last. */
    Step step(int edge, int index) {
        return steps[edgeSteps[edge * (MOST_MISSED + 1) + index]];
    }

    /** Collects nodes and steps. */
    static final class Builder {
        private int nodes;
        private int[] lightOf = new int[64];
        private boolean[] missable = new boolean[64];
        private final Distinct<Light> lights = new Distinct<>();
        private final List<Step> steps = new ArrayList<>();
        private final Distinct<Gap> gaps = new Distinct<>();
        private int[] gapOf = new int[128];

        Builder() {
            node(new Light(0, 0), false);
            node(new Light(0, 0), false);
        }

        int node(Light light, boolean canBeMissed) {
            if (nodes == lightOf.length) {
                lightOf = Arrays.copyOf(lightOf, 2 * nodes);
                missable = Arrays.copyOf(missable, 2 * nodes);
            }
            lightOf[nodes] = lights.numberOf(light);
            missable[nodes] = canBeMissed;
            return nodes++;
        }

        int nodes() {
            return nodes;
        }

        List<Step> steps() {
            return steps;
        }

        void step(int from, int to, Gap gap, double weight, Ends ends, String sign, boolean repeat) {
            if (weight > 0) {
                if (steps.size() == gapOf.length) {
                    gapOf = Arrays.copyOf(gapOf, 2 * gapOf.length);
                }
                gapOf[steps.size()] = gaps.numberOf(gap);
                steps.add(new Step(from, to, gap, weight, ends, sign, repeat));
            }
        }

        Automaton build() {
            return new Automaton(this);
        }
    }
}
