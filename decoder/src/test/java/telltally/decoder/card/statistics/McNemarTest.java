package telltally.decoder.card.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class McNemarTest {
    /**
     * The same people asked twice, 28 and 35 of whom changed their minds: R's {@code binom.test(c(35, 28))} gives 0.45,
     * printed to two figures (S. Aoki, "McNemar test with R", aoki2.si.gunma-u.ac.jp/lecture/Hiritu/McNemar-test-r.html).
     */
    @Test
    void a_worked_example_with_the_exact_test() {
        assertThat(McNemar.pValue(35, 28)).isCloseTo(0.45, within(0.005));
    }

    /** Sums of binomial coefficients in whole numbers, by hand: 2 (1 + 10) / 1024 for one of ten, and so on. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1",
        "5, 5, 1",
        "0, 1, 1",
        "0, 5, 0.0625",
        "0, 6, 0.03125",
        "1, 9, 0.021484375",
        "9, 1, 0.021484375",
        "2, 8, 0.109375",
        "4, 5, 1",
    })
    void small_splits_are_exact(long gained, long lost, double p) {
        assertThat(McNemar.pValue(gained, lost)).isCloseTo(p, within(1e-15));
    }

    @Property(tries = 100)
    void it_is_the_binomial_tail_in_whole_numbers(
            @ForAll @IntRange(max = 400) int gained, @ForAll @IntRange(max = 400) int lost) {
        int changed = gained + lost;
        BigInteger coefficient = BigInteger.ONE;
        BigInteger tail = BigInteger.ZERO;
        for (int k = 0; k <= Math.min(gained, lost); k++) {
            tail = tail.add(coefficient);
            coefficient = coefficient.multiply(BigInteger.valueOf(changed - k)).divide(BigInteger.valueOf(k + 1L));
        }
        double exact = new BigDecimal(tail.shiftLeft(1))
                .divide(new BigDecimal(BigInteger.ONE.shiftLeft(changed)), MathContext.DECIMAL64)
                .doubleValue();
        assertThat(McNemar.pValue(gained, lost)).isCloseTo(Math.min(1, exact), within(1e-12));
    }

    /** With many changes the test is that of McNemar's paper, (b - c)^2 / (b + c): 3.84 is 0.05 of chi-square. */
    @Test
    void of_very_many_changes_it_agrees_with_the_normal_law() {
        long changed = 1_000_000;
        long half = Math.round(1.96 * Math.sqrt((double) changed) / 2);
        assertThat(McNemar.pValue(changed / 2 + half, changed / 2 - half)).isCloseTo(0.05, within(0.0005));
        assertThat(McNemar.pValue(0, 100_000)).isZero();
    }

    @Test
    void less_than_nothing_cannot_change() {
        assertThatThrownBy(() -> McNemar.pValue(-1, 3)).isInstanceOf(IllegalArgumentException.class);
    }
}
