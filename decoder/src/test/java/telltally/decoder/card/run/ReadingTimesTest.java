package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReadingTimesTest {
    @Test
    void quantiles_are_at_most_an_eighth_too_great_and_sums_add_up() {
        ReadingTimes times = new ReadingTimes();
        for (int i = 1; i <= 1000; i++) {
            times.add(i * 1000L);
        }
        assertThat(times.quantileNanos(50)).isBetween(500_000L, 562_500L);
        assertThat(times.quantileNanos(99)).isBetween(990_000L, 1_000_000L);
        ReadingTimes both = new ReadingTimes();
        both.add(7);
        both.add(times);
        assertThat(both.sessions()).isEqualTo(1001);
        assertThat(both.totalNanos()).isEqualTo(500_500_007L);
        assertThat(both.longestNanos()).isEqualTo(1_000_000L);
        assertThat(both.quantileNanos(0)).isEqualTo(7);
        assertThat(both.quantileNanos(50)).isEqualTo(times.quantileNanos(50));
    }

    @Test
    void without_sessions_there_are_no_times() {
        assertThat(new ReadingTimes().quantileNanos(50)).isZero();
    }

    @Test
    void the_shortest_and_the_longest_have_bins() {
        for (long nanos : new long[] {1, 2, 3, 7, 8, 9, 1023, 1024, Long.MAX_VALUE / 2}) {
            ReadingTimes one = new ReadingTimes();
            one.add(nanos);
            assertThat(one.quantileNanos(50)).isEqualTo(nanos);
        }
    }
}
