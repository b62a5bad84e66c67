package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    private static Calibration with(int index, Calibration.Bin bin) {
        List<Calibration.Bin> bins = new ArrayList<>(Calibration.NOTHING.bins());
        bins.set(index, bin);
        return new Calibration(bins);
    }

    @Test
    void a_probability_belongs_to_the_bin_that_begins_at_or_below_it() {
        assertThat(Calibration.bin(0)).isZero();
        assertThat(Calibration.bin(49_999)).isZero();
        assertThat(Calibration.bin(50_000)).isEqualTo(1);
        assertThat(Calibration.bin(999_999)).isEqualTo(19);
        assertThat(Calibration.bin(Calibration.MILLION)).isEqualTo(19);
    }

    /**
     * By the definition in Naeini, Cooper &amp; Hauskrecht 2015: of ten codes given 0.9 eight were right, of thirty given
     * 0.6 eighteen; so 10/40 times 0.1, and nothing for the others.
     */
    @Test
    void the_error_weighs_each_bin_by_its_codes() {
        Calibration nine = with(18, new Calibration.Bin(10, 8, 9 * Calibration.MILLION));
        Calibration six = with(12, new Calibration.Bin(30, 18, 18 * Calibration.MILLION));
        assertThat(nine.plus(six).expectedError()).contains(new BigDecimal("0.025000"));
        assertThat(nine.plus(six)).isEqualTo(six.plus(nine));
    }

    @Test
    void without_probabilities_there_is_no_error() {
        assertThat(Calibration.NOTHING.expectedError()).isEmpty();
    }
}
