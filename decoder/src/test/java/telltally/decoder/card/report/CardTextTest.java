package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Part;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.card.run.KnownTimes;
import telltally.decoder.card.run.ReadingTimes;
import telltally.decoder.score.Line;

class CardTextTest {
    private static final String SETS = "By seed set";
    private static final ScoreCard CARD = HandMade.weather();

    private static TextPage page(ScoreCard card) {
        return new TextPage(CardText.text(card, Optional.empty()));
    }

    /** Sets of ten sessions and ten lists each, so many of them right. */
    private static ScoreCard ofTen(int... right) {
        return HandMade.card(IntStream.range(0, right.length)
                .mapToObj(i -> HandMade.set(
                        "set-" + i,
                        HandMade.line(Line.LAMP, HandMade.format("pair-even", HandMade.counts(right[i], 10)))))
                .toArray(SetCard[]::new));
    }

    private static ScoreCard ofTen(int sets, int right) {
        int[] all = new int[sets];
        Arrays.fill(all, right);
        return ofTen(all);
    }

    @Test
    void its_parts_are_set_apart_the_verdict_first_then_where_it_comes_from_then_where_to_look() {
        List<String> starts = List.of(
                "Score card of mine\n",
                "  ",
                "No floors to hold",
                "By seed set: ",
                "By format:\n",
                "By impairment, in whatever strength:\n",
                "Probabilities: ",
                "Formats taken for another:\n",
                "No answer, or none that could be understood:\n",
                "The worst of them, and how to see each again:\n");
        List<String> parts = page(CARD).parts();
        assertThat(parts).hasSameSizeAs(starts);
        for (int i = 0; i < parts.size(); i++) {
            assertThat(parts.get(i)).startsWith(starts.get(i));
        }
    }

    @Test
    void parts_that_have_nothing_to_say_are_left_out() {
        assertThat(page(ofTen(10, 10)).parts()).hasSize(6).last().asString().startsWith("By impairment");
    }

    @Test
    void the_head_says_whose_card_it_is_and_of_how_much() {
        assertThat(page(CARD).parts().get(0)).isEqualTo("Score card of mine\n2,462 sessions of 3 seed sets");
        assertThat(page(HandMade.told(ofTen(9))).parts().get(0))
                .isEqualTo("Score card of mine, told each session's format\n10 sessions of 1 seed set");
        assertThat(page(HandMade.card(new Part(3, List.of(1, 2)), HandMade.storm()))
                        .parts()
                        .get(0))
                .startsWith("Score card of mine, shard 1+2 of 3\n");
    }

    /** Times are known to an eighth, but never beyond the longest. */
    @Test
    void a_run_says_how_long_a_session_took() {
        assertThat(CardText.text(ofTen(9), Optional.of(KnownTimes.of(2_000_000, 2_000_000, 2_000_000))))
                .contains("10 sessions of 1 seed set, 2 ms each in the median, 2 ms at the 99th percentile\n");
        assertThat(CardText.text(ofTen(9), Optional.of(new ReadingTimes())))
                .as("nothing was run")
                .contains("10 sessions of 1 seed set\n");
    }

    @Test
    void the_total_of_each_line_is_the_sum_over_the_sets() {
        List<String> lines = page(CARD).parts().get(1).lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(TextPage.cells(lines.get(0)))
                .containsExactly("all right", "95 % between", "lists", "codes", "wrong", "lost", "invented");
        // By hand: 1233 of 1262 sessions, 1824 of 1862 lists, 2961 of 3022 codes.
        assertThat(TextPage.cells(lines.get(1)))
                .containsExactly("lamp", "97.7", Shares.interval(1233, 1262), "98.0", "98.0", "36", "25", "10");
        assertThat(TextPage.cells(lines.get(2)))
                .containsExactly("pin", "100.0", Shares.interval(1200, 1200), "100.0", "100.0", "0", "0", "0");
    }

    @Test
    void a_card_that_falls_short_says_in_what() {
        TextPage page = page(HandMade.card(HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS)));
        assertThat(page.part("Falls short").lines())
                .containsExactly(
                        "Falls short:",
                        "  calm, lamp: 1818 of 1850 lists right; the floor is 0.99",
                        "  calm, lamp: 39 invented codes; at most 38 are let pass");
        assertThat(page.rows(SETS)).anyMatch(row -> row.get(1).equals("lamp") && row.contains("below its floor"));
        assertThat(page.rows(SETS)).noneMatch(row -> row.get(1).equals("pin") && row.contains("below its floor"));
    }

    @Test
    void a_card_that_holds_its_floors_says_so_and_a_shard_is_not_judged() {
        ScoreCard held = HandMade.card(HandMade.held(HandMade.calm(), HandMade.LOW_FLOORS));
        assertThat(page(held).part("Holds")).isEqualTo("Holds every floor.");
        ScoreCard shard = HandMade.card(new Part(2, List.of(1)), HandMade.held(HandMade.calm(), HandMade.HIGH_FLOORS));
        assertThat(page(shard).text()).doesNotContain("below its floor").doesNotContain("Falls short");
    }

    @Test
    void sets_stand_worst_first_with_the_others_beside() {
        List<List<String>> rows = page(CARD).rows(SETS);
        assertThat(rows.get(0))
                .containsExactly("sessions", "lists", "95 % between", "plain", "told", "wrong", "lost", "invented");
        assertThat(rows.subList(1, rows.size()))
                .extracting(row -> row.get(0) + " " + row.get(1))
                .containsExactly("gale lamp", "storm lamp", "calm lamp", "calm pin");
        // By hand: 1818 of 1850 lists, plain 900 of 1800 and told all of them.
        assertThat(rows.get(3))
                .containsExactly(
                        "calm", "lamp", "1,250", "98.3", Shares.interval(1818, 1850), "50.0", "100.0", "30", "20", "9");
    }

    @Test
    void sets_are_ordered_by_their_share_and_one_without_lists_lacks_none() {
        SetCard many = HandMade.set("many", HandMade.line(Line.LAMP, HandMade.format("a", HandMade.counts(60, 100))));
        SetCard few = HandMade.set("few", HandMade.line(Line.LAMP, HandMade.format("a", HandMade.counts(1, 2))));
        SetCard none = HandMade.set(
                "none", HandMade.line(Line.LAMP, HandMade.format("a", new Counts(5, 0, 0, 0, 0, 0, 0, 1))));
        List<List<String>> rows = page(HandMade.card(none, many, few)).rows(SETS);
        assertThat(rows.subList(1, rows.size())).extracting(row -> row.get(0)).containsExactly("few", "many", "none");
    }

    @Test
    void few_sets_are_shown_whatever_came_of_them_and_of_many_those_that_are_not_all_right() {
        assertThat(page(ofTen(12, 10)).rows(SETS)).hasSize(1 + 12);
        TextPage many = page(ofTen(10, 10, 10, 10, 10, 10, 9, 10, 10, 10, 10, 10, 10));
        assertThat(many.part(SETS)).endsWith("\n  and 12 more with every session right");
        assertThat(many.rows(SETS))
                .extracting(row -> row.get(0))
                .contains("set-6")
                .hasSize(1 + 1 + 1);
        assertThat(page(ofTen(13, 10)).part(SETS).lines())
                .hasSize(2)
                .last()
                .isEqualTo("  and 13 more with every session right");
    }

    @Test
    void of_very_many_sets_the_twenty_worst_are_shown_and_the_others_counted() {
        assertThat(page(ofTen(20, 5)).part(SETS)).doesNotContain("more");
        assertThat(page(ofTen(20, 5)).rows(SETS)).hasSize(1 + 20);
        int[] rights = new int[22];
        Arrays.fill(rights, 5);
        rights[0] = 9;
        rights[1] = 8;
        TextPage page = page(ofTen(rights));
        assertThat(page.part(SETS))
                .endsWith("\n  and 2 more that are not all right")
                .doesNotContain("set-1 ");
        assertThat(page.rows(SETS)).hasSize(1 + 20 + 1);
    }

    @Test
    void formats_and_impairments_have_their_sums_line_by_line() {
        List<List<String>> formats = page(CARD).rows("By format");
        assertThat(formats.get(0)).startsWith("sessions", "lists");
        assertThat(formats.subList(1, formats.size()))
                .extracting(row -> row.subList(0, 4))
                .containsExactly(
                        List.of("(nothing)", "lamp", "50", "96.0"),
                        List.of("count-loop", "lamp", "12", "50.0"),
                        List.of("pair-even", "lamp", "1,200", "98.3"),
                        List.of("pair-even", "pin", "1,200", "100.0"));
        List<List<String>> impairments = page(CARD).rows("By impairment");
        assertThat(impairments.subList(1, impairments.size()))
                .extracting(row -> row.subList(0, 4))
                .containsExactly(
                        List.of("(none)", "lamp", "1,252", "98.2"),
                        List.of("(none)", "pin", "1,200", "100.0"),
                        List.of("jitter + bounce", "lamp", "10", "50.0"));
    }

    /** By hand: off by 5 of 200 and 20 of 1000 codes, 25 of 1200. */
    @Test
    void probabilities_stand_beside_what_came_true_where_there_were_any() {
        TextPage page = page(CARD);
        assertThat(page.rows("Probabilities"))
                .containsExactly(
                        List.of("claimed", "right", "95 % between", "codes"),
                        List.of("52.5", "50.0", Shares.interval(100, 200), "200"),
                        List.of("98.0", "96.0", Shares.interval(960, 1000), "1,000"),
                        List.of("expected calibration error 0.020833"));
    }

    @Test
    void only_formats_that_were_taken_for_another_are_told() {
        assertThat(page(CARD).rows("Formats taken"))
                .containsExactly(
                        List.of("sent in", "taken for", "sessions"),
                        List.of("(nothing)", "pair-even", "2"),
                        List.of("count-loop", "(no answer)", "1"),
                        List.of("count-loop", "(none)", "1"),
                        List.of("count-loop", "pair-even", "2"),
                        List.of("pair-even", "count-loop", "1"));
    }

    @Test
    void failures_are_counted_by_kind() {
        assertThat(page(CARD).rows("No answer")).containsExactly(List.of("sessions"), List.of("out of order", "1"));
    }

    @Test
    void each_of_the_worst_says_what_was_sent_and_read_and_how_to_see_it() {
        assertThat(page(CARD).part("The worst").lines().skip(1))
                .containsExactly(
                        "  pair-even, sent codes 12",
                        "    read codes 7",
                        "    telltally score --decoder mine --set gale --seed 107 --line lamp");
    }

    @Test
    void of_the_worst_two_of_a_set_are_shown_and_eight_in_all() {
        List<SetCard> sets = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            sets.add(HandMade.set(
                    "set-" + i,
                    HandMade.worst(
                            HandMade.line(Line.LAMP, HandMade.format("a", HandMade.counts(1, 4))),
                            HandMade.wrong(1, 9),
                            HandMade.wrong(2, 8),
                            HandMade.wrong(3, 7))));
        }
        assertThat(page(HandMade.card(sets.toArray(SetCard[]::new)))
                        .part("The worst")
                        .lines())
                .hasSize(1 + 3 * 8)
                .noneMatch(line -> line.endsWith("read codes 3"));
    }
}
