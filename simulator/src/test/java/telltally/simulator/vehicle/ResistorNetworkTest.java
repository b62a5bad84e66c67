package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

class ResistorNetworkTest {
    private static final Node TOP = new Node("top");
    private static final Node LEFT = new Node("left");
    private static final Node RIGHT = new Node("right");

    private final ResistorNetwork network = new ResistorNetwork();

    @Test
    void a_divider_divides() {
        network.join(TOP, LEFT, 10_000);
        network.join(LEFT, Node.GROUND, 2_500);

        assertThat(network.volts(Map.of(TOP, 5.0, Node.GROUND, 0.0)).get(LEFT)).isCloseTo(1.0, within(1e-15));
    }

    @Test
    void a_balanced_bridge_carries_nothing_across() {
        network.join(TOP, LEFT, 100);
        network.join(LEFT, Node.GROUND, 200);
        network.join(TOP, RIGHT, 1_000);
        network.join(RIGHT, Node.GROUND, 2_000);
        network.join(LEFT, RIGHT, 7);

        Map<Node, Double> volts = network.volts(Map.of(TOP, 12.0, Node.GROUND, 0.0));

        assertThat(volts.get(LEFT)).isCloseTo(8.0, within(1e-14));
        assertThat(volts.get(RIGHT)).isCloseTo(8.0, within(1e-14));
    }

    /** A cube of equal resistors has 5/6 of one between opposite corners; a classic of the textbooks. */
    @Test
    void a_cube_of_resistors_has_five_sixths_between_its_far_corners() {
        for (int corner = 0; corner < 8; corner++) {
            for (int bit = 1; bit < 8; bit *= 2) {
                if ((corner & bit) == 0) {
                    network.join(new Node("" + corner), new Node("" + (corner | bit)), 6);
                }
            }
        }

        assertThat(network.ohms(new Node("0"), new Node("7"))).isCloseTo(5.0, within(1e-14));
    }

    @Test
    void nothing_between_two_nodes_is_infinite_ohms() {
        network.join(TOP, LEFT, 1);
        network.join(RIGHT, Node.GROUND, 1);
        network.join(TOP, RIGHT, Double.POSITIVE_INFINITY);

        assertThat(network.ohms(TOP, RIGHT)).isInfinite();
        assertThat(network.ohms(TOP, TOP)).isZero();
    }

    @Test
    void what_no_source_reaches_has_no_volts() {
        network.join(LEFT, RIGHT, 1);
        network.join(TOP, Node.GROUND, 1);

        assertThat(network.volts(Map.of(TOP, 5.0, Node.GROUND, 0.0)))
                .containsEntry(LEFT, 0.0)
                .containsEntry(RIGHT, 0.0);
    }

    @Test
    void resistors_that_are_none_are_refused() {
        assertThatThrownBy(() -> network.join(TOP, LEFT, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> network.ohms(TOP, LEFT)).hasMessageContaining("top");
    }

    /** The reference: nodal analysis, the conductance matrix solved by hipparchus' LU decomposition. */
    @Property(tries = 200)
    void random_networks_are_solved_as_a_linear_algebra_library_solves_them(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int free) {
        ResistorNetwork drawn = new ResistorNetwork();
        Chance chance = Chance.of(seed);
        RealMatrix matrix = new Array2DRowRealMatrix(free, free);
        RealVector currents = new ArrayRealVector(free);
        for (int i = 0; i < free; i++) {
            double toGround = ohms(chance);
            double toTop = ohms(chance);
            drawn.join(node(i), Node.GROUND, toGround);
            drawn.join(node(i), TOP, toTop);
            matrix.addToEntry(i, i, 1 / toGround + 1 / toTop);
            currents.addToEntry(i, 12 / toTop);
            for (int j = 0; j < i; j++) {
                double between = ohms(chance);
                drawn.join(node(i), node(j), between);
                matrix.addToEntry(i, i, 1 / between);
                matrix.addToEntry(j, j, 1 / between);
                matrix.addToEntry(i, j, -1 / between);
                matrix.addToEntry(j, i, -1 / between);
            }
        }
        RealVector expected = new LUDecomposition(matrix).getSolver().solve(currents);

        Map<Node, Double> volts = drawn.volts(Map.of(TOP, 12.0, Node.GROUND, 0.0));

        for (int i = 0; i < free; i++) {
            // The reference loses up to six digits, as resistances range over six decades.
            assertThat(volts.get(node(i))).isCloseTo(expected.getEntry(i), within(1e-8));
        }
    }

    private static double ohms(Chance chance) {
        return StrictMath.pow(10, chance.between(-1, 5));
    }

    private static Node node(int number) {
        return new Node("node " + number);
    }
}
