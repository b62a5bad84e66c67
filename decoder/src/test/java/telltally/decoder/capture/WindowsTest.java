package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

class WindowsTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void what_is_three_seconds_away_is_near_and_what_is_a_nanosecond_farther_is_not() {
        Windows windows = new Windows(new long[] {0, 3 * SECOND, 6 * SECOND + 1});
        assertThat(windows.size()).isEqualTo(3);
        assertThat(windows.from(1)).isEqualTo(0);
        assertThat(windows.to(1)).isEqualTo(2);
        assertThat(windows.from(2)).isEqualTo(2);
        assertThat(windows.to(2)).isEqualTo(3);
        assertThat(windows.to(0)).isEqualTo(2);
    }

    @Test
    void the_highest_and_the_lowest_nearby_are_those_that_a_search_finds() {
        Chance chance = Chance.of(5);
        long[] atNanos = new long[300];
        double[] values = new double[300];
        for (int i = 0; i < 300; i++) {
            atNanos[i] = (i == 0 ? 0 : atNanos[i - 1]) + 1 + chance.below(2000) * (SECOND / 1000);
            values[i] = chance.below(9) - 4;
        }
        Windows windows = new Windows(atNanos);
        double[] highest = windows.highest(values);
        double[] lowest = windows.lowest(values);
        for (int i = 0; i < 300; i++) {
            int at = i;
            double[] near = IntStream.range(0, 300)
                    .filter(j -> Math.abs(atNanos[j] - atNanos[at]) <= Windows.HALF_NANOS)
                    .mapToDouble(j -> values[j])
                    .toArray();
            assertThat(highest[i]).isEqualTo(Arrays.stream(near).max().orElseThrow());
            assertThat(lowest[i]).isEqualTo(Arrays.stream(near).min().orElseThrow());
            assertThat(windows.to(i) - windows.from(i)).isEqualTo(near.length);
        }
    }
}
