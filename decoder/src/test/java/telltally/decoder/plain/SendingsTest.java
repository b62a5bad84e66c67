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
}
