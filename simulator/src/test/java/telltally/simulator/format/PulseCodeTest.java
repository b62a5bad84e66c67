package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outside check: other published codes that are read by counting pulses. */
class PulseCodeTest {
    /**
     * Decadic signalling, 10 pulses a second with 61 ms break and 39 ms make, 800 ms between digits
     * (3amsystems.com signalling guide; a modem handbook, p. 92). In the file a gap runs from break to break, so that
     * the pause between digits has the last make in it.
     */
    @Test
    void the_number_20_takes_200_and_800_and_1000_milliseconds() {
        Transmission sent = send("dial", "20");

        assertThat(OnOff.of(sent.lamp()))
                .isEqualTo(OnOff.spelled(
                        "0.061 0.039 0.061",
                        "0.839",
                        "0.061 0.039 0.061 0.039 0.061 0.039 0.061 0.039 0.061 0.039",
                        "0.061 0.039 0.061 0.039 0.061 0.039 0.061 0.039 0.061"));
        SentGroup number = sent.groups().get(0);
        long lastMakeNanos = 39_000_000L;
        assertThat(number.endNanos() + lastMakeNanos - number.startNanos()).isEqualTo(2_000_000_000L);
    }

    @Test
    void the_line_rests_closed_and_is_opened_by_each_pulse() {
        assertThat(send("dial", "11").lamp().litAtStart()).isTrue();
    }

    /** The same source: the usual map, the reversed one of one country, the offset one of another. */
    @ParameterizedTest
    @CsvSource({
        "dial,          1 2 3 4 5 6 7 8 9 10",
        "dial-reversed, 9 8 7 6 5 4 3 2 1 10",
        "dial-offset,   2 3 4 5 6 7 8 9 10 1",
    })
    void which_digit_is_how_many_pulses_is_for_the_file_to_say(String format, String pulsesOf1To9And0) {
        String digits = "1234567890";
        for (int i = 0; i < digits.length(); i++) {
            String twice = digits.substring(i, i + 1).repeat(2);
            List<SentGroup.SentSign> signs = send(format, twice).groups().get(0).signs();
            int expected = Integer.parseInt(OnOff.spelled(pulsesOf1To9And0).get(i));
            assertThat(signs).hasSize(2).allSatisfy(sign -> {
                assertThat(twice).startsWith(sign.text());
                assertThat(sign.flashes()).hasSize(expected);
            });
        }
    }

    /** ISO 8201, as quoted in a building code's appendix (B-3.2.4.18.(2)); the cycle is the sum. */
    @Test
    void the_evacuation_signal_is_three_half_seconds_and_a_pause_in_a_cycle_of_4_seconds() {
        Transmission sent = send("three-pulse", "3");

        assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled("0.5 0.5 0.5 0.5 0.5", "1.5", "0.5 0.5 0.5 0.5 0.5"));
        assertThat(cycleNanos(sent)).isEqualTo(4_000_000_000L);
    }

    /** A published sounder data sheet (4549, p. 13): four pulses of 100 ms, cycle 5.8 s. */
    @Test
    void the_carbon_monoxide_signal_is_four_tenths_in_a_cycle_of_5_8_seconds() {
        Transmission sent = send("four-pulse", "4");

        assertThat(OnOff.of(sent.lamp()))
                .isEqualTo(OnOff.spelled("0.1 0.1 0.1 0.1 0.1 0.1 0.1", "5.1", "0.1 0.1 0.1 0.1 0.1 0.1 0.1"));
        assertThat(cycleNanos(sent)).isEqualTo(5_800_000_000L);
    }

    private static long cycleNanos(Transmission sent) {
        return sent.groups().get(1).startNanos() - sent.groups().get(0).startNanos();
    }

    private static Transmission send(String format, String code) {
        return new Encoder(TestFormats.read(format)).encode(new Message.Codes(List.of(code)), Pacing.usual());
    }
}
