package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.compare.Comparison.Row;
import telltally.decoder.score.Line;

class ComparisonTextTest {
    private static final Row BETTER = new Row("calm", Line.LAMP, 2000, 1030, 1000, 40, 10, 0.0001, 0.0002);
    private static final Row WORSE = new Row("storm", Line.PIN, 200, 90, 100, 1, 11, 0.01, 0.02);
    private static final Row BY_CHANCE = new Row("gale", Line.LAMP, 200, 101, 100, 2, 1, 1, 1);
    private static final Row ONLY_LOST = new Row("fog", Line.LAMP, 200, 99, 100, 0, 1, 1, 1);
    private static final Row AS_BEFORE = new Row("dusk", Line.LAMP, 200, 100, 100, 0, 0, 1, 1);

    private static Comparison of(Row... rows) {
        return new Comparison("mine", "mine", List.of(rows), List.of());
    }

    private static String verdict(Row... rows) {
        return ComparisonText.verdict(of(rows));
    }

    @Test
    void in_a_few_words_what_got_worse_stands_before_what_got_better() {
        assertThat(verdict(BETTER, BY_CHANCE)).isEqualTo("better on 1 of 2, beyond chance.");
        assertThat(verdict(WORSE, WORSE)).isEqualTo("worse on 2 of 2, beyond chance.");
        assertThat(verdict(BETTER, WORSE, AS_BEFORE)).isEqualTo("worse on 1 of 3, better on 1 of 3, beyond chance.");
    }

    @Test
    void without_a_difference_it_says_whether_anything_changed_at_all() {
        assertThat(verdict(AS_BEFORE, BY_CHANCE)).isEqualTo("no difference beyond chance.");
        assertThat(verdict(AS_BEFORE, ONLY_LOST)).isEqualTo("no difference beyond chance.");
        assertThat(verdict(AS_BEFORE)).isEqualTo("every case came out as before.");
        assertThat(verdict()).isEqualTo("nothing that could be compared.");
    }

    @Test
    void as_many_gained_as_lost_is_a_change_all_the_same() {
        Row even = new Row("even", Line.LAMP, 200, 100, 100, 3, 3, 1, 1);
        assertThat(verdict(even)).isEqualTo("no difference beyond chance.");
        assertThat(ComparisonText.text(of(even), "old.json")).contains("\n  even  lamp    200");
    }

    @Test
    void only_rows_with_a_change_are_shown_each_under_its_heads() {
        List<String> lines = ComparisonText.text(of(BETTER, AS_BEFORE, WORSE, ONLY_LOST), "old.json")
                .lines()
                .toList();
        assertThat(lines).hasSize(6);
        assertThat(lines.get(0)).isEqualTo("Against old.json: worse on 1 of 4, better on 1 of 4, beyond chance.");
        assertThat(TextPage.cells(lines.get(1)))
                .containsExactly("cases", "right before", "now", "gained", "lost", "chance");
        assertThat(TextPage.cells(lines.get(2)))
                .containsExactly("calm", "lamp", "2,000", "1,000", "1,030", "40", "10", "below 0.001", "better");
        assertThat(TextPage.cells(lines.get(3)))
                .containsExactly("storm", "pin", "200", "100", "90", "1", "11", "0.020", "worse");
        assertThat(TextPage.cells(lines.get(4))).containsExactly("fog", "lamp", "200", "100", "99", "0", "1", "1.000");
        assertThat(lines.get(5)).startsWith("  chance: ");
    }

    @Test
    void without_a_change_there_is_no_table() {
        assertThat(ComparisonText.text(of(AS_BEFORE), "old.json"))
                .isEqualTo("Against old.json: every case came out as before.\n");
    }

    @Test
    void another_decoder_is_named_and_what_was_not_compared_is_told() {
        Comparison comparison =
                new Comparison("mine", "yours", List.of(), List.of("fog: not in the older card", "dusk: nor this"));
        assertThat(ComparisonText.text(comparison, "old.json")).isEqualTo("""
                        Against old.json, the card of yours: nothing that could be compared.
                          not compared: fog: not in the older card
                          not compared: dusk: nor this
                        """);
    }

    @Test
    void a_page_has_the_same_verdict_rows_and_what_was_left_out() throws Exception {
        HtmlText html = new HtmlText();
        ComparisonHtml.write(
                html,
                new Comparison(
                        "mine", "yours", List.of(BETTER, AS_BEFORE, WORSE, ONLY_LOST), List.of("dawn: only there")));
        HtmlPage page = HtmlPage.of(html);
        assertThat(page.words("h2")).containsExactly("Against the older card of yours");
        assertThat(page.words("p"))
                .containsExactly(
                        "In short: worse on 1 of 4, better on 1 of 4, beyond chance.",
                        "Not compared: dawn: only there");
        assertThat(page.heads("Only rows with a change"))
                .containsExactly("seed set", "line", "", "cases", "right before", "now", "gained", "lost", "chance");
        assertThat(page.rows("Only rows with a change"))
                .containsExactly(
                        List.of("calm", "lamp", "better", "2,000", "1,000", "1,030", "40", "10", "below 0.001"),
                        List.of("storm", "pin", "worse", "200", "100", "90", "1", "11", "0.020"),
                        List.of("fog", "lamp", "", "200", "100", "99", "0", "1", "1.000"));
    }

    @Test
    void a_row_of_a_page_with_as_many_gained_as_lost_is_a_change_all_the_same() throws Exception {
        HtmlText html = new HtmlText();
        ComparisonHtml.write(html, of(new Row("even", Line.LAMP, 200, 100, 100, 3, 3, 1, 1)));
        assertThat(HtmlPage.of(html).rows("Only rows with a change")).hasSize(1);
    }
}
