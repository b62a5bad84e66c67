package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TabledLogTest {
    /** Logarithms of 2, 3, 7 and 10 as in Abramowitz and Stegun, Handbook of Mathematical Functions, table 1.1. */
    @Test
    void agrees_with_the_printed_table_to_six_places() {
        assertThat(TabledLog.of(2)).isCloseTo(0.693147180559945, within(1e-12));
        assertThat(TabledLog.of(3)).isCloseTo(1.098612288668110, within(1e-6));
        assertThat(TabledLog.of(7)).isCloseTo(1.945910149055313, within(1e-6));
        assertThat(TabledLog.of(10)).isCloseTo(2.302585092994046, within(1e-6));
        assertThat(TabledLog.of(1)).isZero();
    }

    @Property
    void agrees_with_the_library_to_six_places(
            @ForAll @DoubleRange(min = 1, max = 2) @Scale(15) double mantissa,
            @ForAll @IntRange(min = -1000, max = 1000) int exponent) {
        double value = Math.scalb(mantissa, exponent);
        assertThat(TabledLog.of(value)).isCloseTo(StrictMath.log(value), within(1e-6));
    }
}
