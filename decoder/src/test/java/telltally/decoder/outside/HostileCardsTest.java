package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Cards;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.run.Extent;
import telltally.decoder.card.run.RunOrder;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.document.ProblemException;

/**
 * However a program fails, its score card is the same to the byte with any number of threads, and put together from
 * shards: four blocks of seeds, of fifty and ten sessions each.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the programs are scripts for sh")
@Timeout(300)
class HostileCardsTest {
    private static final Limits PATIENT =
            new Limits(Duration.ofSeconds(30), Duration.ofSeconds(30), 1 << 16, 1 << 16, 3, 2);
    private static final int SESSIONS = 120;

    private static ScoreCard card(OutsideDecoder decoder, Part part, int threads) throws ProblemException {
        return Cards.run(
                new RunOrder(Cards.sets(), new Extent(3, 20), List.of(Line.LAMP), false, false, part, threads),
                decoder);
    }

    private static Map<Failure, Long> failures(ScoreCard card) {
        return card.total(Line.LAMP).failures();
    }

    private static void assertSameCardAnyhow(OutsideDecoder decoder, Map<Failure, Long> failures)
            throws ProblemException {
        ScoreCard one = card(decoder, Part.WHOLE, 1);
        assertThat(failures(one)).isEqualTo(failures);
        assertThat(one.total(Line.LAMP).counts().sessions()).isEqualTo(SESSIONS);
        String text = CardJson.text(one);
        assertThat(CardJson.text(card(decoder, Part.WHOLE, 2))).isEqualTo(text);
        assertThat(CardJson.text(card(decoder, Part.WHOLE, 4))).isEqualTo(text);
        ScoreCard second = card(decoder, new Part(2, List.of(2)), 2);
        assertThat(CardJson.text(second.plus(card(decoder, new Part(2, List.of(1)), 1))))
                .isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "dies, DIED",
        "dies-in-a-line, DIED",
        "endless-line, FLOODED",
        "endless-lines, OUT_OF_ORDER",
        "garbage, RUBBISH",
        "answers-twice, OUT_OF_ORDER"
    })
    void who_fails_every_second_session_fails_half_of_them(String name, Failure failure) throws ProblemException {
        assertSameCardAnyhow(HostileDecodersTest.hostile(name).within(PATIENT), Map.of(failure, SESSIONS / 2L));
    }

    @Test
    void who_hangs_loses_what_is_left_of_the_block_and_no_more() throws ProblemException {
        Limits impatient = new Limits(Duration.ofSeconds(30), Duration.ofSeconds(3), 1 << 16, 1 << 16, 3, 1);
        OutsideDecoder decoder = HostileDecodersTest.hostile("hangs").within(impatient);
        assertSameCardAnyhow(decoder, Map.of(Failure.HUNG, SESSIONS - 4L));
    }

    @Test
    void who_answers_no_session_is_not_asked_in_every_block() throws ProblemException {
        Limits hasty = PATIENT.withTimes(Duration.ofSeconds(30), Duration.ofMillis(50));
        OutsideDecoder decoder = HostileDecodersTest.hostile("hangs-always").within(hasty);
        assertSameCardAnyhow(decoder, Map.of(Failure.HUNG, (long) SESSIONS));
    }

    @Test
    void who_tires_after_more_sessions_than_a_block_has_is_started_again_in_time() throws ProblemException {
        assertSameCardAnyhow(HostileDecodersTest.hostile("tires").within(PATIENT), Map.of());
    }

    @ParameterizedTest
    @CsvSource({"endless-errors", "polite"})
    void who_answers_fails_nothing(String name) throws ProblemException {
        assertSameCardAnyhow(HostileDecodersTest.hostile(name).within(PATIENT), Map.of());
    }

    @ParameterizedTest
    @CsvSource({"dies-at-once, DIED", "greets-wrong, RUBBISH", "dies-always, DIED"})
    void who_can_never_be_spoken_to_fails_everything(String name, Failure failure) throws ProblemException {
        assertSameCardAnyhow(HostileDecodersTest.hostile(name).within(PATIENT), Map.of(failure, (long) SESSIONS));
    }
}
