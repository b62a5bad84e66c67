package telltally.simulator.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SampledSignalTest {
    @Test
    void keeps_values_at_uneven_instants() {
        SampledSignal signal = SampledSignal.of(new long[] {-5, 0, 7}, new double[] {1, 2.5, -3});

        assertThat(signal.size()).isEqualTo(3);
        assertThat(signal.atNanos(0)).isEqualTo(-5);
        assertThat(signal.value(1)).isEqualTo(2.5);
        assertThat(signal).hasToString("3 samples");
    }

    @Test
    void keeps_copies_of_what_it_was_made_from() {
        long[] at = {0, 1};
        double[] values = {0, 1};
        SampledSignal signal = SampledSignal.of(at, values);
        at[0] = -1;
        values[0] = 9;

        assertThat(signal).isEqualTo(SampledSignal.of(new long[] {0, 1}, new double[] {0, 1}));
        assertThat(signal).hasSameHashCodeAs(SampledSignal.of(new long[] {0, 1}, new double[] {0, 1}));
        assertThat(signal).isNotEqualTo(SampledSignal.of(new long[] {0, 2}, new double[] {0, 1}));
        assertThat(signal).isNotEqualTo(SampledSignal.of(new long[] {0, 1}, new double[] {0, 2}));
    }

    @Test
    void refuses_what_is_no_signal() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampledSignal.of(new long[] {0, 1}, new double[] {0}))
                .withMessage("2 instants for 1 values");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampledSignal.of(new long[] {3, 3}, new double[] {0, 0}))
                .withMessage("sample 1 at 3 ns is not after the one before");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SampledSignal.of(new long[] {0}, new double[] {Double.NaN}))
                .withMessage("sample 0 is NaN");
    }
}
