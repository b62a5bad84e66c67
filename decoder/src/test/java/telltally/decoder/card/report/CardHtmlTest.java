package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.compare.Comparison;
import telltally.decoder.card.run.KnownTimes;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Line;

class CardHtmlTest {
    private static final String SETS = "Whole lists right in percent; plain and told";
    private static final String FORMATS = "Whole lists right in percent; (nothing)";
    private static final String IMPAIRMENTS = "Whole lists right in percent, in whatever strength";
    private static final ScoreCard CARD = HandMade.weather();

    /** Of which every session is right, without anything that has a part of its own. */
    private static final ScoreCard BARE = HandMade.card(HandMade.set(
            "dusk", HandMade.line(Line.LAMP, HandMade.format("pair-even", HandMade.counts(3, 3)))));

    private static HtmlPage page(ScoreCard card) throws Exception {
        return HtmlPage.of(CardHtml.text(card, Optional.empty(), Optional.empty()));
    }

    private static String opening(HtmlPage page) {
        return page.words("p").get(0);
    }

    @Test
    void parts_come_in_the_order_of_the_questions_that_a_reader_has() throws Exception {
        Comparison comparison = new Comparison("mine", "yours", List.of(), List.of());
        HtmlPage page = HtmlPage.of(CardHtml.text(CARD, Optional.empty(), Optional.of(comparison)));
        assertThat(page.words("title").get(0)).isEqualTo("Score card of mine");
        assertThat(page.words("h1")).containsExactly("Score card of mine");
        assertThat(page.words("h2"))
                .containsExactly(
                        "Against the older card of yours",
                        "By seed set",
                        "By format",
                        "By impairment",
                        "What was taken for what",
                        "No answer",
                        "Can its probabilities be trusted?",
                        "The worst cases");
    }

    @Test
    void parts_that_have_nothing_to_say_are_left_out() throws Exception {
        assertThat(page(BARE).words("h2"))
                .containsExactly("By seed set", "By format", "By impairment", "What was taken for what");
    }

    @Test
    void the_opening_says_how_much_was_run_and_in_what_way() throws Exception {
        assertThat(opening(page(CARD))).isEqualTo("Generator version 3, 3 seed sets.");
        assertThat(opening(page(HandMade.told(BARE))))
                .isEqualTo("Generator version 3, 1 seed set, each session's format told.");
        assertThat(opening(page(HandMade.card(new Part(3, List.of(2)), HandMade.storm()))))
                .isEqualTo("Generator version 3, 1 seed set, shard 2 of 3 only.");
    }

    /** Times are known to an eighth, but never beyond the longest. */
    @Test
    void a_run_says_how_long_a_session_took() throws Exception {
        ReadingTimes times = KnownTimes.of(2_000_000, 2_000_000, 2_000_000);
        assertThat(opening(HtmlPage.of(CardHtml.text(BARE, Optional.of(times), Optional.empty()))))
                .endsWith(" A session took 2 ms in the median, 2 ms at the 99th percentile, 2 ms at most.");
        assertThat(opening(HtmlPage.of(CardHtml.text(BARE, Optional.of(new ReadingTimes()), Optional.empty()))))
                .doesNotContain("median");
    }

    @Test
    void a_page_brings_its_style_for_light_screens_and_dark_ones() throws Exception {
        assertThat(page(BARE).words("style"))
                .hasSize(1)
                .first()
                .asString()
                .contains(":root {", "@media (prefers-color-scheme: dark) {");
    }

    @Test
    void the_total_of_each_line_is_the_sum_over_the_sets() throws Exception {
        // By hand: 1233 of 1262 sessions, 1824 of 1862 lists, 2961 of 3022 codes.
        assertThat(page(CARD).rows("Everything together"))
                .containsExactly(
                        List.of("lamp", "1,262", "97.7", Shares.interval(1233, 1262), "98.0", "98.0", "36", "25", "10"),
                        List.of("pin", "1,200", "100.0", Shares.interval(1200, 1200), "100.0", "100.0", "0", "0", "0"));
    }

    @Test
    void a_card_that_falls_short_says_in_what_and_its_sets_are_marked() throws Exception {
        HtmlPage page = page(HandMade.card(HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS)));
        assertThat(page.words("p")).contains("Falls short:").doesNotContain("Holds every floor.");
        assertThat(page.words("li"))
                .containsExactly(
                        "calm, lamp: 1818 of 1850 lists right; the floor is 0.99",
                        "calm, lamp: 39 invented codes; at most 38 are let pass");
        assertThat(page.rows(SETS))
                .extracting(row -> row.subList(0, 4))
                .containsExactly(
                        List.of("calm", "lamp", "(none)", "below its floor"), List.of("calm", "pin", "(none)", ""));
    }

    @Test
    void a_card_that_holds_its_floors_says_so_and_a_shard_is_not_judged() throws Exception {
        HtmlPage held = page(HandMade.card(HandMade.held(HandMade.calm(), HandMade.LOW_FLOORS)));
        assertThat(held.words("p")).contains("Holds every floor.");
        assertThat(held.words("li")).isEmpty();
        HtmlPage shard =
                page(HandMade.card(new Part(2, List.of(1)), HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS)));
        assertThat(shard.words("p")).contains("Floors are judged when all shards are merged.");
        assertThat(shard.words("td")).doesNotContain("below its floor");
    }

    @Test
    void every_set_has_its_channel_and_its_figures_with_the_others_beside() throws Exception {
        HtmlPage page = page(CARD);
        assertThat(page.heads(SETS))
                .containsExactly(
                        "seed set",
                        "line",
                        "channel",
                        "",
                        "sessions",
                        "lists right",
                        "95 % between",
                        "plain",
                        "told",
                        "codes wrong",
                        "lost",
                        "invented");
        List<List<String>> rows = page.rows(SETS);
        assertThat(rows)
                .extracting(row -> String.join(" ", row.subList(0, 3)))
                .containsExactly(
                        "calm lamp (none)", "calm pin (none)", "gale lamp (none)", "storm lamp jitter + bounce");
        assertThat(rows.get(0).subList(4, 12))
                .containsExactly("1,250", "98.3", Shares.interval(1818, 1850), "50.0", "100.0", "30", "20", "9");
    }

    @Test
    void formats_and_impairments_have_their_sums_line_by_line() throws Exception {
        HtmlPage page = page(CARD);
        assertThat(page.rows(FORMATS))
                .extracting(row -> row.subList(0, 4))
                .containsExactly(
                        List.of("(nothing)", "lamp", "50", "96.0"),
                        List.of("count-loop", "lamp", "12", "50.0"),
                        List.of("pair-even", "lamp", "1,200", "98.3"),
                        List.of("pair-even", "pin", "1,200", "100.0"));
        assertThat(page.rows(IMPAIRMENTS).get(2)).startsWith("jitter + bounce", "lamp", "10", "50.0");
        assertThat(page.heads(IMPAIRMENTS))
                .startsWith("impairment", "line", "sessions")
                .hasSameSizeAs(page.rows(IMPAIRMENTS).get(0));
    }

    @Test
    void what_was_taken_for_what_counts_both_lines_in_one_number() throws Exception {
        String caption = "Sessions by the format";
        HtmlPage page = page(CARD);
        assertThat(page.heads(caption)).containsExactly("sent in", "(no answer)", "(none)", "count-loop", "pair-even");
        assertThat(page.rows(caption))
                .containsExactly(
                        List.of("(nothing)", "", "48", "", "2"),
                        List.of("count-loop", "1", "1", "8", "2"),
                        List.of("pair-even", "", "", "1", "2,399"));
    }

    @Test
    void failures_are_counted_by_kind() throws Exception {
        assertThat(page(CARD).rows("Sessions without an answer")).containsExactly(List.of("out of order", "1"));
    }

    /** By hand: off by 5 of 200 and 20 of 1000 codes, 25 of 1200. */
    @Test
    void probabilities_are_drawn_and_stand_beside_what_came_true() throws Exception {
        HtmlPage page = page(CARD);
        assertThat(page.elements("svg")).hasSize(1);
        assertThat(page.words("p")).anyMatch(text -> text.endsWith("Expected calibration error 0.020833."));
        assertThat(page.rows("In percent"))
                .containsExactly(
                        List.of("52.5", "50.0", Shares.interval(100, 200), "200"),
                        List.of("98.0", "96.0", Shares.interval(960, 1000), "1,000"));
    }

    @Test
    void each_of_the_worst_has_its_command() throws Exception {
        assertThat(page(CARD).rows("Wrong readings"))
                .containsExactly(List.of(
                        "gale",
                        "pair-even",
                        "codes 12",
                        "read codes 7",
                        "telltally score --decoder mine --set gale --seed 107 --line lamp"));
    }

    @Test
    void a_curve_has_its_numbers_below_it() throws Exception {
        HtmlPage page = page(HandMade.card(at(0.2, HandMade.counts(1, 4)), at(0.1, HandMade.counts(1, 2))));
        assertThat(page.words("h2").get(0)).isEqualTo("Accuracy against noise");
        List<Element> figures = page.elements("figure");
        assertThat(figures).hasSize(1);
        assertThat(new HtmlPage(figures.get(0)).elements("svg")).hasSize(1);
        assertThat(new HtmlPage(figures.get(0)).heads("jitter, lamp"))
                .containsExactly("share", "lists", "right", "95 % between", "plain", "told");
        assertThat(new HtmlPage(figures.get(0)).rows("jitter, lamp"))
                .containsExactly(
                        List.of("0.1", "2", "50.0", Shares.interval(1, 2), "75.0", "-"),
                        List.of("0.2", "4", "25.0", Shares.interval(1, 4), "75.0", "-"));
    }

    private static SetCard at(double strength, Counts counts) {
        return HandMade.set(
                "set-" + strength,
                new CurvePoint("jitter", strength, "share"),
                HandMade.line(
                        Line.LAMP,
                        HandMade.beside(HandMade.format("pair-even", counts), HandMade.counts(3, 4), Counts.NOTHING)));
    }
}
