package telltally.decoder.card.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DecimalsTest {
    @Test
    void only_all_of_them_are_all_of_them() {
        assertThat(Decimals.percent(100_000, 100_000)).isEqualTo("100.0");
        assertThat(Decimals.percent(99_999, 100_000)).isEqualTo("99.9");
        assertThat(Decimals.percent(2, 3)).isEqualTo("66.7");
        assertThat(Decimals.share(2, 3, 6)).isEqualTo("0.666667");
        assertThat(Decimals.share(99_999_999, 100_000_000, 6)).isEqualTo("0.999999");
        assertThat(Decimals.share(0, 7, 6)).isEqualTo("0.000000");
    }

    @Test
    void the_ends_of_an_interval_are_rounded_outwards() {
        assertThat(Decimals.down(99.96, 1)).isEqualTo("99.9");
        assertThat(Decimals.up(99.91, 1)).isEqualTo("100.0");
        assertThat(Decimals.down(0.25, 2)).isEqualTo("0.25");
        assertThat(Decimals.up(0.25, 2)).isEqualTo("0.25");
    }

    @Test
    void large_numbers_have_commas() {
        assertThat(Decimals.grouped(7)).isEqualTo("7");
        assertThat(Decimals.grouped(123)).isEqualTo("123");
        assertThat(Decimals.grouped(1_234)).isEqualTo("1,234");
        assertThat(Decimals.grouped(1_234_567)).isEqualTo("1,234,567");
        assertThat(Decimals.grouped(-123)).isEqualTo("-123");
    }

    @Test
    void chance_is_never_written_as_nothing() {
        assertThat(Decimals.chance(0.0131)).isEqualTo("0.013");
        assertThat(Decimals.chance(0)).isEqualTo("below 0.001");
    }
}
