package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.SentList.Plan;

/** Rows of flashes written out by hand from the format files that ship. */
class SentListTest {
    private static final Offset<Double> EXACT = within(1e-12);
    private static final FormatModel EVEN = Sendings.shipped("pair-even");
    private static final FormatModel LOOP = Sendings.shipped("pair-loop");
    private static final FormatModel FRAMED = Sendings.shipped("pair-thrice");

    private static Plan sent(Integer... loops) {
        return new Plan(false, false, false, false, List.of(loops), true, true);
    }

    private static Plan separated(boolean before, boolean after) {
        return new Plan(before, after, false, false, List.of(1), !before, !after);
    }

    private static Plan framed(boolean first, boolean last, Integer... loops) {
        return new Plan(false, false, first, last, List.of(loops), true, true);
    }

    private static SentList row(FormatModel model, Plan plan, String... codes) {
        return new SentList(model, plan, List.of(codes));
    }

    /** Each flash as its length after the dark before it, and a bar where the recording may end. */
    private static List<String> lengths(SentList row) {
        List<String> lengths = new ArrayList<>();
        for (int at = 0; at < row.count(); at++) {
            lengths.add(seconds(row.gaps.get(row.gapBefore(at)).seconds()) + " "
                    + seconds(row.lights.get(row.light(at)).seconds())
                    + (row.mayEndAfter(at) ? " |" : ""));
        }
        return lengths;
    }

    private static String seconds(double seconds) {
        return Double.toString(Math.round(seconds * 1000) / 1000.0);
    }

    /** The group of each flash, one after the other. */
    private static List<String> groups(SentList row) {
        List<String> groups = new ArrayList<>();
        int before = -1;
        for (int at = 0; at < row.count(); at++) {
            int slot = row.slotOf(at);
            if (slot != before) {
                SentList.Slot each = row.slot(slot);
                groups.add(each.kind() + " " + each.digits() + " in " + each.column());
                before = slot;
            }
        }
        return groups;
    }

    @Test
    void a_code_is_digits_of_flashes() {
        assertThat(lengths(row(EVEN, sent(1), "23")))
                .containsExactly("3.0 0.5", "0.5 0.5", "2.0 0.5", "0.5 0.5", "0.5 0.5 |");
    }

    @Test
    void long_flashes_count_tens_and_short_ones_count_ones() {
        assertThat(lengths(row(Sendings.shipped("long-short"), sent(1), "21")))
                .containsExactly("3.0 1.2", "0.4 1.2", "1.0 0.4 |");
    }

    @Test
    void a_list_sent_again_comes_after_the_gap_that_says_so_and_may_end_each_time() {
        assertThat(lengths(row(LOOP, sent(2), "11", "12")))
                .containsExactly(
                        "3.0 0.5",
                        "1.5 0.5",
                        "2.5 0.5",
                        "1.5 0.5",
                        "0.5 0.5 |", // 11 12
                        "4.5 0.5",
                        "1.5 0.5",
                        "2.5 0.5",
                        "1.5 0.5",
                        "0.5 0.5 |");
    }

    @Test
    void each_group_is_known_by_its_code_and_column() {
        SentList row = row(LOOP, sent(2), "11", "12");
        assertThat(groups(row)).containsExactly("CODE 11 in 0", "CODE 12 in 1", "CODE 11 in 0", "CODE 12 in 1");
        assertThat(List.of(row.slotOf(0), row.slotOf(1), row.slotOf(2), row.slotOf(4), row.slotOf(5), row.slotOf(9)))
                .containsExactly(0, 0, 1, 1, 2, 3);
    }

    @Nested
    class WithSeparators {
        @Test
        void one_before_stands_apart_and_none_may_end_there() {
            SentList row = row(EVEN, separated(true, false), "11", "12");
            assertThat(lengths(row))
                    .containsExactly("3.0 0.5", "6.0 0.5", "2.0 0.5", "4.0 0.5", "2.0 0.5", "0.5 0.5 |");
            assertThat(groups(row)).containsExactly("SEPARATOR 1 in -1", "CODE 11 in 0", "CODE 12 in 1");
        }

        @Test
        void with_one_after_the_row_ends_there_only() {
            SentList row = row(EVEN, separated(false, true), "11");
            assertThat(lengths(row)).containsExactly("3.0 0.5", "2.0 0.5", "6.0 0.5 |");
            assertThat(groups(row)).containsExactly("CODE 11 in 0", "SEPARATOR 1 in -1");
        }

        @Test
        void of_several_flashes_are_counted_like_a_digit() {
            FormatModel two = Sendings.format("""
                    "flashes_s": {"flash": 0.5, "long": 0.8},
                    "code": {"places": [
                      {"flash": "flash", "from": 1, "to": 9}, {"flash": "flash", "from": 1, "to": 9}]},
                    "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.0, "between_codes_s": 4.0},
                    "list": {"list_times": 2},
                    "nothing_to_report": {"code": "11"},
                    "sessions": {"separator_flashes": 3, "around_separator_s": 6.0, "flash": "long",
                      "running_test_s": 90.0, "most_balance_flashes": 9}
                    """);
            SentList row = row(two, separated(true, true), "11");
            assertThat(lengths(row))
                    .containsExactly(
                            "3.0 0.8", "0.5 0.8", "0.5 0.8", "6.0 0.5", "2.0 0.5", "6.0 0.8", "0.5 0.8", "0.5 0.8 |");
            assertThat(groups(row)).containsExactly("SEPARATOR 3 in -1", "CODE 11 in 0", "SEPARATOR 3 in -1");
        }

        @Test
        void a_list_sent_again_after_one_comes_after_the_gap_of_repeats() {
            Plan twice = new Plan(true, false, false, false, List.of(2), false, true);
            assertThat(lengths(row(EVEN, twice, "11")))
                    .containsExactly("3.0 0.5", "6.0 0.5", "2.0 0.5 |", "4.0 0.5", "2.0 0.5 |");
        }
    }

    @Nested
    class WithFrames {
        private static final String FRAME = "SEPARATOR 12 in -1";

        @Test
        void each_code_comes_three_times_and_so_do_frames() {
            assertThat(groups(row(FRAMED, framed(true, true, 1), "11", "21")))
                    .containsExactly(
                            FRAME,
                            FRAME,
                            FRAME,
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 21 in 1",
                            "CODE 21 in 1",
                            "CODE 21 in 1",
                            FRAME,
                            FRAME,
                            FRAME);
        }

        @Test
        void all_sendings_are_as_far_apart_as_codes() {
            assertThat(lengths(row(FRAMED, framed(true, false, 1), "11")))
                    .containsExactly(
                            "3.0 0.4",
                            "1.2 0.4",
                            "0.4 0.4",
                            "3.2 0.4",
                            "1.2 0.4",
                            "0.4 0.4",
                            "3.2 0.4",
                            "1.2 0.4",
                            "0.4 0.4",
                            "3.2 0.4",
                            "1.2 0.4",
                            "3.2 0.4",
                            "1.2 0.4",
                            "3.2 0.4",
                            "1.2 0.4 |");
        }

        @Test
        void the_list_after_one_does_not_begin_again() {
            FormatModel marking = Sendings.format("""
                    "flashes_s": {"flash": 0.5},
                    "code": {"places": [
                      {"flash": "flash", "from": 1, "to": 9}, {"flash": "flash", "from": 1, "to": 9}]},
                    "gaps": {"within_digit_s": 0.5, "between_digits_s": 1.5, "between_codes_s": 2.5,
                      "before_repeat_s": 4.5},
                    "list": {"loops": true},
                    "framing_code": "12"
                    """);
            assertThat(lengths(row(marking, framed(true, false, 2), "11")))
                    .containsExactly("3.0 0.5", "1.5 0.5", "0.5 0.5", "2.5 0.5", "1.5 0.5 |", "4.5 0.5", "1.5 0.5 |");
        }

        @Test
        void stand_between_stretches() {
            assertThat(groups(row(FRAMED, framed(false, false, 1, 2), "11")))
                    .containsExactly(
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            FRAME,
                            FRAME,
                            FRAME,
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0",
                            "CODE 11 in 0");
        }

        @Test
        void the_row_may_end_after_each_list_and_after_the_last_frame() {
            List<Integer> ends = new ArrayList<>();
            SentList row = row(FRAMED, framed(true, true, 1, 1), "11");
            for (int at = 0; at < row.count(); at++) {
                if (row.mayEndAfter(at)) {
                    ends.add(at);
                }
            }
            // Frames of nine flashes in all, codes of six.
            assertThat(row.count()).isEqualTo(9 + 6 + 9 + 6 + 9);
            assertThat(ends).containsExactly(9 + 6 - 1, 9 + 6 + 9 + 6 - 1, 9 + 6 + 9 + 6 + 9 - 1);
        }
    }

    @Test
    void a_long_light_leads_each_sending_in() {
        SentList row = row(Sendings.shipped("quad-lead"), sent(1), "1121");
        assertThat(lengths(row))
                .containsExactly(
                        "3.0 2.5",
                        "2.5 0.5",
                        "2.5 0.5",
                        "2.5 0.5",
                        "0.5 0.5",
                        "2.5 0.5",
                        "2.5 2.5",
                        "2.5 0.5",
                        "2.5 0.5",
                        "2.5 0.5",
                        "0.5 0.5",
                        "2.5 0.5 |");
        assertThat(groups(row)).containsExactly("STEADY  in -1", "CODE 1121 in 0", "STEADY  in -1", "CODE 1121 in 0");
        assertThat(row.shortestLight()).isCloseTo(0.5, EXACT);
    }

    @Test
    void lengths_that_are_one_in_the_format_are_one_in_the_row() {
        SentList row = row(LOOP, sent(3), "11", "12", "21");
        assertThat(row.lights).hasSize(1);
        // Before the row, between digits, between codes, within a digit, before a repeat.
        assertThat(row.gaps)
                .extracting(gap -> seconds(gap.seconds()))
                .containsExactly("3.0", "1.5", "2.5", "0.5", "4.5");
    }

    @Test
    void the_shortest_light_is_the_shortest_of_the_row() {
        assertThat(row(Sendings.shipped("long-short"), sent(1), "11").shortestLight())
                .isCloseTo(0.4, EXACT);
    }

    @Test
    void a_recording_begins_in_a_gap_as_often_as_the_list_is_short() {
        // One second, and each flash after the first with half a second and the gap before it: 2, 4 and 2.
        SentList row = row(EVEN, sent(1), "11", "11");
        assertThat(row.entering()).isCloseTo(0.015 / (1 + 2.5 + 4.5 + 2.5), EXACT);
        assertThat(row(EVEN, sent(1), "11").entering()).isCloseTo(0.015 / (1 + 2.5), EXACT);
    }

    @Test
    void a_recording_begins_before_the_row_in_six_of_ten_and_always_where_a_separator_begins_it() {
        assertThat(row(EVEN, sent(1), "11").firstWeight()).isEqualTo(0.6);
        assertThat(row(EVEN, separated(true, false), "11").firstWeight()).isEqualTo(1);
    }

    @Test
    void it_is_as_open_as_its_plan() {
        SentList fromBefore = row(EVEN, separated(false, true), "11");
        assertThat(fromBefore.openStart()).isTrue();
        assertThat(fromBefore.openEnd()).isFalse();
        SentList toAfter = row(EVEN, separated(true, false), "11");
        assertThat(toAfter.openStart()).isFalse();
        assertThat(toAfter.openEnd()).isTrue();
    }

    @Test
    void a_row_of_hundreds_of_flashes_is_the_short_one_again_and_again() {
        List<String> one = lengths(row(LOOP, sent(1), "99", "98"));
        SentList row = row(LOOP, sent(10), "99", "98");
        List<String> all = lengths(row);
        assertThat(all).hasSize(350);
        for (int at = 0; at < all.size(); at++) {
            assertThat(all.get(at)).isEqualTo(at > 0 && at % 35 == 0 ? "4.5 0.5" : one.get(at % 35));
            assertThat(row.slotOf(at)).isEqualTo(2 * (at / 35) + (at % 35 < 18 ? 0 : 1));
        }
    }

    @Test
    void a_list_of_no_codes_is_no_flash() {
        assertThat(row(EVEN, sent(2)).count()).isZero();
    }

    @Test
    void a_code_that_cannot_be_sent_is_refused() {
        assertThatThrownBy(() -> row(EVEN, sent(1), "10")).isInstanceOf(NoSuchElementException.class);
    }
}
