package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.FlashFormat;

class SignTableTest {
    private static SignTable of(FlashFormat format) {
        return new SignTable(format.shape(), new Lengths(format));
    }

    @Test
    void a_digit_needs_its_kind_of_flash_and_a_count_that_the_place_has() {
        FlashFormat format = Trains.shipped("long-short");
        SignTable table = of(format);
        Lengths lengths = new Lengths(format);
        int longKind = lengths.nearestKind(Lengths.log(1_200_000_000L));
        int shortKind = lengths.nearestKind(Lengths.log(400_000_000L));

        assertThat(table.digit(0, longKind, 3)).isEqualTo("3");
        assertThat(table.digit(1, shortKind, 4)).isEqualTo("4");
        assertThat(table.digit(0, shortKind, 3)).isEmpty();
        assertThat(table.digit(1, longKind, 4)).isEmpty();
        assertThat(table.digit(0, longKind, 10)).isEmpty();
        assertThat(table.longestSign()).isZero();
        assertThat(table.sign(List.of(longKind))).isEmpty();
    }

    @Test
    void of_eighty_one_codes_each_costs_the_logarithm_of_eighty_one() {
        assertThat(of(Trains.shipped("pair-even")).cost(2)).isCloseTo(Math.log(81), within(1e-9));
        assertThat(of(Trains.shipped("count-loop")).cost(2)).isCloseTo(Math.log(15), within(1e-9));
    }

    @Test
    void a_spelled_code_costs_the_more_the_more_signs_it_has() {
        SignTable table = of(OwnFormatTest.telegraphy());

        assertThat(table.longestSign()).isEqualTo(5);
        assertThat(table.cost(1)).isCloseTo(Math.log(9), within(1e-9));
        assertThat(table.cost(3)).isCloseTo(3 * Math.log(9), within(1e-9));
    }
}
