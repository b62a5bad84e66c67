package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Why a format cannot send a message, in the words that an instructor reads. */
class MessageTest {
    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of(
                        "pair-even",
                        keyOn("40"),
                        "40: the digit 0 at place 2 cannot be sent; this format sends 1 2 3 4 5 6 7 8 9"),
                Arguments.of(
                        "triple-even",
                        new Message.KeyOn(List.of(), List.of("104")),
                        "104: the digit 0 at place 2 cannot be sent; this format sends 1 2 3 4 5 6 7 8 9"),
                Arguments.of("pair-even", keyOn("7"), "7: has 1 digit; this format sends 2"),
                Arguments.of("pair-even", keyOn("123"), "123: has 3 digits; this format sends 2"),
                Arguments.of("pair-even", keyOn(""), "a code without digits: has 0 digits; this format sends 2"),
                Arguments.of(
                        "pair-even",
                        keyOn("1x"),
                        "1x: the digit x at place 2 cannot be sent; this format sends 1 2 3 4 5 6 7 8 9"),
                Arguments.of(
                        "count-loop",
                        codes("16"),
                        "16: cannot be sent; this format sends 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15"),
                Arguments.of(
                        "count-loop",
                        codes("0"),
                        "0: cannot be sent; this format sends 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15"),
                Arguments.of("count-loop", codes(""), "a code without digits: has 0 digits; this format sends 1"),
                Arguments.of(
                        "long-short", codes("23", "23"), "a code stands twice in one list; a list has each code once"),
                Arguments.of("long-short", keyOn("23"), "the format long-short knows no segments"),
                Arguments.of("pair-even", codes("23"), "the format pair-even sends its codes in segments"),
                Arguments.of(
                        "pair-even",
                        new Message.Running(5, false, List.of()),
                        "cylinder flashes are half the number of cylinders; 5 has no whole half"),
                Arguments.of(
                        "pair-even",
                        new Message.Running(0, false, List.of()),
                        "cylinder flashes are half the number of cylinders; 0 has no whole half"),
                Arguments.of("pair-even", new Message.Balance(0), "a balance result is 1 to 9 flashes, not 0"),
                Arguments.of("pair-even", new Message.Balance(40), "a balance result is 1 to 9 flashes, not 40"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void what_cannot_be_sent_is_refused_with_the_reason(String id, Message message, String reason) {
        FlashFormat format = TestFormats.shipped(id);

        assertThat(message.refusal(format)).contains(reason);
        assertThatThrownBy(() -> new Encoder(format).encode(message, Pacing.usual()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(reason);
    }

    @Test
    void a_word_that_is_too_long_is_refused() {
        FlashFormat format = TestFormats.read("telegraphy-20");

        assertThat(codes("E".repeat(30)).refusal(format)).isEmpty();
        assertThat(codes("E".repeat(31)).refusal(format))
                .contains("E".repeat(31) + ": has 31 signs; this format sends 1 to 30");
    }

    @Test
    void a_format_that_counts_a_zero_sends_it() {
        assertThat(codes("20").refusal(TestFormats.read("dial"))).isEmpty();
    }

    private static Message keyOn(String code) {
        return new Message.KeyOn(List.of(code), List.of());
    }

    private static Message.Codes codes(String... codes) {
        return new Message.Codes(List.of(codes));
    }
}
