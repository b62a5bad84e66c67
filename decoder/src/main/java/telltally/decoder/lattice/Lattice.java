package telltally.decoder.lattice;

import java.util.Arrays;

/**
 * A graph in layers whose arcs carry weights: sums and maxima over all its paths, from left to right while it is built,
 * and from right to left afterwards. A hidden Markov model is the case where each arc leads to the next layer; with
 * arcs over several layers it is a semi-Markov model. The recursions are the forward-backward and Viterbi recursions
 * (L. R. Rabiner, Proc. IEEE 77(2), 1989, 257-286; with durations S.-Z. Yu, Artificial Intelligence 174, 2010, 215-243).
 *
 * <p>Sums are kept as doubles with one binary exponent a layer, so that no length of recording underflows. Not for
 * sharing between threads.
 */
final class Lattice {
    private static final double LN2 = 0.6931471805599453;
    /** Sums keep a power of two of their own only beyond this: products of two and a weight are numbers all the same. */
    private static final int MOST_EXPONENT = 100;

    private int nodes;
    private int arcs;
    private int layers;
    private int[] nodeTag;
    private int[] nodeLayer;
    private int[] bestArc;
    private double[] forward;
    private double[] best;
    private double[] backward = new double[0];
    private int[] arcFrom;
    private int[] arcTo;
    private int[] arcTag;
    /** Relative to the exponents of both its layers, once the layer has ended. */
    private double[] arcWeight;

    private int[] layerStart;
    private int[] layerFirstArc;
    private double[] layerScale;
    private int[] sumExponent;
    private int[] bestExponent;

    Lattice() {
        int room = 128;
        layerStart = new int[room];
        layerFirstArc = new int[room];
        layerScale = new double[room];
        sumExponent = new int[room];
        bestExponent = new int[room];
        nodeTag = new int[2 * room];
        nodeLayer = new int[2 * room];
        bestArc = new int[2 * room];
        forward = new double[2 * room];
        best = new double[2 * room];
        arcFrom = new int[4 * room];
        arcTo = new int[4 * room];
        arcTag = new int[4 * room];
        arcWeight = new double[4 * room];
    }

    /** Forgets all layers, and keeps the room that they took. */
    void clear() {
        nodes = 0;
        arcs = 0;
        layers = 0;
    }

    /** How many arcs can be held without taking more memory. */
    int room() {
        return arcFrom.length;
    }

    /** Begins the next layer; nodes belong to the layer last begun. */
    void beginLayer() {
        if (layers == layerStart.length) {
            layerStart = Arrays.copyOf(layerStart, 2 * layers);
            layerFirstArc = Arrays.copyOf(layerFirstArc, 2 * layers);
            sumExponent = Arrays.copyOf(sumExponent, 2 * layers);
            bestExponent = Arrays.copyOf(bestExponent, 2 * layers);
            layerScale = Arrays.copyOf(layerScale, 2 * layers);
        }
        layerStart[layers] = nodes;
        layerFirstArc[layers] = arcs;
        sumExponent[layers] = layers == 0 ? 0 : sumExponent[layers - 1];
        bestExponent[layers] = layers == 0 ? 0 : bestExponent[layers - 1];
        layers++;
    }

    /** A node of the first layer that paths may begin in, with the weight of doing so. */
    int source(int tag, double weight) {
        int node = node(tag);
        forward[node] = weight;
        best[node] = weight;
        return node;
    }

    int node(int tag) {
        if (nodes == nodeTag.length) {
            nodeTag = Arrays.copyOf(nodeTag, 2 * nodes);
            nodeLayer = Arrays.copyOf(nodeLayer, 2 * nodes);
            bestArc = Arrays.copyOf(bestArc, 2 * nodes);
            forward = Arrays.copyOf(forward, 2 * nodes);
            best = Arrays.copyOf(best, 2 * nodes);
        }
        nodeTag[nodes] = tag;
        nodeLayer[nodes] = layers - 1;
        bestArc[nodes] = -1;
        forward[nodes] = 0;
        best[nodes] = 0;
        return nodes++;
    }

    /** An arc from a node of an earlier layer to one of the layer last begun. */
    void arc(int from, int to, double weight, int tag) {
        if (arcs == arcFrom.length) {
            arcFrom = Arrays.copyOf(arcFrom, 2 * arcs);
            arcTo = Arrays.copyOf(arcTo, 2 * arcs);
            arcTag = Arrays.copyOf(arcTag, 2 * arcs);
            arcWeight = Arrays.copyOf(arcWeight, 2 * arcs);
        }
        int layer = nodeLayer[from];
        double sum = weight;
        double most = best[from] * weight;
        if (layer != layers - 2) {
            sum = Math.scalb(sum, sumExponent[layer] - sumExponent[layers - 1]);
            most = Math.scalb(most, bestExponent[layer] - bestExponent[layers - 1]);
        }
        forward[to] += forward[from] * sum;
        if (most > best[to]) {
            best[to] = most;
            bestArc[to] = arcs;
        }
        arcFrom[arcs] = from;
        arcTo[arcs] = to;
        arcTag[arcs] = tag;
        arcWeight[arcs++] = sum;
    }

    /** Ends the layer: no arc leads to it any more. */
    void endLayer() {
        int layer = layers - 1;
        int exponent = exponent(forward, layerStart[layer]);
        layerScale[layer] = power(exponent);
        if (Math.abs(exponent) > MOST_EXPONENT) {
            double factor = power(-exponent);
            for (int node = layerStart[layer]; node < nodes; node++) {
                forward[node] *= factor;
            }
            for (int arc = layerFirstArc[layer]; arc < arcs; arc++) {
                arcWeight[arc] *= factor;
            }
            sumExponent[layer] += exponent;
            layerScale[layer] = 1;
        }
        exponent = exponent(best, layerStart[layer]);
        if (Math.abs(exponent) > MOST_EXPONENT) {
            double factor = power(-exponent);
            for (int node = layerStart[layer]; node < nodes; node++) {
                best[node] *= factor;
            }
            bestExponent[layer] += exponent;
        }
    }

    private static double power(int exponent) {
        return Double.longBitsToDouble((long) (exponent + Double.MAX_EXPONENT) << 52);
    }

    /** Exponent of the greatest value; limited so that its power of two and the inverse are both numbers. */
    private int exponent(double[] values, int from) {
        double most = 0;
        for (int i = from; i < nodes; i++) {
            most = Math.max(most, values[i]);
        }
        return most == 0 ? 0 : Math.max(-1000, Math.min(1000, Math.getExponent(most)));
    }

    /** How many nodes there are so far: the number of the next one. */
    int nodes() {
        return nodes;
    }

    int firstNode(int layer) {
        return layerStart[layer];
    }

    int lastNode(int layer) {
        return layer + 1 < layers ? layerStart[layer + 1] : nodes;
    }

    /** The first arc that leads to a layer; those of a layer follow each other. */
    int firstArc(int layer) {
        return layerFirstArc[layer];
    }

    int lastArc(int layer) {
        return layer + 1 < layers ? layerFirstArc[layer + 1] : arcs;
    }

    int tag(int node) {
        return nodeTag[node];
    }

    int layer(int node) {
        return nodeLayer[node];
    }

    double best(int node) {
        return best[node];
    }

    /** The power of two below the greatest sum of a layer, relative to the layer's exponent. */
    double scale(int layer) {
        return layerScale[layer];
    }

    /** What a sum of a layer that has ended is worth in the layer last begun. */
    double relative(int layer) {
        return Math.scalb(1.0, sumExponent[layer] - sumExponent[layers - 1]);
    }

    /** The sum over all paths to a node, relative to its layer's exponent. */
    double forward(int node) {
        return forward[node];
    }

    /** Natural logarithm of the sum over all paths from the sources to a node. */
    double logSum(int node) {
        return StrictMath.log(forward[node]) + sumExponent[nodeLayer[node]] * LN2;
    }

    /** Natural logarithm of the weight of the best path to a node. */
    double logBest(int node) {
        return StrictMath.log(best[node]) + bestExponent[nodeLayer[node]] * LN2;
    }

    /** The arc by which the best path reaches a node; -1 for a source or a node that nothing reaches. */
    int bestArc(int node) {
        return bestArc[node];
    }

    int arcCount() {
        return arcs;
    }

    int arcFrom(int arc) {
        return arcFrom[arc];
    }

    int arcTo(int arc) {
        return arcTo[arc];
    }

    int arcTag(int arc) {
        return arcTag[arc];
    }

    /** Runs from right to left from one last node; needed before {@link #arcShare} and {@link #nodeShare}. */
    void sweepBack(int sink) {
        if (backward.length < nodes) {
            backward = new double[nodes];
        } else {
            Arrays.fill(backward, 0, nodes, 0);
        }
        backward[sink] = 1 / forward[sink];
        for (int arc = arcs - 1; arc >= 0; arc--) {
            double ahead = backward[arcTo[arc]];
            if (ahead > 0) {
                backward[arcFrom[arc]] += ahead * arcWeight[arc];
            }
        }
    }

    /** The share of all paths' weight, 0 to 1, of those over this arc. */
    double arcShare(int arc) {
        return forward[arcFrom[arc]] * arcWeight[arc] * backward[arcTo[arc]];
    }

    /** The share of all paths' weight, 0 to 1, of those through this node. */
    double nodeShare(int node) {
        return forward[node] * backward[node];
    }
}
