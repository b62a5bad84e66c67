package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.special.Erf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTailTest {
    /** Table of Q in appendix F of a textbook on wireless communications, five decimals. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.50000",
        "0.5, 0.30854",
        "1, 0.15866",
        "1.5, 0.06681",
        "2, 0.02275",
        "2.5, 0.00621",
        "3, 0.00135",
        "3.5, 0.00023",
        "3.9, 0.00005"
    })
    void the_printed_table_is_met(double z, double tail) {
        assertThat(NormalTail.beyond(z)).isCloseTo(tail, within(0.000005));
        assertThat(NormalTail.beyond(-z)).isCloseTo(1 - tail, within(0.000005));
    }

    /** More digits, worked out apart from this program. */
    @ParameterizedTest
    @CsvSource({"4, 3.167124e-5", "5, 2.866516e-7", "6, 9.865876e-10"})
    void far_tails_keep_their_digits(double z, double tail) {
        assertThat(NormalTail.beyond(z)).isCloseTo(tail, within(tail * 1e-6));
    }

    @Property
    void the_tail_is_that_of_a_library(@ForAll @DoubleRange(min = 0, max = 20) double z) {
        double expected = Erf.erfc(z / StrictMath.sqrt(2)) / 2;

        assertThat(NormalTail.beyond(z)).isCloseTo(expected, within(expected * 1e-10));
    }
}
