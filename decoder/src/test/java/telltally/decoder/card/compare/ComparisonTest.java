package telltally.decoder.card.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Cards;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.compare.Comparison.Verdict;
import telltally.decoder.score.InProcess;
import telltally.decoder.score.Line;
import telltally.simulator.document.ProblemException;

class ComparisonTest {
    @Test
    void a_decoder_is_no_better_and_no_worse_than_itself() throws ProblemException {
        ScoreCard card = Cards.plain();
        Comparison same = Comparison.of(card, card);
        assertThat(same.rows()).hasSize(4).allMatch(row -> row.verdict() == Verdict.SAME && row.cases() == 60);
        assertThat(same.rows()).allMatch(row -> row.gained() == 0 && row.lost() == 0 && row.pValue() == 1);
        assertThat(same.leftOut()).isEmpty();
    }

    @Test
    void what_got_worse_one_way_got_better_the_other() throws ProblemException {
        ScoreCard plain = Cards.plain();
        ScoreCard forgetful = Cards.forgetful();
        Comparison worse = Comparison.of(forgetful, plain);
        Comparison better = Comparison.of(plain, forgetful);
        assertThat(worse.rows(Verdict.WORSE)).hasSize(4).allMatch(row -> row.lost() > 20 && row.gained() == 0);
        assertThat(better.rows(Verdict.BETTER)).hasSize(4);
        assertThat(worse.rows(Verdict.BETTER)).isEmpty();
    }

    @Test
    void many_rows_raise_what_chance_may_do() throws ProblemException {
        Comparison worse = Comparison.of(Cards.forgetful(), Cards.plain());
        assertThat(worse.rows()).allMatch(row -> row.corrected() >= row.pValue());
        assertThat(worse.rows()).anyMatch(row -> row.corrected() > row.pValue());
    }

    @Test
    void a_verdict_needs_chance_below_one_in_twenty_and_more_on_one_side() {
        assertThat(row(3, 1, 0.05).verdict()).isEqualTo(Verdict.SAME);
        assertThat(row(3, 1, 0.049).verdict()).isEqualTo(Verdict.BETTER);
        assertThat(row(1, 3, 0.049).verdict()).isEqualTo(Verdict.WORSE);
        assertThat(row(2, 2, 0.049).verdict()).isEqualTo(Verdict.SAME);
    }

    private static Comparison.Row row(int gained, int lost, double corrected) {
        return new Comparison.Row("set", Line.LAMP, 10, 5, 5, gained, lost, 0.01, corrected);
    }

    /** Two rows of four have changed: each p is doubled at most, not taken four times. */
    @Test
    void rows_without_any_change_are_no_tests() throws ProblemException {
        ScoreCard plain = Cards.plain();
        ScoreCard forgetful = Cards.forgetful();
        ScoreCard half = new ScoreCard(
                forgetful.decoder(),
                forgetful.generator(),
                forgetful.arguments(),
                false,
                forgetful.part(),
                List.of(forgetful.sets().get(0), plain.sets().get(1)));
        List<Comparison.Row> rows = Comparison.of(half, plain).rows();
        assertThat(rows).filteredOn(row -> row.lost() == 0).hasSize(2).allMatch(row -> row.corrected() == 1);
        double least = rows.stream().mapToDouble(Comparison.Row::pValue).min().orElseThrow();
        assertThat(rows.stream().mapToDouble(Comparison.Row::corrected).min().orElseThrow())
                .isEqualTo(Math.min(1, 2 * least));
    }

    @Test
    void each_line_is_compared_with_itself_in_whatever_order_they_stand() throws ProblemException {
        ScoreCard plain = Cards.plain();
        List<SetCard> turned = plain.sets().stream()
                .map(set -> {
                    List<LineCard> lines = new ArrayList<>(set.lines());
                    Collections.reverse(lines);
                    return new SetCard(set.title(), set.floors(), set.flaws(), lines);
                })
                .toList();
        ScoreCard other =
                new ScoreCard(plain.decoder(), plain.generator(), plain.arguments(), false, plain.part(), turned);
        assertThat(Comparison.of(Cards.forgetful(), other).rows())
                .isEqualTo(Comparison.of(Cards.forgetful(), plain).rows());
        assertThat(Comparison.of(plain, other).rows()).allMatch(row -> row.nowRight() == row.beforeRight());
    }

    @Test
    void other_recordings_are_not_compared_and_said_to_be_so() throws ProblemException {
        ScoreCard plain = Cards.plain();
        ScoreCard part = Cards.forgetful(new Part(2, List.of(1)), 1);
        ScoreCard fewer = new ScoreCard(
                "plain", 1, plain.arguments(), false, plain.part(), plain.sets().subList(0, 1));
        assertThat(Comparison.of(part, plain).rows()).isEmpty();
        assertThat(Comparison.of(part, plain).leftOut())
                .hasSize(2)
                .allMatch(each -> each.endsWith("the older card has other recordings under this name"));
        assertThat(Comparison.of(plain, fewer).leftOut()).containsExactly("messages-clean: not in the older card");
        assertThat(Comparison.of(fewer, plain).leftOut()).containsExactly("messages-clean: only in the older card");
    }

    @Test
    void a_decoder_that_fails_is_compared_all_the_same() throws ProblemException {
        ScoreCard brittle = Cards.run(Cards.order(Part.WHOLE, 2), new InProcess("brittle", Cards.Brittle::new));
        assertThat(Comparison.of(brittle, Cards.plain()).rows(Verdict.WORSE)).isNotEmpty();
    }
}
