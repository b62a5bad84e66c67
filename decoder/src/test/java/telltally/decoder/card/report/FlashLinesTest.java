package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class FlashLinesTest {
    private static final long MILLISECOND = 1_000_000L;
    private static final long SECOND = 1000 * MILLISECOND;

    private static List<String> lines(long endNanos, long... edgesNanos) {
        return FlashLines.text(PulseTrain.of(false, endNanos, edgesNanos))
                .lines()
                .toList();
    }

    private static String line(int second, String letters) {
        return String.format("  %5d s  ", second) + letters;
    }

    private static String dark(int tenths) {
        return ".".repeat(tenths);
    }

    @Test
    void a_line_is_ten_seconds_and_a_letter_a_tenth() {
        assertThat(lines(10 * SECOND, SECOND, 2 * SECOND))
                .containsExactly(line(0, dark(10) + "#".repeat(10) + dark(80)));
        assertThat(lines(10 * SECOND + 1, SECOND, 2 * SECOND)).hasSize(2).last().isEqualTo(line(10, "."));
    }

    @Test
    void long_darkness_is_shortened_once_it_is_longer_than_a_line() {
        long lit = 100 * MILLISECOND;
        assertThat(lines(30 * SECOND, lit, 2 * lit, 20 * SECOND, 21 * SECOND))
                .containsExactly(line(0, ".#" + dark(98)), line(10, dark(100)), line(20, "#".repeat(10) + dark(90)));
        assertThat(lines(40 * SECOND, lit, 2 * lit, 30 * SECOND, 31 * SECOND))
                .containsExactly(
                        line(0, ".#" + dark(98)),
                        line(10, dark(100)),
                        "           and dark on",
                        line(30, "#".repeat(10) + dark(90)));
        assertThat(lines(60 * SECOND, lit, 2 * lit, 50 * SECOND, 51 * SECOND))
                .containsExactly(
                        line(0, ".#" + dark(98)),
                        line(10, dark(100)),
                        "           and dark on",
                        line(50, "#".repeat(10) + dark(90)));
    }

    @Test
    void a_tenth_is_what_it_is_for_the_greater_part_and_lit_if_both_are_alike() {
        assertThat(lines(300 * MILLISECOND, 149 * MILLISECOND)).containsExactly(line(0, ".##"));
        assertThat(lines(300 * MILLISECOND, 150 * MILLISECOND)).containsExactly(line(0, ".##"));
        assertThat(lines(300 * MILLISECOND, 151 * MILLISECOND)).containsExactly(line(0, "..#"));
    }

    @Test
    void a_whole_flash_or_gap_within_a_tenth_is_seen() {
        assertThat(lines(300 * MILLISECOND, 120 * MILLISECOND, 130 * MILLISECOND))
                .containsExactly(line(0, ".+."));
        assertThat(lines(400 * MILLISECOND, 100 * MILLISECOND, 220 * MILLISECOND, 230 * MILLISECOND))
                .containsExactly(line(0, ".#+#"));
        assertThat(lines(300 * MILLISECOND, 110 * MILLISECOND, 120 * MILLISECOND, 130 * MILLISECOND))
                .containsExactly(line(0, ".+#"));
    }

    @Test
    void an_edge_at_the_end_of_a_tenth_is_no_news_of_that_tenth() {
        assertThat(lines(300 * MILLISECOND, 140 * MILLISECOND, 200 * MILLISECOND))
                .containsExactly(line(0, ".#."));
    }

    @Test
    void after_three_quarters_of_an_hour_only_the_end_is_told() {
        long most = 2700 * SECOND;
        assertThat(lines(most, SECOND, most - SECOND))
                .hasSize(270)
                .last()
                .isEqualTo(line(2690, "#".repeat(90) + dark(10)));
        assertThat(lines(most + 1500 * MILLISECOND, SECOND, most - SECOND))
                .hasSize(271)
                .last()
                .isEqualTo("  and so on, to 2701.5 s");
    }
}
