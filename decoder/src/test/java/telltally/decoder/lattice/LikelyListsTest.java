package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.decoder.lattice.Sendings.begunBefore;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.unfinished;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Every list that a few blocks suggest, written out. */
class LikelyListsTest {
    private static final FormatModel EVEN = Sendings.shipped("pair-even");
    private static final int LOOPS = 0;

    private static List<Block> pass(Found... sendings) {
        List<Block> blocks = new ArrayList<>();
        for (Found sending : sendings) {
            blocks.add(new Block(EVEN, List.of(sending)));
        }
        return blocks;
    }

    private static List<Block> sent(String codes) {
        return pass(Arrays.stream(codes.split(" ")).map(Sendings::whole).toArray(Found[]::new));
    }

    /** A layout from the first column on. */
    private static Layout layout(int codes, List<List<Block>> passes) {
        int[][] none = {};
        Layout layout = new Layout(EVEN, codes, 0, 0, none);
        layout.fill(EVEN, passes);
        return layout;
    }

    /** The lists that passes suggest whose best layout has so many columns, codes apart by blanks. */
    private static List<String> lists(int listTimes, int codes, List<List<Block>> passes) {
        return lists(listTimes, passes, layout(codes, passes));
    }

    private static List<String> lists(int listTimes, List<List<Block>> passes, Layout... layouts) {
        return new LikelyLists(listTimes, passes, List.of(layouts))
                .lists().stream().map(list -> String.join(" ", list)).toList();
    }

    @Nested
    class Windows {
        @Test
        void are_the_first_the_last_and_the_second_few_blocks_about_as_many_as_the_list_has_codes() {
            assertThat(lists(LOOPS, List.of(sent("11 22 33 44 55")), layout(2, List.of(sent("77 88")))))
                    .containsExactly("77 88", "11", "55", "22", "11 22", "44 55", "33 44", "11 22 33", "33 44 55");
        }

        @Test
        void are_as_long_as_there_are_blocks_and_no_longer() {
            assertThat(lists(LOOPS, 1, List.of(sent("11")))).containsExactly("11");
            assertThat(lists(LOOPS, 2, List.of(sent("11 22")))).containsExactly("11 22", "11", "22");
            assertThat(lists(LOOPS, 3, List.of(sent("11 22 33")))).containsExactly("11 22 33", "11 22", "22 33");
        }

        @Test
        void stand_in_each_stretch_between_frames() {
            assertThat(lists(LOOPS, List.of(sent("11 22"), sent("33 44")), layout(2, List.of(sent("11 22")))))
                    .containsExactly("11 22", "11", "22", "33", "44", "33 44");
        }

        @Test
        void hold_a_code_once_and_no_code_that_was_not_seen_whole() {
            List<List<Block>> passes = List.of(pass(whole("11"), unfinished(sign("2", 1.0)), whole("11"), whole("33")));
            assertThat(lists(LOOPS, passes, layout(3, List.of(sent("11 33"))))).containsExactly("11 33", "11");
        }

        @Test
        void of_a_list_sent_twice_are_halves_too() {
            assertThat(lists(2, List.of(sent("11 22 33 44 55 66 77")), layout(1, List.of(sent("11")))))
                    .containsExactly("11", "77", "22", "11 22", "66 77", "33 44", "11 22 33", "44 55 66", "55 66 77");
            assertThat(lists(LOOPS, List.of(sent("11 22 33 44 55 66 77")), layout(1, List.of(sent("11")))))
                    .containsExactly("11", "77", "22", "11 22", "66 77", "33 44");
        }

        @Test
        void of_one_block_that_should_come_twice_are_no_empty_lists() {
            assertThat(lists(2, 1, List.of(sent("11")))).containsExactly("11");
        }
    }

    @Nested
    class AFirstBlockInDoubt {
        private final Found first = whole(sign("1", 0.75, "2", 0.25), sign("1", 1.0));

        @Test
        void may_be_any_code_that_it_allows() {
            Layout other = layout(2, List.of(sent("55 66")));
            assertThat(lists(LOOPS, List.of(pass(first, whole("33"))), other))
                    .containsExactly("55 66", "11", "21", "33", "11 33", "21 33");
        }

        @Test
        void is_the_first_of_all_and_of_no_later_stretch() {
            Layout other = layout(1, List.of(sent("55")));
            assertThat(lists(LOOPS, List.of(sent("44"), pass(first)), other)).containsExactly("55", "44", "11");
        }

        @Test
        void stands_at_the_beginning_of_a_window_only_where_the_recording_begins() {
            Layout other = layout(1, List.of(sent("55")));
            assertThat(lists(LOOPS, List.of(pass(whole("44"), first)), other))
                    .containsExactly("55", "44", "11", "44 11");
        }

        @Test
        void may_be_the_sixth_in_rank_but_not_the_seventh() {
            Guess seven = sign("1", 0.22, "2", 0.2, "3", 0.18, "4", 0.16, "5", 0.12, "6", 0.08, "7", 0.04);
            Layout other = layout(1, List.of(sent("99")));
            assertThat(lists(LOOPS, List.of(pass(whole(seven, sign("1", 1.0)))), other))
                    .containsExactly("99", "11", "21", "31", "41", "51", "61");
        }

        @Test
        void may_be_one_chance_in_half_a_million_but_not_in_two() {
            Layout other = layout(1, List.of(sent("99")));
            Found rarely = whole(sign("1", 1 - 2.5e-6, "2", 2e-6, "3", 5e-7), sign("1", 1.0));
            assertThat(lists(LOOPS, List.of(pass(rarely)), other)).containsExactly("99", "11", "21");
        }
    }

    @Nested
    class AColumnInDoubt {
        private final List<List<Block>> none = List.of(sent("99"));

        private Layout doubtful(String first) {
            return layout(2, List.of(pass(whole(first), whole(sign("5", 0.75, "6", 0.25), sign("5", 1.0)))));
        }

        @Test
        void is_varied_in_its_place() {
            Layout layout = layout(
                    2,
                    List.of(pass(
                            whole(sign("1", 0.75, "2", 0.25), sign("1", 1.0)),
                            whole(sign("5", 0.75, "6", 0.25), sign("5", 1.0)))));
            assertThat(lists(LOOPS, none, layout)).containsExactly("11 55", "99", "21 55", "11 65");
        }

        @Test
        void is_varied_in_the_three_best_layouts() {
            assertThat(lists(LOOPS, none, doubtful("11"), doubtful("22"), doubtful("33"), doubtful("44")))
                    .containsExactly("11 55", "22 55", "33 55", "44 55", "99", "11 65", "22 65", "33 65");
        }

        @Test
        void is_varied_by_the_three_likeliest_of_one_in_ten_thousand_or_more() {
            Layout five = layout(
                    1, List.of(pass(whole(sign("1", 0.4, "2", 0.3, "3", 0.15, "4", 0.1, "5", 0.05), sign("1", 1.0)))));
            assertThat(lists(LOOPS, none, five)).containsExactly("11", "99", "21", "31", "41");
            Layout rare = layout(1, List.of(pass(whole(sign("1", 1 - 2.5e-4, "2", 2e-4, "3", 5e-5), sign("1", 1.0)))));
            assertThat(lists(LOOPS, none, rare)).containsExactly("11", "99", "21");
        }

        @Test
        void that_was_not_seen_whole_or_not_at_all_is_not_varied() {
            Layout cut =
                    layout(3, List.of(pass(whole("11"), begunBefore(0, sign("5", 0.75, "6", 0.25), sign("5", 1.0)))));
            assertThat(lists(LOOPS, none, cut)).containsExactly("11");
        }
    }

    @Test
    void the_lists_of_the_layouts_come_first_in_their_order() {
        assertThat(lists(LOOPS, List.of(sent("99")), layout(1, List.of(sent("33"))), layout(1, List.of(sent("22")))))
                .containsExactly("33", "22", "99");
    }

    @Test
    void nothing_suggests_nothing() {
        assertThat(lists(LOOPS, List.of())).isEmpty();
    }
}
