package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The decoder's own recursions on worked examples that were published elsewhere. */
class LatticeTest {
    /** A hidden Markov model laid out as a lattice: one layer a step, one more for the end. */
    private static final class Markov {
        private final int states;
        private final Lattice lattice;
        private final int sink;

        Markov(double[] start, double[][] moves, double[][] signs, int... seen) {
            states = start.length;
            lattice = new Lattice();
            lattice.beginLayer();
            for (int state = 0; state < states; state++) {
                lattice.source(state, start[state] * signs[state][seen[0]]);
            }
            lattice.endLayer();
            for (int step = 1; step < seen.length; step++) {
                lattice.beginLayer();
                for (int to = 0; to < states; to++) {
                    int node = lattice.node(to);
                    for (int from = 0; from < states; from++) {
                        lattice.arc(
                                lattice.firstNode(step - 1) + from, node, moves[from][to] * signs[to][seen[step]], 0);
                    }
                }
                lattice.endLayer();
            }
            lattice.beginLayer();
            sink = lattice.node(-1);
            for (int state = 0; state < states; state++) {
                lattice.arc(lattice.firstNode(seen.length - 1) + state, sink, 1, 0);
            }
            lattice.endLayer();
            lattice.sweepBack(sink);
        }

        double total() {
            return Math.exp(lattice.logSum(sink));
        }

        double best() {
            return Math.exp(lattice.logBest(sink));
        }

        double smoothed(int step, int state) {
            return lattice.nodeShare(lattice.firstNode(step) + state);
        }

        List<Integer> path() {
            List<Integer> path = new ArrayList<>();
            for (int node = lattice.arcFrom(lattice.bestArc(sink)); ; node = lattice.arcFrom(lattice.bestArc(node))) {
                path.add(0, lattice.tag(node));
                if (lattice.bestArc(node) < 0) {
                    return path;
                }
            }
        }
    }

    private static final double[][] RAIN_MOVES = {{0.7, 0.3}, {0.3, 0.7}};
    private static final double[][] UMBRELLA = {{0.9, 0.1}, {0.2, 0.8}};

    /** Umbrella model, Russell and Norvig, 3rd edition, pp. 572 and 575; values as the public code of the book tests. */
    @Test
    void the_umbrella_model_gives_the_published_values() {
        double[] even = {0.5, 0.5};
        Markov twoDays = new Markov(even, RAIN_MOVES, UMBRELLA, 0, 0);
        assertThat(twoDays.smoothed(0, 0)).isCloseTo(0.883, within(5e-4));
        assertThat(twoDays.smoothed(1, 0)).isCloseTo(621.0 / 703, within(1e-12));
        Markov fiveDays = new Markov(even, RAIN_MOVES, UMBRELLA, 0, 0, 1, 0, 0);
        double[] smoothed = {0.8673, 0.8204, 0.3075, 0.8204, 0.8673};
        for (int day = 0; day < smoothed.length; day++) {
            // Printed to four places.
            assertThat(fiveDays.smoothed(day, 0)).isCloseTo(smoothed[day], within(5e-5));
        }
        assertThat(fiveDays.path()).containsExactly(0, 0, 1, 0, 0);
        assertThat(fiveDays.best()).isCloseTo(0.01157, within(5e-6));
        assertThat(fiveDays.total()).isCloseTo(0.0343037005, within(1e-10));
    }

    /** Two-state weather, as the tests of a public library for hidden Markov models give it. */
    @Test
    void the_weather_model_gives_the_published_path_and_shares() {
        Markov weather = new Markov(
                new double[] {0.6, 0.4},
                new double[][] {{0.7, 0.3}, {0.4, 0.6}},
                new double[][] {{0.1, 0.4, 0.5}, {0.6, 0.3, 0.1}},
                0,
                1,
                2);
        assertThat(weather.path()).containsExactly(1, 0, 0);
        assertThat(weather.best()).isCloseTo(0.01344, within(1e-12));
        double[] first = {0.23170303, 0.62406281, 0.86397706};
        for (int day = 0; day < first.length; day++) {
            // The published eight places were computed in another way; the exact first value is 0.23170296.
            assertThat(weather.smoothed(day, 0)).isCloseTo(first[day], within(1e-7));
        }
        assertThat(weather.total()).isCloseTo(0.033612, within(1e-12));
    }

    /** Healthy or feverish, the worked example of an encyclopedia. */
    @Test
    void the_fever_model_gives_the_published_paths() {
        double[] start = {0.6, 0.4};
        double[][] moves = {{0.7, 0.3}, {0.4, 0.6}};
        double[][] signs = {{0.5, 0.4, 0.1}, {0.1, 0.3, 0.6}};
        Markov growing = new Markov(start, moves, signs, 0, 1, 2);
        assertThat(growing.path()).containsExactly(0, 0, 1);
        assertThat(growing.best()).isCloseTo(0.01512, within(1e-12));
        assertThat(growing.total()).isCloseTo(0.03628, within(1e-12));
        assertThat(new Markov(start, moves, signs, 0, 1, 0).best()).isCloseTo(0.0294, within(1e-12));
        Markov falling = new Markov(start, moves, signs, 2, 1, 0);
        assertThat(falling.path()).containsExactly(1, 0, 0);
        assertThat(falling.best()).isCloseTo(0.01344, within(1e-12));
    }

    /** Three states and two signs, from a public worksheet that enumerates all paths. */
    @Test
    void three_states_give_the_published_likelihood_and_path() {
        double third = 1.0 / 3;
        Markov chain = new Markov(
                new double[] {third, third, third},
                new double[][] {{0.3, 0.6, 0.1}, {0.5, 0.2, 0.3}, {0.4, 0.1, 0.5}},
                new double[][] {{0.5, 0.5}, {third, 2 * third}, {0.75, 0.25}},
                0,
                1,
                0);
        assertThat(Math.log(chain.total())).isCloseTo(-2.0918484368, within(1e-10));
        assertThat(chain.path()).containsExactly(0, 1, 0);
        assertThat(chain.best()).isCloseTo(0.0166667, within(5e-8));
    }

    /** The weather chain of Rabiner, Proc. IEEE 77(2), 1989; the product of its eight probabilities is exact. */
    @Test
    void the_weather_chain_gives_the_product_of_its_moves() {
        double[][] seen = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        Markov chain = new Markov(
                new double[] {0, 0, 1},
                new double[][] {{0.4, 0.3, 0.3}, {0.2, 0.6, 0.2}, {0.1, 0.1, 0.8}},
                seen,
                2,
                2,
                2,
                0,
                0,
                2,
                1,
                2);
        assertThat(chain.total()).isCloseTo(1.536e-4, within(1e-16));
    }

    /**
     * With stays of d days at 0.3 times 0.7 to the power of d - 1 and the last stay cut off, the umbrella model is a
     * semi-Markov model and must give what it gave before.
     */
    @Test
    void explicit_stays_that_are_geometric_give_the_umbrella_values_again() {
        int[] seen = {0, 0, 1, 0, 0};
        int days = seen.length;
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int origin = lattice.source(-1, 1);
        lattice.endLayer();
        int[][] ended = new int[days + 1][2];
        for (int day = 1; day <= days; day++) {
            lattice.beginLayer();
            for (int state = 0; state < 2; state++) {
                ended[day][state] = lattice.node(state);
                for (int stay = 1; stay <= day; stay++) {
                    double length = Math.pow(0.7, stay - 1) * (day == days ? 1 : 0.3);
                    for (int each = day - stay; each < day; each++) {
                        length *= UMBRELLA[state][seen[each]];
                    }
                    if (stay == day) {
                        lattice.arc(origin, ended[day][state], 0.5 * length, 0);
                    } else {
                        lattice.arc(ended[day - stay][1 - state], ended[day][state], length, 0);
                    }
                }
            }
            lattice.endLayer();
        }
        lattice.beginLayer();
        int sink = lattice.node(-1);
        Arrays.stream(ended[days]).forEach(node -> lattice.arc(node, sink, 1, 0));
        lattice.endLayer();
        assertThat(Math.exp(lattice.logSum(sink))).isCloseTo(0.0343037005, within(1e-10));
        assertThat(Math.exp(lattice.logBest(sink))).isCloseTo(0.011573604, within(1e-9));
    }

    @Test
    void a_long_lattice_neither_underflows_nor_overflows() {
        Lattice lattice = new Lattice();
        lattice.beginLayer();
        int last = lattice.source(0, 1);
        lattice.endLayer();
        for (int i = 0; i < 20_000; i++) {
            lattice.beginLayer();
            int next = lattice.node(0);
            lattice.arc(last, next, i < 10_000 ? 1e-30 : 1e30, 0);
            lattice.endLayer();
            last = next;
        }
        assertThat(lattice.logSum(last)).isCloseTo(0, within(1e-6));
    }
}
