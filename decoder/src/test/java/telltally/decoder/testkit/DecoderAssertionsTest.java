package telltally.decoder.testkit;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.plain.PlainDecoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;

class DecoderAssertionsTest {
    private static final FlashFormat EVEN =
            FormatCatalog.shipped().find("pair-even").orElseThrow();
    private static final Session FOUR =
            new MessageSession(EVEN, new Message.KeyOn(List.of("31", "29"), List.of("11")), Noise.NONE, 0);
    private static final Session TWO =
            new MessageSession(EVEN, new Message.KeyOn(List.of("31"), List.of()), Noise.NONE, 0);

    @Test
    void what_is_read_right_passes_told_the_format_or_not() {
        assertThatCode(() -> DecoderAssertions.assertReadsTold(new PlainDecoder(), FOUR))
                .doesNotThrowAnyException();
        assertThatCode(() -> DecoderAssertions.assertReads(
                        new LatticeDecoder(), FOUR, FormatCatalog.shipped().all()))
                .doesNotThrowAnyException();
    }

    @Test
    void what_is_misread_is_shown_beside_what_was_sent() {
        assertThatThrownBy(() -> DecoderAssertions.assertReadsTold(BrokenDecoders.countingToEight(), FOUR))
                .isInstanceOf(AssertionError.class)
                .hasMessage("""
                        counts-to-eight read something else than was sent
                        pair-even: present 31 29, stored 11; nothing spoiled
                          sent present 31 29, stored 11
                          read present 31 28, stored 11, as pair-even
                            sent                      read                      at       light (# lit, . dark)
                            code present 31           code present 31           3.0      #.#.#....#
                          > code present 29           code present 28           12.0     #.#....#.#.#.#.#.#.#.#.#
                            code present 31           code present 31           28.0     #.#.#....#
                          > code present 29           code present 28           37.0     #.#....#.#.#.#.#.#.#.#.#
                            separator present 1       separator present 1       55.0     #
                            code stored 11            code stored 11            61.5     #....#
                            code stored 11            code stored 11            68.5     #....#
                        """);
    }

    @Test
    void of_many_sessions_the_share_is_told_and_the_first_one_misread() {
        assertThatCode(() ->
                        DecoderAssertions.assertReadsTold(BrokenDecoders.countingToEight(), Stream.of(TWO, FOUR), 0.5))
                .doesNotThrowAnyException();
        assertThatThrownBy(() ->
                        DecoderAssertions.assertReadsTold(BrokenDecoders.countingToEight(), Stream.of(TWO, FOUR), 0.51))
                .hasMessage("counts-to-eight read 1 of 2 sessions without a mistake; at least a share of 0.51 was"
                        + " expected")
                .cause()
                .hasMessageContaining("> ");
        assertThatThrownBy(() -> DecoderAssertions.assertReadsTold(new PlainDecoder(), Stream.of(), 0))
                .hasMessageContaining("0 of 0");
    }
}
