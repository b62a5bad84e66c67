package telltally.decoder.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.score.Score;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;

class MessageSessionTest {
    private static final List<FlashFormat> SHIPPED = FormatCatalog.shipped().all();
    private static final Noise SOME = new Noise(115, 6, 0, 0, 8);

    private static FlashFormat shipped(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    private static Predicate<MessageSession> misreadBy(Decoder decoder) {
        return session -> !Score.of(session.truth(), decoder.decode(session.train(), List.of(session.sender())))
                .perfect();
    }

    /** The first that a decoder misreads, made as simple as it can be. */
    private static MessageSession simplest(Decoder decoder, String format) {
        Predicate<MessageSession> misread = misreadBy(decoder);
        return MessageSession.drawn(List.of(shipped(format)), 6, SOME, 1)
                .limit(1000)
                .filter(misread)
                .findFirst()
                .orElseThrow()
                .simplest(misread);
    }

    @Test
    void a_decoder_that_counts_to_eight_is_shown_the_one_code_that_it_misreads() {
        assertThat(simplest(BrokenDecoders.countingToEight(), "long-short"))
                .hasToString("long-short: codes 19; nothing spoiled");
        assertThat(simplest(BrokenDecoders.countingToEight(), "quad-lead"))
                .hasToString("quad-lead: codes 1119; nothing spoiled");
    }

    @Test
    void a_decoder_that_believes_no_slow_clock_is_shown_the_least_slow_one_and_no_other_noise() {
        MessageSession simplest = simplest(BrokenDecoders.impatient(), "pair-loop");
        assertThat(simplest.toString()).startsWith("pair-loop: codes none; clock 111 %; seed ");
    }

    @Test
    void every_simpler_session_is_simpler_and_can_be_sent() {
        MessageSession.drawn(SHIPPED, 4, new Noise(120, 10, 2, 3, 15), 7)
                .limit(200)
                .forEach(session -> assertThat(session.simpler())
                        .as(session.toString())
                        .allSatisfy(simpler -> {
                            assertThat(Arrays.compare(simpler.size(), session.size()))
                                    .as(simpler.toString())
                                    .isNegative();
                            assertThat(simpler.message().refusal(simpler.sender()))
                                    .isEmpty();
                        }));
    }

    @Test
    void whatever_a_format_can_send_is_drawn_and_the_same_for_the_same_seed() {
        List<MessageSession> drawn =
                MessageSession.drawn(SHIPPED, 4, SOME, 100).limit(400).toList();
        assertThat(drawn)
                .extracting(each -> each.sender().id())
                .contains(FormatCatalog.shipped().ids().toArray(String[]::new));
        assertThat(drawn)
                .extracting(MessageSession::message)
                .hasAtLeastOneElementOfType(Message.KeyOn.class)
                .hasAtLeastOneElementOfType(Message.Running.class)
                .hasAtLeastOneElementOfType(Message.Balance.class)
                .hasAtLeastOneElementOfType(Message.Codes.class);
        assertThat(MessageSession.drawn(SHIPPED, 4, SOME, 100).limit(400)).isEqualTo(drawn);
        assertThat(drawn).allSatisfy(each -> assertThat(each.train()).isEqualTo(each.train()));
    }

    @Test
    void told_the_format_the_plain_decoder_reads_what_is_drawn_without_noise() {
        DecoderAssertions.assertReadsTold(
                new PlainDecoder(),
                MessageSession.drawn(SHIPPED, 4, Noise.NONE, 3).limit(200),
                1);
    }
}
