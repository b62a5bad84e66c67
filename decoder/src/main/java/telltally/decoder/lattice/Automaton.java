package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

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
        Gap(GapKind kind, double seconds, double squares, double mostSeconds) {
            this(kind, seconds, squares, mostSeconds, mostSeconds > 0 ? StrictMath.log(mostSeconds / seconds) : 0);
        }

        static Gap fixed(double seconds) {
            return new Gap(GapKind.FIXED, seconds, seconds * seconds, 0);
        }

        static Gap broad(double least, double most) {
            return new Gap(GapKind.BROAD, least, 0, most);
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
    final boolean[] missable;
    final Light[] lights;
    /** Those of a fixed length first, in ascending order. */
    final Gap[] gaps;

    final int fixedGaps;
    final Step[] steps;
    /** Edges of a node between flashes: from firstEdge[node] to firstEdge[node + 1]. */
    final int[] firstEdge;
    /** The first of those whose gap is not of a fixed length; they stand last. */
    final int[] firstBroadEdge;
    /** Edges of a node to the end: from firstEnd[node] to firstEnd[node + 1]. */
    final int[] firstEnd;

    final int[] edgeTo;
    final int[] edgeGap;
    final int[] edgeMissed;
    final double[] edgeWeight;
    final int[][] edgeSteps;
    final double shortestLight;

    private Automaton(Builder builder) {
        nodes = builder.lightOf.size();
        lightOf = builder.lightOf.stream().mapToInt(Integer::intValue).toArray();
        missable = new boolean[nodes];
        for (int node = 0; node < nodes; node++) {
            missable[node] = builder.missable.get(node);
        }
        lights = builder.lights.toArray(new Light[0]);
        steps = builder.steps.toArray(new Step[0]);
        double shortest = Double.MAX_VALUE;
        for (Light light : lights) {
            shortest = light.broad() || light.seconds() == 0 ? shortest : Math.min(shortest, light.seconds());
        }
        shortestLight = shortest;
        Composer composer = new Composer(this);
        firstEdge = new int[nodes + 1];
        firstEnd = new int[nodes + 1];
        for (int node = 0; node < nodes; node++) {
            firstEdge[node] = composer.edges.size();
            composer.compose(node, false);
        }
        firstEdge[nodes] = composer.edges.size();
        for (int node = 0; node < nodes; node++) {
            firstEnd[node] = composer.edges.size();
            composer.compose(node, true);
        }
        firstEnd[nodes] = composer.edges.size();
        gaps = composer.gaps.keySet().toArray(new Gap[0]);
        Arrays.sort(gaps, Comparator.comparing(Gap::kind).thenComparingDouble(Gap::seconds));
        int[] place = new int[gaps.length];
        int fixed = 0;
        for (int i = 0; i < gaps.length; i++) {
            place[Objects.requireNonNull(composer.gaps.get(gaps[i]))] = i;
            fixed += gaps[i].kind() == GapKind.FIXED ? 1 : 0;
        }
        fixedGaps = fixed;
        int count = composer.edges.size();
        edgeTo = new int[count];
        edgeGap = new int[count];
        edgeMissed = new int[count];
        edgeWeight = new double[count];
        edgeSteps = new int[count][];
        firstBroadEdge = new int[nodes];
        for (int node = 0; node < nodes; node++) {
            List<Composer.Edge> edges = composer.edges.subList(firstEdge[node], firstEdge[node + 1]);
            edges.sort(Comparator.comparingInt(edge -> place[edge.gap]));
            firstBroadEdge[node] = firstEdge[node];
            for (Composer.Edge edge : edges) {
                firstBroadEdge[node] += place[edge.gap] < fixed ? 1 : 0;
            }
        }
        for (int i = 0; i < count; i++) {
            Composer.Edge edge = composer.edges.get(i);
            edgeTo[i] = edge.to;
            edgeGap[i] = place[edge.gap];
            edgeMissed[i] = edge.steps.length - 1;
            edgeWeight[i] = edge.weight;
            edgeSteps[i] = edge.steps;
        }
    }

    Light light(int node) {
        return lights[lightOf[node]];
    }

    /** Joins steps over flashes that were not seen. */
    private static final class Composer {
        private static final class Edge {
            private final int to;
            private final int gap;
            private final double weight;
            private final int[] steps;

            Edge(int to, int gap, double weight, int[] steps) {
                this.to = to;
                this.gap = gap;
                this.weight = weight;
                this.steps = steps;
            }
        }

        private static final double LEAST_WEIGHT = 1e-9;

        private final Automaton automaton;
        private final List<List<Integer>> stepsFrom = new ArrayList<>();
        private final List<Edge> edges = new ArrayList<>();
        /** In the order met: gaps that are alike but for their squares keep it, or readings would differ from run to run. */
        private final Map<Gap, Integer> gaps = new LinkedHashMap<>();

        Composer(Automaton automaton) {
            this.automaton = automaton;
            for (int node = 0; node < automaton.nodes; node++) {
                stepsFrom.add(new ArrayList<>());
            }
            for (int i = 0; i < automaton.steps.length; i++) {
                stepsFrom.get(automaton.steps[i].from()).add(i);
            }
        }

        void compose(int node, boolean toEnd) {
            for (int first : stepsFrom.get(node)) {
                extend(new int[] {first}, automaton.steps[first].gap(), automaton.steps[first].weight(), toEnd);
            }
        }

        private void extend(int[] path, Gap gap, double weight, boolean toEnd) {
            int to = automaton.steps[path[path.length - 1]].to();
            if (toEnd == (to == END)) {
                Integer known = gaps.putIfAbsent(gap, gaps.size());
                edges.add(new Edge(to, known == null ? gaps.size() - 1 : known, weight, path));
            }
            if (path.length > MOST_MISSED || !automaton.missable[to] || weight < LEAST_WEIGHT) {
                return;
            }
            for (int next : stepsFrom.get(to)) {
                Step step = automaton.steps[next];
                Gap joined = joined(gap, automaton.light(to), step.gap());
                if (joined != null) {
                    int[] longer = Arrays.copyOf(path, path.length + 1);
                    longer[path.length] = next;
                    extend(longer, joined, weight * step.weight(), toEnd);
                }
            }
        }

        private static @org.jspecify.annotations.Nullable Gap joined(Gap before, Light unseen, Gap after) {
            double light = unseen.seconds();
            if (before.kind() == GapKind.FIXED && after.kind() == GapKind.FIXED) {
                double squares = before.squares() + light * light + after.squares();
                return new Gap(GapKind.FIXED, before.seconds() + light + after.seconds(), squares, 0);
            }
            if (before.kind() == GapKind.LEAD_CUT || after.kind() == GapKind.TAIL_CUT) {
                return null;
            }
            // Beside a gap of any length the unseen flash adds nothing that could be told.
            return before.kind() == GapKind.FIXED ? after : after.kind() == GapKind.TAIL ? after : before;
        }
    }

    /** Collects nodes and steps. */
    static final class Builder {
        private final List<Integer> lightOf = new ArrayList<>();
        private final List<Boolean> missable = new ArrayList<>();
        private final List<Light> lights = new ArrayList<>();
        private final List<Step> steps = new ArrayList<>();

        Builder() {
            node(new Light(0, 0), false);
            node(new Light(0, 0), false);
        }

        int node(Light light, boolean canBeMissed) {
            int known = lights.indexOf(light);
            if (known < 0) {
                known = lights.size();
                lights.add(light);
            }
            lightOf.add(known);
            missable.add(canBeMissed);
            return lightOf.size() - 1;
        }

        int nodes() {
            return lightOf.size();
        }

        List<Step> steps() {
            return steps;
        }

        void step(int from, int to, Gap gap, double weight, Ends ends, String sign, boolean repeat) {
            if (weight > 0) {
                steps.add(new Step(from, to, gap, weight, ends, sign, repeat));
            }
        }

        Automaton build() {
            return new Automaton(this);
        }
    }
}
