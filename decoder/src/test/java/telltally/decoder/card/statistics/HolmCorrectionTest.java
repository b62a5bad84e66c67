package telltally.decoder.card.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HolmCorrectionTest {
    /**
     * By the rule of Holm 1979: the smallest of four is multiplied by four, the next by three, and none falls below one
     * before it.
     */
    @Test
    void the_smallest_is_raised_most_and_the_order_is_kept() {
        List<Double> raised = HolmCorrection.adjusted(List.of(0.01, 0.04, 0.03, 0.005));
        assertThat(raised).hasSize(4);
        assertThat(raised.get(0)).isCloseTo(0.03, within(1e-15));
        assertThat(raised.get(1)).isCloseTo(0.06, within(1e-15));
        assertThat(raised.get(2)).isCloseTo(0.06, within(1e-15));
        assertThat(raised.get(3)).isCloseTo(0.02, within(1e-15));
    }

    @Test
    void one_test_stays_as_it_is_and_nothing_rises_above_certainty() {
        assertThat(HolmCorrection.adjusted(List.of(0.04))).containsExactly(0.04);
        assertThat(HolmCorrection.adjusted(List.of(0.9, 0.8))).containsExactly(1.0, 1.0);
        assertThat(HolmCorrection.adjusted(List.of())).isEmpty();
    }
}
