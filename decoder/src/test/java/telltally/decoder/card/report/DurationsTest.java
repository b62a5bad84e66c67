package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DurationsTest {
    @ParameterizedTest
    @CsvSource({
        "40, 0.04 us",
        "86_400, 86 us",
        "999_000, 1000 us",
        "1_000_000, 1 ms",
        "1_240_000, 1.2 ms",
        "123_000_000, 120 ms",
        "1_000_000_000, 1 s",
        "65_000_000_000, 65 s",
    })
    void lengths_of_time_have_two_figures_and_the_unit_that_suits_them(String nanos, String text) {
        assertThat(Durations.text(Long.parseLong(nanos.replace("_", "")))).isEqualTo(text);
    }
}
