package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

/** Random graphs against a walk over all their paths. */
class LatticeSumsTest {
    /** An arc as it is kept beside the lattice. */
    private record Arc(int from, int to, double weight, int tag) {}

    private static final class Graph {
        final Lattice lattice = new Lattice();
        final Map<Integer, Double> sources = new HashMap<>();
        final List<Arc> arcs = new ArrayList<>();
        int sink;

        /** @param size by how many powers of ten the weights of a layer are smaller or greater than 1 */
        Graph(long seed, int layers, int size) {
            Chance chance = Chance.of(seed);
            lattice.clear();
            for (int layer = 0; layer < layers; layer++) {
                lattice.beginLayer();
                boolean last = layer == layers - 1;
                for (int i = 0; i < (last ? 1 : 2); i++) {
                    if (layer == 0) {
                        double weight = chance.between(0.1, 1);
                        sources.put(lattice.source(10 * layer + i, weight), weight);
                    } else {
                        arcsTo(lattice.node(10 * layer + i), layer, chance, size);
                    }
                }
                lattice.endLayer();
            }
            sink = lattice.nodes() - 1;
            lattice.sweepBack(sink);
        }

        private void arcsTo(int node, int layer, Chance chance, int size) {
            for (int from = lattice.firstNode(Math.max(0, layer - 3)); from < lattice.firstNode(layer); from++) {
                if (chance.happens(0.7) || from == lattice.firstNode(layer - 1)) {
                    double weight = chance.between(0.1, 1) * Math.pow(10, size);
                    int tag = arcs.size() + 7;
                    lattice.arc(from, node, weight, tag);
                    arcs.add(new Arc(from, node, weight, tag));
                }
            }
        }

        /** Sum over all paths from the sources to a node. */
        double forward(int node) {
            double sum = sources.getOrDefault(node, 0.0);
            for (Arc arc : arcs) {
                sum += arc.to() == node ? forward(arc.from()) * arc.weight() : 0;
            }
            return sum;
        }

        double best(int node) {
            double best = sources.getOrDefault(node, 0.0);
            for (Arc arc : arcs) {
                best = arc.to() == node ? Math.max(best, best(arc.from()) * arc.weight()) : best;
            }
            return best;
        }

        /** Sum over all paths from a node to the sink. */
        double backward(int node) {
            double sum = node == sink ? 1 : 0;
            for (Arc arc : arcs) {
                sum += arc.from() == node ? backward(arc.to()) * arc.weight() : 0;
            }
            return sum;
        }
    }

    @Test
    void sums_maxima_and_shares_are_those_of_a_walk_over_all_paths() {
        for (int size : new int[] {0, -40, 40}) {
            for (int seed = 0; seed < 5; seed++) {
                Graph graph = new Graph(seed, 7, size);
                Lattice lattice = graph.lattice;
                double total = graph.forward(graph.sink);
                for (int node = 0; node < lattice.nodes(); node++) {
                    assertThat(lattice.logSum(node)).isCloseTo(Math.log(graph.forward(node)), within(1e-9));
                    assertThat(lattice.logBest(node)).isCloseTo(Math.log(graph.best(node)), within(1e-9));
                    assertThat(lattice.nodeShare(node))
                            .isCloseTo(graph.forward(node) / total * graph.backward(node), within(1e-12));
                    bestArcIsBest(graph, node);
                }
                assertThat(lattice.arcCount()).isEqualTo(graph.arcs.size());
                for (int i = 0; i < graph.arcs.size(); i++) {
                    Arc arc = graph.arcs.get(i);
                    assertThat(lattice.arcFrom(i)).isEqualTo(arc.from());
                    assertThat(lattice.arcTo(i)).isEqualTo(arc.to());
                    assertThat(lattice.arcTag(i)).isEqualTo(arc.tag());
                    assertThat(lattice.arcShare(i))
                            .isCloseTo(
                                    graph.forward(arc.from()) / total * arc.weight() * graph.backward(arc.to()),
                                    within(1e-12));
                }
            }
        }
    }

    private static void bestArcIsBest(Graph graph, int node) {
        int arc = graph.lattice.bestArc(node);
        if (graph.sources.containsKey(node)) {
            assertThat(arc).isEqualTo(-1);
        } else {
            Arc best = graph.arcs.get(arc);
            assertThat(best.to()).isEqualTo(node);
            assertThat(graph.best(best.from()) * best.weight() / graph.best(node))
                    .isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void layers_know_their_nodes_and_arcs() {
        Graph graph = new Graph(1, 5, 0);
        Lattice lattice = graph.lattice;
        assertThat(lattice.firstNode(0)).isZero();
        assertThat(lattice.lastNode(0)).isEqualTo(2);
        assertThat(lattice.lastNode(4)).isEqualTo(9);
        assertThat(lattice.firstArc(0)).isZero();
        assertThat(lattice.lastArc(0)).isZero();
        assertThat(lattice.lastArc(4)).isEqualTo(lattice.arcCount());
        for (int layer = 0; layer < 5; layer++) {
            for (int node = lattice.firstNode(layer); node < lattice.lastNode(layer); node++) {
                assertThat(lattice.layer(node)).isEqualTo(layer);
                assertThat(lattice.tag(node)).isEqualTo(10 * layer + node - lattice.firstNode(layer));
            }
            for (int arc = lattice.firstArc(layer); arc < lattice.lastArc(layer); arc++) {
                assertThat(lattice.layer(lattice.arcTo(arc))).isEqualTo(layer);
            }
        }
    }

    @Test
    void a_node_that_nothing_reaches_has_no_weight() {
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int source = lattice.source(0, 0.5);
        int lonely = lattice.node(0);
        lattice.endLayer();
        lattice.beginLayer();
        int empty = lattice.node(0);
        lattice.arc(lonely, empty, 1, 0);
        int sink = lattice.node(0);
        lattice.arc(source, sink, 1, 0);
        lattice.arc(lonely, sink, 1, 0);
        lattice.endLayer();
        lattice.sweepBack(sink);
        assertThat(lattice.bestArc(lonely)).isEqualTo(-1);
        assertThat(lattice.bestArc(empty)).isEqualTo(-1);
        assertThat(lattice.logSum(empty)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(lattice.logBest(empty)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(lattice.nodeShare(empty)).isZero();
        assertThat(lattice.nodeShare(sink)).isEqualTo(1);
    }

    /** 2 to the power of 80 and 2 to the power of -150 stand on either side of where a layer gets an exponent. */
    @Test
    void what_a_sum_of_an_earlier_layer_is_worth_now_allows_for_exponents() {
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int first = lattice.source(0, 0.75);
        lattice.endLayer();
        assertThat(lattice.scale(0)).isEqualTo(0.5);
        assertThat(lattice.relative(0)).isEqualTo(1);
        lattice.beginLayer();
        int great = lattice.node(0);
        lattice.arc(first, great, 0x1p80, 0);
        lattice.endLayer();
        assertThat(lattice.forward(great)).isEqualTo(0.75 * 0x1p80);
        assertThat(lattice.best(great)).isEqualTo(0.75 * 0x1p80);
        assertThat(lattice.scale(1)).isEqualTo(0x1p79);
        lattice.beginLayer();
        int small = lattice.node(0);
        lattice.arc(great, small, 0x1p-230, 0);
        lattice.endLayer();
        // 0.75 times 2 to the power of -150 is 1.5 times 2 to the power of -151.
        assertThat(lattice.forward(small)).isEqualTo(1.5);
        assertThat(lattice.best(small)).isEqualTo(1.5);
        assertThat(lattice.scale(2)).isEqualTo(1);
        assertThat(lattice.relative(1)).isEqualTo(0x1p151);
        assertThat(lattice.logSum(small)).isCloseTo(Math.log(0.75 * 0x1p-150), within(1e-12));
        lattice.sweepBack(small);
        assertThat(lattice.nodeShare(first)).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_hundred_powers_of_two_are_still_kept_as_they_are() {
        for (int exponent : new int[] {100, -100, 101, -101}) {
            Lattice lattice = new Lattice();
            lattice.beginLayer();
            int node = lattice.source(0, Math.scalb(1.0, exponent));
            lattice.endLayer();
            boolean kept = Math.abs(exponent) == 100;
            assertThat(lattice.forward(node)).isEqualTo(kept ? Math.scalb(1.0, exponent) : 1);
            assertThat(lattice.best(node)).isEqualTo(kept ? Math.scalb(1.0, exponent) : 1);
            assertThat(lattice.scale(0)).isEqualTo(kept ? Math.scalb(1.0, exponent) : 1);
        }
    }

    @Test
    void a_lattice_cleared_gives_what_a_new_one_gives() {
        Lattice used = new Graph(3, 40, 5).lattice;
        int room = used.room();
        used.clear();
        assertThat(used.nodes()).isZero();
        assertThat(used.arcCount()).isZero();
        used.beginLayer();
        int source = used.source(4, 0.5);
        used.endLayer();
        used.beginLayer();
        int sink = used.node(5);
        used.arc(source, sink, 0.25, 6);
        used.endLayer();
        used.sweepBack(sink);
        assertThat(used.logSum(sink)).isCloseTo(Math.log(0.125), within(1e-15));
        assertThat(used.nodeShare(source)).isEqualTo(1);
        assertThat(used.room()).isEqualTo(room);
    }

    @Test
    void more_nodes_arcs_and_layers_than_there_was_room_for_are_held() {
        int layers = 1000;
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int[] before = {lattice.source(0, 0.5), lattice.source(1, 0.5)};
        lattice.endLayer();
        for (int layer = 1; layer < layers; layer++) {
            lattice.beginLayer();
            int[] here = {lattice.node(layer), lattice.node(-layer)};
            for (int to : here) {
                for (int from : before) {
                    lattice.arc(from, to, 0.5, 3 * layer);
                }
            }
            before = here;
            lattice.endLayer();
        }
        lattice.beginLayer();
        int sink = lattice.node(-1);
        lattice.arc(before[0], sink, 1, 1);
        lattice.arc(before[1], sink, 1, 2);
        lattice.endLayer();
        lattice.sweepBack(sink);
        assertThat(lattice.logSum(sink)).isCloseTo(0, within(1e-12));
        assertThat(lattice.arcCount()).isEqualTo(4 * (layers - 1) + 2);
        for (int layer = 1; layer < layers; layer++) {
            int node = lattice.firstNode(layer);
            assertThat(lattice.tag(node)).isEqualTo(layer);
            assertThat(lattice.layer(node + 1)).isEqualTo(layer);
            assertThat(lattice.nodeShare(node)).isCloseTo(0.5, within(1e-9));
            int arc = lattice.firstArc(layer);
            assertThat(lattice.arcTag(arc)).isEqualTo(3 * layer);
            assertThat(lattice.arcShare(arc)).isCloseTo(0.25, within(1e-9));
        }
        assertThat(lattice.logBest(sink)).isCloseTo(layers * Math.log(0.5), within(1e-9));
    }
}
