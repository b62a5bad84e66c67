package telltally.decoder.lattice;

import java.util.Arrays;
import java.util.List;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.GapKind;
import telltally.decoder.lattice.Automaton.Step;

/** Joins steps over flashes that were not seen into edges, and puts these in order. Parallel arrays, one entry an edge. */
final class EdgeComposer {
    private static final double LEAST_WEIGHT = 1e-9;
    private static final int STEPS = Automaton.MOST_MISSED + 1;
    private static final int UNKNOWN = -1;
    private final Automaton automaton;
    private final boolean[] missable;
    private final int[] gapOfStep;
    private final JoinedGaps gaps;

    /** The order in which gaps were first met; ties in length keep it, or readings would differ from run to run. */
    private int[] met;

    private int metCount;
    private final int[] firstStep;
    private final int[] stepOrder;

    final int[] firstEdge;
    final int[] firstBroadEdge;
    final int[] firstEnd;
    private int count;
    private int between;
    private int[] to = new int[256];
    private int[] gap = new int[256];
    private int[] missed = new int[256];
    private double[] weight = new double[256];
    private int[] steps = new int[256 * STEPS];
    private Gap[] sorted = {};
    private int fixed;
    private final int[] path = new int[STEPS];

    EdgeComposer(Automaton automaton, boolean[] missable, int[] gapOfStep, List<Gap> stepGaps) {
        this.automaton = automaton;
        this.missable = missable;
        this.gapOfStep = gapOfStep;
        this.gaps = new JoinedGaps(stepGaps, automaton.lights);
        met = new int[stepGaps.size()];
        Arrays.fill(met, UNKNOWN);
        firstStep = new int[automaton.nodes + 1];
        stepOrder = byStart();
        firstEdge = new int[automaton.nodes + 1];
        firstBroadEdge = new int[automaton.nodes];
        firstEnd = new int[automaton.nodes + 1];
    }

    /** Steps by the node that they start from. */
    private int[] byStart() {
        for (Step step : automaton.steps) {
            firstStep[step.from() + 1]++;
        }
        for (int node = 0; node < automaton.nodes; node++) {
            firstStep[node + 1] += firstStep[node];
        }
        int[] next = firstStep.clone();
        int[] order = new int[automaton.steps.length];
        for (int i = 0; i < order.length; i++) {
            order[next[automaton.steps[i].from()]++] = i;
        }
        return order;
    }

    void compose() {
        for (int node = 0; node < automaton.nodes; node++) {
            firstEdge[node] = count;
            from(node, false);
        }
        firstEdge[automaton.nodes] = count;
        between = count;
        for (int node = 0; node < automaton.nodes; node++) {
            firstEnd[node] = count;
            from(node, true);
        }
        firstEnd[automaton.nodes] = count;
        sortGaps();
        sortEdges();
    }

    private void from(int node, boolean toEnd) {
        for (int i = firstStep[node]; i < firstStep[node + 1]; i++) {
            path[0] = stepOrder[i];
            extend(1, gapOfStep[path[0]], automaton.steps[path[0]].weight(), toEnd);
        }
    }

    private void extend(int length, int gapNumber, double product, boolean toEnd) {
        int reached = automaton.steps[path[length - 1]].to();
        if (toEnd == (reached == Automaton.END)) {
            add(length, reached, gapNumber, product);
        }
        if (length == STEPS || !missable[reached] || product < LEAST_WEIGHT) {
            return;
        }
        for (int i = firstStep[reached]; i < firstStep[reached + 1]; i++) {
            int next = stepOrder[i];
            int longer = gaps.join(gapNumber, automaton.lightOf[reached], gapOfStep[next]);
            if (longer != JoinedGaps.NONE) {
                path[length] = next;
                extend(length + 1, longer, product * automaton.steps[next].weight(), toEnd);
            }
        }
    }

    private void add(int length, int reached, int gapNumber, double product) {
        if (count == to.length) {
            to = Arrays.copyOf(to, 2 * count);
            gap = Arrays.copyOf(gap, 2 * count);
            missed = Arrays.copyOf(missed, 2 * count);
            weight = Arrays.copyOf(weight, 2 * count);
            steps = Arrays.copyOf(steps, 2 * count * STEPS);
        }
        if (gapNumber >= met.length) {
            int known = met.length;
            met = Arrays.copyOf(met, 2 * gaps.count());
            Arrays.fill(met, known, met.length, UNKNOWN);
        }
        if (met[gapNumber] == UNKNOWN) {
            met[gapNumber] = metCount++;
        }
        to[count] = reached;
        gap[count] = gapNumber;
        missed[count] = length - 1;
        weight[count] = product;
        System.arraycopy(path, 0, steps, count * STEPS, length);
        count++;
    }

    /** Numbers gaps anew: by kind, then length. */
    private void sortGaps() {
        Integer[] order = new Integer[metCount];
        for (int i = 0; i < met.length; i++) {
            if (met[i] != UNKNOWN) {
                order[met[i]] = i;
            }
        }
        Arrays.sort(order, (one, two) -> {
            int kinds = gaps.get(one).kind().compareTo(gaps.get(two).kind());
            return kinds != 0
                    ? kinds
                    : Double.compare(gaps.get(one).seconds(), gaps.get(two).seconds());
        });
        sorted = new Gap[metCount];
        int[] place = new int[gaps.count()];
        for (int i = 0; i < metCount; i++) {
            sorted[i] = gaps.get(order[i]);
            place[order[i]] = i;
            fixed += sorted[i].kind() == GapKind.FIXED ? 1 : 0;
        }
        for (int edge = 0; edge < count; edge++) {
            gap[edge] = place[gap[edge]];
        }
    }

    /** Orders the edges of each node by their gaps: all edges by gap, then those by node, each keeping the order before. */
    private void sortEdges() {
        int[] next = new int[metCount + 1];
        for (int edge = 0; edge < between; edge++) {
            next[gap[edge] + 1]++;
        }
        for (int i = 0; i < metCount; i++) {
            next[i + 1] += next[i];
        }
        int[] byGap = new int[between];
        int[] nodeOf = new int[between];
        for (int node = 0; node < automaton.nodes; node++) {
            for (int edge = firstEdge[node]; edge < firstEdge[node + 1]; edge++) {
                byGap[next[gap[edge]]++] = edge;
                nodeOf[edge] = node;
            }
        }
        int[] place = Arrays.copyOf(firstEdge, automaton.nodes);
        System.arraycopy(firstEdge, 0, firstBroadEdge, 0, automaton.nodes);
        int[] order = new int[count];
        for (int edge : byGap) {
            int node = nodeOf[edge];
            order[place[node]++] = edge;
            firstBroadEdge[node] += gap[edge] < fixed ? 1 : 0;
        }
        for (int edge = between; edge < count; edge++) {
            order[edge] = edge;
        }
        rearrange(order);
    }

    private void rearrange(int[] order) {
        int[] newTo = new int[count];
        int[] newGap = new int[count];
        int[] newMissed = new int[count];
        double[] newWeight = new double[count];
        int[] newSteps = new int[count * STEPS];
        for (int i = 0; i < count; i++) {
            int edge = order[i];
            newTo[i] = to[edge];
            newGap[i] = gap[edge];
            newMissed[i] = missed[edge];
            newWeight[i] = weight[edge];
            System.arraycopy(steps, edge * STEPS, newSteps, i * STEPS, STEPS);
        }
        to = newTo;
        gap = newGap;
        missed = newMissed;
        weight = newWeight;
        steps = newSteps;
    }

    Gap[] gaps() {
        return sorted;
    }

    int fixedGaps() {
        return fixed;
    }

    int[] to() {
        return to;
    }

    int[] gap() {
        return gap;
    }

    int[] missed() {
        return missed;
    }

    double[] weight() {
        return weight;
    }

    int[] steps() {
        return steps;
    }
}
