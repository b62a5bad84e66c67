package telltally.decoder.card.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WilsonIntervalTest {
    /**
     * Package binom of R, as stored in {@code results_proportion.py} of statsmodels at 1a63aa7; ten digits, so that the
     * last one may be rounded.
     */
    @ParameterizedTest
    @CsvSource({
        "18, 20, 0.6989663548, 0.9721335188",
        "4, 20, 0.0806576626, 0.4160174323",
        "4, 200, 0.0078044264, 0.0502870869",
        "190, 200, 0.9104218519, 0.9726173544",
        "0, 30, 0, 0.11351339",
        "30, 30, 0.8864866, 1",
    })
    void intervals_are_those_that_another_program_gives(long right, long all, double low, double high) {
        WilsonInterval interval = WilsonInterval.of(right, all);
        assertThat(interval.low()).isCloseTo(low, within(5e-8));
        assertThat(interval.high()).isCloseTo(high, within(5e-8));
    }

    /** The four cases of Newcombe 1998, Statistics in Medicine 17:857-872, table I; cases from memory. */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2553, 0.3662",
        "15, 148, 0.0624, 0.1605",
        "0, 20, 0.0000, 0.1611",
        "1, 29, 0.0061, 0.1718",
    })
    void intervals_are_those_of_the_published_comparison(long right, long all, double low, double high) {
        WilsonInterval interval = WilsonInterval.of(right, all);
        assertThat(interval.low()).isCloseTo(low, within(5.1e-5));
        assertThat(interval.high()).isCloseTo(high, within(5.1e-5));
    }

    @Test
    void of_nothing_nothing_is_known() {
        assertThat(WilsonInterval.of(0, 0)).isEqualTo(new WilsonInterval(0, 1));
        assertThatThrownBy(() -> WilsonInterval.of(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 200)
    void the_share_lies_within_and_wrong_mirrors_right(
            @ForAll @IntRange(min = 1, max = 100_000) int all, @ForAll @IntRange(max = 1_000_000) int draw) {
        long right = draw % (all + 1L);
        WilsonInterval interval = WilsonInterval.of(right, all);
        WilsonInterval wrong = WilsonInterval.of(all - right, all);
        assertThat(interval.low()).isBetween(0.0, (double) right / all);
        assertThat(interval.high()).isBetween((double) right / all, 1.0);
        assertThat(wrong.low()).isCloseTo(1 - interval.high(), within(1e-12));
        assertThat(wrong.high()).isCloseTo(1 - interval.low(), within(1e-12));
    }
}
