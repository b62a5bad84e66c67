package telltally.trainer.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.trainer.lesson.Alignment.Costs;
import telltally.trainer.lesson.Alignment.Step;

class AlignmentTest {
    /** The classic published pairs, and those of the Apache Commons Text LevenshteinDistanceTest (commit 094caf6). */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "flaw, lawn, 2",
        "intention, execution, 5",
        "rosettacode, raisethysword, 8",
        "frog, fog, 1",
        "fly, ant, 3",
        "elephant, hippo, 7",
        "hippo, zzzzzzzz, 8",
        "hello, hallo, 1",
        "aaapppp, '', 7"
    })
    void without_exchanges_the_cost_is_the_published_levenshtein_distance(String sent, String written, int distance) {
        assertThat(Alignment.of(letters(sent), letters(written), withoutExchanges())
                        .cost())
                .isEqualTo(distance);
    }

    /** The pair ca/abc tells optimal string alignment (3) from the full Damerau distance (2). */
    @ParameterizedTest
    @CsvSource({"ca, abc, 3", "34, 43, 1", "1234, 1324, 1", "34121, 3421, 1", "11, 111, 1", "'', 21, 2", "CA, AC, 1"})
    void with_exchanges_the_cost_is_the_published_optimal_string_alignment(String sent, String written, int distance) {
        assertThat(Alignment.of(letters(sent), letters(written), Alignment.unitCosts())
                        .cost())
                .isEqualTo(distance);
    }

    /** Published beside the distances: Levenshtein counts an exchange as two. */
    @ParameterizedTest
    @CsvSource({"34, 43", "1234, 1324"})
    void an_exchange_counts_twice_where_exchanges_are_not_known(String sent, String written) {
        assertThat(Alignment.of(letters(sent), letters(written), withoutExchanges())
                        .cost())
                .isEqualTo(2);
    }

    @Test
    void the_steps_tell_what_happened_in_the_order_sent() {
        assertThat(Alignment.of(letters("1234"), letters("1324"), Alignment.unitCosts())
                        .steps())
                .containsExactly(new Step.Pair<>("1", "1"), new Step.Swapped<>("2", "3"), new Step.Pair<>("4", "4"));
        assertThat(Alignment.of(letters("34121"), letters("3421"), Alignment.unitCosts())
                        .steps())
                .contains(new Step.Lost<>("1"))
                .hasSize(5);
    }

    @Property(tries = 300)
    void the_steps_cost_what_the_alignment_says_and_use_up_both_sides(
            @ForAll @CharRange(from = '1', to = '4') @StringLength(max = 9) String sent,
            @ForAll @CharRange(from = '1', to = '4') @StringLength(max = 9) String written) {
        Alignment<String> alignment = Alignment.of(letters(sent), letters(written), Alignment.unitCosts());

        int cost = 0;
        StringBuilder usedSent = new StringBuilder();
        StringBuilder usedWritten = new StringBuilder();
        for (Step<String> step : alignment.steps()) {
            if (step instanceof Step.Pair<String> pair) {
                cost += pair.sent().equals(pair.written()) ? 0 : 1;
                usedSent.append(pair.sent());
                usedWritten.append(pair.written());
            } else if (step instanceof Step.Lost<String> lost) {
                cost++;
                usedSent.append(lost.sent());
            } else if (step instanceof Step.Extra<String> extra) {
                cost++;
                usedWritten.append(extra.written());
            } else if (step instanceof Step.Swapped<String> swapped) {
                cost++;
                usedSent.append(swapped.first()).append(swapped.second());
                usedWritten.append(swapped.second()).append(swapped.first());
            }
        }
        assertThat(cost).isEqualTo(alignment.cost());
        assertThat(usedSent).hasToString(sent);
        assertThat(usedWritten).hasToString(written);
    }

    @Property(tries = 200)
    void what_was_written_as_sent_costs_nothing(@ForAll @AlphaChars @StringLength(max = 12) String text) {
        assertThat(Alignment.of(letters(text), letters(text), Alignment.unitCosts())
                        .cost())
                .isZero();
    }

    private static List<String> letters(String text) {
        return text.chars().mapToObj(Character::toString).toList();
    }

    private static Costs<String> withoutExchanges() {
        Costs<String> unit = Alignment.unitCosts();
        return new Costs<>() {
            @Override
            public int pair(String sent, String written) {
                return unit.pair(sent, written);
            }

            @Override
            public int lost(String sent) {
                return unit.lost(sent);
            }

            @Override
            public int extra(String written) {
                return unit.extra(written);
            }

            @Override
            public int swap(String first, String second) {
                return Alignment.FORBIDDEN;
            }
        };
    }
}
