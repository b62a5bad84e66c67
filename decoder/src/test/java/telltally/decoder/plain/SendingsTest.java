package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.FlashFormat.Repeats;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

class SendingsTest {
    private static final Repeats TWICE = new Repeats(1, 2, 100);
    private static final Repeats LOOPS = new Repeats(1, 0, 100);
    private static final Repeats THRICE = new Repeats(3, 0, 100);
    private static final Repeats ONE_IN_A_LOOP = new Repeats(1, 0, 1);

    /** Codes with blanks between; {@code ?} is unreadable, {@code 34!} fits badly, a bar is a framing code. */
    private static Sendings of(Repeats rule, String seen) {
        List<List<Word>> stretches = new ArrayList<>();
        stretches.add(new ArrayList<>());
        for (String each : seen.split(" ", -1)) {
            if (each.equals("|")) {
                stretches.add(new ArrayList<>());
            } else {
                stretches.get(stretches.size() - 1).add(word(each));
            }
        }
        return new Sendings(stretches, rule);
    }

    private static Word word(String text) {
        GroupKind kind = text.equals("?") ? GroupKind.UNREADABLE : GroupKind.CODE;
        return new Word(kind, Segment.CODES, text.replace("!", ""), text.endsWith("!") ? 9 : 1, List.of());
    }

    @Test
    void a_list_sent_twice_is_one_list() {
        Sendings sendings = of(TWICE, "34 42 15 34 42 15");

        assertThat(sendings.codes()).containsExactly("34", "42", "15");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void where_two_sendings_differ_the_code_that_fits_better_counts() {
        Sendings sendings = of(TWICE, "34 42! 15 34 43 15");

        assertThat(sendings.codes()).containsExactly("34", "43", "15");
        assertThat(sendings.broken()).isEqualTo(1);
    }

    @Test
    void an_unreadable_code_is_taken_from_the_other_sending() {
        assertThat(of(TWICE, "34 ? 15 34 42 15").codes()).containsExactly("34", "42", "15");
    }

    @Test
    void a_code_that_one_sending_lacks_keeps_its_place() {
        Sendings sendings = of(TWICE, "34 15 34 42 15");

        assertThat(sendings.codes()).containsExactly("34", "42", "15");
        assertThat(sendings.broken()).isEqualTo(1);
    }

    @Test
    void the_majority_of_loops_counts_even_where_it_fits_worse() {
        assertThat(of(LOOPS, "34! 42 35 42 34! 42").codes()).containsExactly("34", "42");
    }

    @Test
    void a_list_that_was_seen_once_is_that_list() {
        Sendings sendings = of(LOOPS, "34 42 15 51");

        assertThat(sendings.codes()).containsExactly("34", "42", "15", "51");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void a_loop_may_be_cut_off() {
        Sendings sendings = of(LOOPS, "34 42 15 34 42 15 34");

        assertThat(sendings.codes()).containsExactly("34", "42", "15");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void each_code_three_times_is_one_code_and_frames_may_stand_between() {
        Sendings sendings = of(THRICE, "34 34 34 42 42 42 | 34 34 34 42 42 42");

        assertThat(sendings.codes()).containsExactly("34", "42");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void of_three_times_two_outvote_one() {
        assertThat(of(THRICE, "34 34 35 42 43 42").codes()).containsExactly("34", "42");
    }

    @Test
    void different_counts_in_a_loop_of_one_break_the_rule() {
        Sendings sendings = of(ONE_IN_A_LOOP, "7 7 6");

        assertThat(sendings.codes()).containsExactly("7");
        assertThat(sendings.broken()).isEqualTo(1);
    }

    @Test
    void no_codes_are_an_empty_list() {
        Sendings sendings = new Sendings(List.of(List.of()), TWICE);

        assertThat(sendings.codes()).isEmpty();
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void a_code_that_an_earlier_sending_lacked_stands_behind_the_one_that_it_followed() {
        // Not as many codes as two sendings have: the lists are laid over each other code by code.
        assertThat(of(TWICE, "34 15 51 34 42 15 51").codes()).containsExactly("34", "42", "15", "51");
        assertThat(of(TWICE, "34 15 51 20 34 15 51").codes()).containsExactly("34", "15", "51", "20");
    }

    @Test
    void no_more_codes_are_told_than_the_format_sends() {
        assertThat(of(new Repeats(1, 2, 2), "34 42 15 34 42").codes()).containsExactly("34", "42");
        assertThat(of(ONE_IN_A_LOOP, "7 6 5").codes()).hasSize(1);
    }

    @Test
    void unreadable_groups_are_no_codes() {
        assertThat(of(TWICE, "? ?").codes()).isEmpty();
        assertThat(of(TWICE, "34 ? 34 ?").codes()).containsExactly("34");
        assertThat(of(LOOPS, "? ? ?").codes()).isEmpty();
    }

    @Test
    void unreadable_groups_too_many_at_the_start_belong_to_no_sending_and_break_no_rule() {
        Sendings sendings = of(TWICE, "? 34 42 34 42");

        assertThat(sendings.codes()).containsExactly("34", "42");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void a_code_too_many_breaks_one_rule() {
        assertThat(of(TWICE, "34 42 34 42 42").broken()).isEqualTo(1);
        assertThat(of(TWICE, "34").broken()).isEqualTo(1);
        assertThat(of(TWICE, "34 34").broken()).isZero();
    }

    @Test
    void a_code_twice_in_a_list_breaks_a_rule_for_each_time_too_often() {
        assertThat(of(TWICE, "34 34 34 34").broken()).isEqualTo(1);
        assertThat(of(TWICE, "34 34 34 34 34 34").broken()).isEqualTo(2);
        assertThat(of(TWICE, "34 ? ? 34 ? ?").broken()).isZero();
    }

    @Test
    void of_many_broken_rules_six_count() {
        assertThat(of(TWICE, "11 12 13 14 15 16 17 18 21 22 23 24 25 26 27 28").broken())
                .isEqualTo(6);
        assertThat(of(TWICE, "34 ".repeat(40).strip()).broken()).isEqualTo(6);
    }

    @Test
    void where_a_loop_begins_again_is_where_the_fewest_codes_are_odd() {
        assertThat(of(LOOPS, "34 42 15 34 42 15 34 43 15").codes()).containsExactly("34", "42", "15");
        assertThat(of(LOOPS, "34 42 15 34 42 15 34 43 15").broken()).isEqualTo(1);
        assertThat(of(LOOPS, "34 34 34 34").codes()).containsExactly("34");
        assertThat(of(LOOPS, "34 34 34 34").broken()).isZero();
        assertThat(of(LOOPS, "34 42 ? 42 34 42").codes()).containsExactly("34", "42");
    }

    @Test
    void a_loop_that_begins_midway_and_unreadable_begins_with_its_first_code() {
        assertThat(of(LOOPS, "? 34 42 34 42").codes()).containsExactly("34", "42");
    }

    /** Each of them thrice: a row of neighbours that read the same stands for as many codes as it holds thrice. */
    @Test
    void a_code_that_was_seen_once_too_often_or_too_seldom_is_still_one_code() {
        Sendings seldom = of(THRICE, "34 34 42 42 42 34 34 34 42 42 42");
        assertThat(seldom.codes()).containsExactly("34", "42");
        assertThat(seldom.broken()).isEqualTo(1);
        Sendings often = of(THRICE, "34 34 34 34 42 42 42");
        assertThat(often.codes()).containsExactly("34", "42");
        assertThat(often.broken()).isEqualTo(1);
    }

    @Test
    void of_a_code_in_a_row_of_three_one_that_reads_otherwise_breaks_one_rule() {
        assertThat(of(THRICE, "34 34 35 42 42 42").broken()).isEqualTo(1);
        assertThat(of(THRICE, "34 34 34 42 42 42").broken()).isZero();
        assertThat(of(THRICE, "34 ? 34 42 42 ?").broken()).isZero();
    }

    @Test
    void six_in_a_row_are_a_code_in_two_sendings_of_a_list_of_one() {
        Sendings sendings = of(THRICE, "34 34 34 34 34 34");

        assertThat(sendings.codes()).containsExactly("34");
        assertThat(sendings.broken()).isZero();
    }

    @Test
    void where_the_list_is_sent_once_a_long_row_is_one_code() {
        Sendings sendings = of(new Repeats(2, 1, 100), "34 34 34 34 34 42 42");

        assertThat(sendings.codes()).containsExactly("34", "42");
        assertThat(sendings.broken()).isEqualTo(1);
    }

    @Test
    void of_two_readings_as_frequent_the_one_that_costs_less_in_all_counts() {
        assertThat(of(THRICE, "34! 35 ? 42 42 42").codes()).containsExactly("35", "42");
        assertThat(of(THRICE, "35 34! ? 42 42 42").codes()).containsExactly("35", "42");
    }
}
