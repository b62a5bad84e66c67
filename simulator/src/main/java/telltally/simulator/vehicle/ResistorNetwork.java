package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Resistors between nodes, solved by the star-mesh transform: a node with conductances g1, g2, ... to its neighbours
 * may go if each pair of neighbours gets gi * gj / (g1 + g2 + ...) between them. The equivalence is the Schur complement
 * of the network's Kirchhoff matrix; for resistors it is due to A. Rosen (Journal of the IEE, 1924; from memory). Only
 * sums, products and quotients of positive numbers occur, so nothing cancels, and a wire that hangs free needs no
 * special case.
 */
public final class ResistorNetwork {
    private record Resistor(int from, int to, double siemens) {}

    private final Map<Node, Integer> numbers = new LinkedHashMap<>();
    private final List<Resistor> resistors = new ArrayList<>();

    /** @param ohms more than zero; infinite means that nothing joins the two, though both are there */
    public void join(Node from, Node to, double ohms) {
        if (!(ohms > 0)) {
            throw new IllegalArgumentException("a resistor of " + ohms + " ohms from " + from + " to " + to);
        }
        int start = number(from);
        int end = number(to);
        if (start != end && Double.isFinite(ohms)) {
            resistors.add(new Resistor(start, end, 1 / ohms));
        }
    }

    /**
     * Volts everywhere, with the sources held at theirs. A node that no source reaches has 0 V.
     *
     * @param sourceVolts for at least one node; a source that nothing is joined to does no harm
     */
    public Map<Node, Double> volts(Map<Node, Double> sourceVolts) {
        sourceVolts.keySet().forEach(this::number);
        double[][] siemens = conductances();
        double[] volts = new double[numbers.size()];
        boolean[] held = new boolean[volts.length];
        sourceVolts.forEach((node, value) -> {
            held[number(node)] = true;
            volts[number(node)] = value;
        });
        int[] order = eliminate(siemens, held);
        for (int i = order.length - 1; i >= 0; i--) {
            volts[order[i]] = weightedMean(siemens[order[i]], volts);
        }
        Map<Node, Double> answer = new LinkedHashMap<>();
        numbers.forEach((node, number) -> answer.put(node, volts[number]));
        return Collections.unmodifiableMap(answer);
    }

    /**
     * What lies between two nodes when no source is on; infinite if nothing does.
     *
     * @throws IllegalArgumentException if the network has no such node
     */
    public double ohms(Node from, Node to) {
        int start = known(from);
        int end = known(to);
        if (start == end) {
            return 0;
        }
        double[][] siemens = conductances();
        boolean[] held = new boolean[numbers.size()];
        held[start] = true;
        held[end] = true;
        eliminate(siemens, held);
        return siemens[start][end] == 0 ? Double.POSITIVE_INFINITY : 1 / siemens[start][end];
    }

    private int number(Node node) {
        return numbers.computeIfAbsent(node, absent -> numbers.size());
    }

    private int known(Node node) {
        Integer number = numbers.get(node);
        if (number == null) {
            throw new IllegalArgumentException("nothing here is called " + node.name());
        }
        return number;
    }

    private double[][] conductances() {
        double[][] siemens = new double[numbers.size()][numbers.size()];
        for (Resistor resistor : resistors) {
            siemens[resistor.from][resistor.to] += resistor.siemens;
            siemens[resistor.to][resistor.from] += resistor.siemens;
        }
        return siemens;
    }

    /**
     * Turns every node that is not held into a mesh; its row keeps what it was joined to at that moment. The last comes
     * first: rails are joined early and everything hangs on them, so they should go last.
     */
    private static int[] eliminate(double[][] siemens, boolean[] held) {
        boolean[] gone = new boolean[held.length];
        int[] order = new int[held.length];
        int count = 0;
        for (int star = held.length - 1; star >= 0; star--) {
            if (!held[star]) {
                order[count++] = star;
                gone[star] = true;
                starToMesh(siemens, star, gone);
            }
        }
        return Arrays.copyOf(order, count);
    }

    private static void starToMesh(double[][] siemens, int star, boolean[] gone) {
        int[] neighbours = new int[siemens.length];
        int count = 0;
        double sum = 0;
        for (int node = 0; node < siemens.length; node++) {
            if (gone[node]) {
                siemens[star][node] = 0;
            } else if (siemens[star][node] != 0) {
                neighbours[count++] = node;
                sum += siemens[star][node];
            }
        }
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (i != j) {
                    siemens[neighbours[i]][neighbours[j]] +=
                            siemens[star][neighbours[i]] * siemens[star][neighbours[j]] / sum;
                }
            }
        }
    }

    private static double weightedMean(double[] siemens, double[] volts) {
        double sum = 0;
        double weighted = 0;
        for (int node = 0; node < siemens.length; node++) {
            sum += siemens[node];
            weighted += siemens[node] * volts[node];
        }
        return sum == 0 ? 0 : weighted / sum;
    }
}
