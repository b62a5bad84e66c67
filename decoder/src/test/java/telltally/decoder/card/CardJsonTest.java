package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.InProcess;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Cards of real runs as files. */
class CardJsonTest {
    private static ScoreCard read(String text) throws ProblemException {
        return CardReader.read(new TextFile("card.json", text));
    }

    @Test
    void shares_and_intervals_stand_beside_the_counts() throws ProblemException {
        JsonNode card = JsonMapper.shared().readTree(CardJson.text(Cards.plain()));
        JsonNode lists = card.at("/summary/0/lists_right");
        assertThat(lists.at("/right").asLong()).isEqualTo(lists.at("/of").asLong());
        assertThat(lists.at("/share").asDouble()).isEqualTo(1.0);
        assertThat(lists.at("/low").asDouble()).isBetween(0.9, 0.99);
        assertThat(card.at("/summary/0/expected_calibration_error").asDouble()).isBetween(0.0, 0.1);
        assertThat(card.at("/sets/0/channel").valueStream().map(JsonNode::asString))
                .containsExactly("clock-scale", "jitter", "contact-bounce");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"generator\":1        | \"generator\":0         | /generator: is 0; expected a whole number from 1",
                "\"line\":\"lamp\",\"b  | \"line\":\"moon\",\"b   | /line: is \"moon\"; expected \"lamp\" or \"pin\"",
                "\"sessions\":          | \"sessions\":-          | a count is 0 or more",
                "\"right\":[\"          | \"right\":[\"AAAA       | is no Base64 of",
                "\"fingerprint\"        | \"finger\"              | /finger: is not known here",
                "telltally/scorecard/1  | telltally/scorecard/9   | expected \"telltally/scorecard/1\"",
            })
    void a_card_that_was_tampered_with_is_refused_at_the_place(String from, String to, String expected)
            throws ProblemException {
        String text = CardJson.text(Cards.forgetful(new Part(9, List.of(2)), 1));
        assertThat(text).contains(from.strip());
        String tampered = text.replace(from.strip(), to.strip());
        assertThatThrownBy(() -> read(tampered))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        e -> assertThat(e.problems())
                                .anyMatch(problem -> problem.toString().contains(expected)
                                        && problem.toString().startsWith("card.json:")));
    }

    @Test
    void cards_that_do_not_belong_together_are_not_merged() throws ProblemException {
        ScoreCard first = Cards.forgetful(new Part(2, List.of(1)), 1);
        ScoreCard other =
                Cards.run(Cards.order(new Part(2, List.of(2)), 1), new InProcess("brittle", Cards.Brittle::new));
        assertThatThrownBy(() -> first.plus(other)).hasMessage("one is of the decoder forgetful, the other of brittle");
        ScoreCard shorter = new ScoreCard("forgetful", 1, first.arguments(), false, first.part(), List.of());
        assertThatThrownBy(() -> first.plus(shorter)).hasMessage("they come from different commands");
        Stream.of(first, shorter).forEach(each -> assertThat(each.holds()).isTrue());
    }
}
