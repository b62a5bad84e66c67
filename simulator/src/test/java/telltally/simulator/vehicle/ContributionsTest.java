package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ContributionsTest {
    /** Worked Morse test at ques10.com/p/49597: 32.2 kW all firing; efficiency 80.5 percent. */
    @Test
    void a_morse_test_is_booked_as_in_the_worked_example() {
        Contributions kilowatts = Contributions.of(32.2, 22, 21.8, 22.2, 22.8);

        // Readings have one decimal; what is left is the rounding of doubles.
        assertThat(kilowatts.drop(1)).isCloseTo(10.2, within(1e-12));
        assertThat(kilowatts.drop(2)).isCloseTo(10.4, within(1e-12));
        assertThat(kilowatts.drop(3)).isCloseTo(10.0, within(1e-12));
        assertThat(kilowatts.drop(4)).isCloseTo(9.4, within(1e-12));
        assertThat(kilowatts.sum()).isCloseTo(40, within(1e-12));
        assertThat(32.2 / kilowatts.sum()).isCloseTo(0.805, within(1e-12));
    }

    @Test
    void the_others_are_all_but_one() {
        assertThat(Contributions.of(10, 9, 8, 7).meanOfOthers(2)).isEqualTo(2);
    }

    @Test
    void one_cylinder_has_nothing_to_compare_with() {
        assertThatThrownBy(() -> Contributions.of(10, 9)).isInstanceOf(IllegalArgumentException.class);
    }
}
