package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.Sendings.begunBefore;
import static telltally.decoder.lattice.Sendings.repeat;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.unfinished;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Lists of two or three codes laid out by hand. */
class LayoutTest {
    private static final Offset<Double> EXACT = within(1e-12);
    private static final FormatModel EVEN = Sendings.shipped("pair-even");
    /** The gap before its list begins again is one of its own. */
    private static final FormatModel MARKING = Sendings.shipped("pair-loop");

    private static final double CHOOSING_A_CODE = 2 * Math.log(9);
    private static final double CODES_DIFFER = -7;
    private static final double SAME_CODE_TWICE = -8;
    private static final double WRONG_MARK = -6;
    private static final double PRIOR = -1.25;

    private static double rough(int codes, int phase, int[]... ids) {
        return new Layout(EVEN, codes, phase, PRIOR, ids).rough - PRIOR;
    }

    private static List<Block> pass(Found... sendings) {
        List<Block> blocks = new ArrayList<>();
        for (Found sending : sendings) {
            blocks.add(new Block(EVEN, List.of(sending)));
        }
        return blocks;
    }

    private static Layout filled(FormatModel model, int codes, int phase, List<Block> pass) {
        return filledByStretch(model, codes, phase, List.of(pass));
    }

    private static Layout filledByStretch(FormatModel model, int codes, int phase, List<List<Block>> passes) {
        int[][] none = {};
        Layout layout = new Layout(model, codes, phase, PRIOR, none);
        layout.fill(model, passes);
        return layout;
    }

    private static List<String> columns(Layout layout) {
        return layout.columns.stream()
                .map(column -> column == null ? "unseen" : column.best)
                .toList();
    }

    @Test
    void a_code_that_comes_again_saves_choosing_it() {
        assertThat(rough(2, 0, new int[] {0, 1})).isZero();
        assertThat(rough(2, 0, new int[] {0, 1, 0})).isCloseTo(CHOOSING_A_CODE, EXACT);
        assertThat(rough(2, 0, new int[] {0, 1, 0, 1})).isCloseTo(2 * CHOOSING_A_CODE, EXACT);
        assertThat(rough(1, 0, new int[] {0, 0, 0})).isCloseTo(2 * CHOOSING_A_CODE, EXACT);
    }

    @Test
    void a_code_in_the_place_of_another_costs_a_mistake() {
        assertThat(rough(2, 0, new int[] {0, 1, 0, 2})).isCloseTo(CHOOSING_A_CODE + CODES_DIFFER, EXACT);
        assertThat(rough(3, 0, new int[] {0, 1, 0, 1})).isCloseTo(CODES_DIFFER, EXACT);
    }

    @Test
    void the_first_stretch_begins_where_the_recording_does_and_each_other_with_the_list() {
        // Columns of two: the first stretch is the second column; the second stretch repeats it, or does not.
        assertThat(rough(2, 1, new int[] {0}, new int[] {1, 0})).isCloseTo(CHOOSING_A_CODE, EXACT);
        assertThat(rough(2, 0, new int[] {0}, new int[] {1, 0})).isCloseTo(CODES_DIFFER, EXACT);
        assertThat(rough(2, 1, new int[] {0, 1}, new int[] {1, 0})).isCloseTo(2 * CHOOSING_A_CODE, EXACT);
        assertThat(rough(3, 1, new int[] {0, 1}, new int[] {2, 0, 1})).isCloseTo(2 * CHOOSING_A_CODE, EXACT);
    }

    @Test
    void a_beginning_in_a_later_sending_of_the_list_stands_in_the_same_columns() {
        assertThat(rough(2, 3, new int[] {0}, new int[] {1, 0})).isCloseTo(CHOOSING_A_CODE, EXACT);
        Layout later = filledByStretch(EVEN, 2, 3, List.of(pass(whole("34")), pass(whole("21"), whole("34"))));
        assertThat(columns(later)).containsExactly("21", "34");
    }

    @Test
    void the_rough_weight_begins_with_how_probable_the_layout_is() {
        int[][] ids = {{0, 0}};
        assertThat(new Layout(EVEN, 1, 0, -3, ids).rough).isCloseTo(-3 + CHOOSING_A_CODE, EXACT);
    }

    @Test
    void sendings_of_one_column_are_one_piece_of_evidence() {
        Layout layout = filled(
                EVEN,
                2,
                0,
                pass(
                        whole(sign("3", 0.7, "4", 0.3), sign("1", 1.0)),
                        whole("56"),
                        whole(sign("3", 0.2, "4", 0.8), sign("1", 1.0)),
                        whole("56")));
        assertThat(columns(layout)).containsExactly("41", "56");
        // The chance that two signs drawn from what was seen are one, against one in nine, place by place.
        double first = Math.log(0.38 * 9) + Math.log(9);
        assertThat(layout.score).isCloseTo(PRIOR + first + CHOOSING_A_CODE, within(1e-7));
    }

    @Test
    void a_column_of_which_nothing_was_seen_says_nothing() {
        Layout layout = filled(EVEN, 3, 1, pass(whole("34"), whole("56")));
        assertThat(columns(layout)).containsExactly("unseen", "34", "56");
        assertThat(layout.full()).isFalse();
        assertThat(layout.score).isCloseTo(PRIOR, EXACT);
        assertThat(filled(EVEN, 2, 1, pass(whole("34"), whole("56"))).full()).isTrue();
    }

    @Test
    void one_code_in_two_columns_is_unlikely() {
        assertThat(filled(EVEN, 2, 0, pass(whole("34"), whole("34"))).score).isCloseTo(PRIOR + SAME_CODE_TWICE, EXACT);
        assertThat(filled(EVEN, 3, 0, pass(whole("34"), whole("21"), whole("34"))).score)
                .isCloseTo(PRIOR + SAME_CODE_TWICE, EXACT);
        assertThat(filled(EVEN, 3, 0, pass(whole("34"), whole("34"), whole("34"))).score)
                .isCloseTo(PRIOR + 2 * SAME_CODE_TWICE, EXACT);
        assertThat(filled(EVEN, 3, 1, pass(whole("34"), whole("34"))).score).isCloseTo(PRIOR + SAME_CODE_TWICE, EXACT);
    }

    @Test
    void a_list_begins_again_after_the_gap_that_says_so_and_nowhere_else() {
        assertThat(MARKING.marksRepeats).isTrue();
        List<Block> twice = pass(whole("34"), whole("56"), repeat("34"), whole("56"));
        double twoOfTwo = 2 * CHOOSING_A_CODE;
        assertThat(filled(MARKING, 2, 0, twice).score).isCloseTo(PRIOR + twoOfTwo, EXACT);
        // Begun with the second code, it should be the other gaps that say so: three wrong ones.
        assertThat(filled(MARKING, 2, 1, twice).score).isCloseTo(PRIOR + twoOfTwo + 3 * WRONG_MARK, EXACT);
        List<Block> unmarked = pass(whole("34"), whole("56"), whole("34"), whole("56"));
        assertThat(filled(MARKING, 2, 0, unmarked).score).isCloseTo(PRIOR + twoOfTwo + WRONG_MARK, EXACT);
    }

    @Test
    void the_gap_before_the_first_code_of_a_stretch_says_nothing() {
        assertThat(filled(MARKING, 2, 0, pass(repeat("34"), whole("56"))).score).isCloseTo(PRIOR, EXACT);
        assertThat(filled(MARKING, 2, 1, pass(repeat("34"))).score).isCloseTo(PRIOR, EXACT);
    }

    @Test
    void where_all_gaps_are_alike_none_says_that_the_list_begins_again() {
        assertThat(EVEN.marksRepeats).isFalse();
        assertThat(filled(EVEN, 2, 0, pass(whole("34"), repeat("56"))).score).isCloseTo(PRIOR, EXACT);
    }

    @Test
    void two_layouts_read_alike_where_every_column_does() {
        Layout layout = filled(EVEN, 2, 0, pass(whole("34"), whole("56")));
        assertThat(layout.readsAs(filled(EVEN, 2, 1, pass(whole("56"), whole("34")))))
                .isTrue();
        assertThat(layout.readsAs(filled(EVEN, 2, 0, pass(whole("34"), whole("57")))))
                .isFalse();
        assertThat(layout.readsAs(filled(EVEN, 2, 0, pass(whole("35"), whole("56")))))
                .isFalse();
        assertThat(layout.readsAs(filled(EVEN, 1, 0, pass(whole("34"))))).isFalse();
        assertThat(layout.readsAs(filled(EVEN, 3, 0, pass(whole("34"), whole("56"), whole("78")))))
                .isFalse();
    }

    @Test
    void an_unseen_column_reads_as_another_unseen_one_only() {
        Layout unseen = filled(EVEN, 2, 0, pass(whole("34")));
        assertThat(unseen.readsAs(filled(EVEN, 2, 0, pass(whole("34"))))).isTrue();
        assertThat(unseen.readsAs(filled(EVEN, 2, 1, pass(whole("34"))))).isFalse();
        assertThat(unseen.readsAs(filled(EVEN, 2, 0, pass(whole("34"), whole("56")))))
                .isFalse();
        assertThat(filled(EVEN, 2, 0, pass(whole("34"), whole("56"))).readsAs(unseen))
                .isFalse();
    }

    @Test
    void its_list_holds_whole_codes_each_once_in_the_order_of_the_columns() {
        Layout layout = filled(
                EVEN,
                5,
                4,
                pass(
                        unfinished(sign("2", 1.0), sign("2", 1.0)),
                        begunBefore(1, sign("4", 1.0)),
                        whole("56"),
                        whole("34"),
                        whole("56")));
        assertThat(columns(layout)).containsExactly("4", "56", "34", "56", "22");
        assertThat(layout.list()).containsExactly("56", "34");
        assertThat(filled(EVEN, 2, 1, pass(whole("34"))).list()).containsExactly("34");
    }

    @Test
    void a_code_whose_parts_were_seen_in_two_cut_sendings_is_not_in_its_list() {
        Layout layout = filled(EVEN, 1, 0, pass(begunBefore(1, sign("4", 1.0)), unfinished(sign("3", 1.0))));
        assertThat(columns(layout)).containsExactly("34");
        assertThat(layout.list()).isEmpty();
    }
}
