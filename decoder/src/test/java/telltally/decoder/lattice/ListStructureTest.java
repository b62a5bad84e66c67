package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.AllLayouts.AGAIN;
import static telltally.decoder.lattice.AllLayouts.ONE_CODE;
import static telltally.decoder.lattice.AllLayouts.SAME_CODE_TWICE;
import static telltally.decoder.lattice.AllLayouts.UNLIKELY_CUT;
import static telltally.decoder.lattice.Sendings.TWO_DIGITS;
import static telltally.decoder.lattice.Sendings.begunBefore;
import static telltally.decoder.lattice.Sendings.repeat;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.unfinished;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.ListStructure.Column;
import telltally.simulator.chance.Chance;

/** How long lists are and where recordings begin in them, weighed by hand and against the sum over every layout. */
class ListStructureTest {
    private static final Offset<Double> EXACT = within(1e-10);
    /** Its list is sent twice, and all gaps between codes are alike. */
    private static final FormatModel TWICE = Sendings.shipped("pair-even");

    private static final FormatModel LOOPING = looping("\"most_codes\": 9", "");
    private static final FormatModel FRAMED = looping("\"most_codes\": 9", ", \"framing_code\": \"12\"");

    private static FormatModel looping(String list, String rest) {
        return Sendings.format(TWO_DIGITS + "\"list\": {\"loops\": true, " + list + "}" + rest);
    }

    private static ListStructure of(FormatModel model, boolean midway, boolean early, Found... groups) {
        return new ListStructure(model, List.of(groups), midway, early);
    }

    private static Found[] sent(String... codes) {
        Found[] groups = new Found[codes.length];
        for (int i = 0; i < codes.length; i++) {
            groups[i] = whole(codes[i]);
        }
        return groups;
    }

    private static List<String> codes(ListStructure structure) {
        return structure.columns.stream().map(Column::code).toList();
    }

    private static double evidence(ListStructure structure) {
        return Math.exp(structure.logEvidence);
    }

    @Nested
    class AListSentTwice {
        @Test
        void whole_is_one_code_twice_rather_than_half_of_two_alike() {
            ListStructure structure = of(TWICE, false, false, sent("34", "34"));
            assertThat(codes(structure)).containsExactly("34");
            assertThat(structure.whole).isTrue();
            double once = ONE_CODE * AGAIN;
            // Two codes alike, sent once of twice: the first time or the second, one of four places to be cut at.
            double alike = 2 * ONE_CODE * ONE_CODE * UNLIKELY_CUT / 4 * SAME_CODE_TWICE;
            assertThat(evidence(structure)).isCloseTo(once + alike, within(1e-12));
            assertThat(structure.columns.get(0).probability()).isCloseTo(once / (once + alike), within(1e-13));
        }

        @Test
        void is_unlikely_to_be_seen_once_where_neither_end_was_cut() {
            ListStructure structure = of(TWICE, false, false, sent("34"));
            assertThat(codes(structure)).containsExactly("34");
            assertThat(structure.whole).isFalse();
            // Either sending may be missing.
            assertThat(evidence(structure)).isCloseTo(2 * ONE_CODE * UNLIKELY_CUT / 2, EXACT);
            assertThat(structure.columns.get(0).probability()).isCloseTo(1, EXACT);
        }

        @Test
        void may_be_seen_once_where_the_recording_stops_early() {
            // The second sending is missing, or the first, which would be unlikely.
            assertThat(evidence(of(TWICE, false, true, sent("34"))))
                    .isCloseTo(ONE_CODE / 2 + ONE_CODE * UNLIKELY_CUT / 2, EXACT);
        }

        @Test
        void may_be_seen_once_where_the_recording_begins_midway() {
            // The first sending is missing, or the second as well as the beginning, which would be unlikely.
            assertThat(evidence(of(TWICE, true, false, sent("34"))))
                    .isCloseTo(ONE_CODE / 2 + ONE_CODE * UNLIKELY_CUT / 4, EXACT);
        }

        @Test
        void may_be_seen_once_where_both_ends_were_cut() {
            // The second is missing, at one place of two; the first is, and nothing after.
            assertThat(evidence(of(TWICE, true, true, sent("34")))).isCloseTo(ONE_CODE / 4 + ONE_CODE / 2, EXACT);
        }

        @Test
        void of_two_codes_is_whole_with_four() {
            ListStructure structure = of(TWICE, false, false, sent("34", "56", "34", "56"));
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.whole).isTrue();
            assertThat(structure.stretches).containsExactly(4);
            assertThat(of(TWICE, false, false, sent("34", "56", "34")).whole).isFalse();
        }

        @Test
        void begun_with_its_second_code_is_read_from_its_first() {
            ListStructure structure = of(TWICE, true, false, sent("56", "34", "56"));
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.whole).isFalse();
        }
    }

    @Nested
    class ALoop {
        @Test
        void is_complete_after_any_number_of_whole_lists() {
            assertThat(of(LOOPING, false, false, sent("34", "56")).whole).isTrue();
            assertThat(of(LOOPING, false, false, sent("34", "56", "34", "56", "34", "56")).whole)
                    .isTrue();
            assertThat(of(LOOPING, false, false, sent("34", "56", "34")).whole).isFalse();
        }

        @Test
        void of_one_code_is_a_loop_however_often_it_is_seen() {
            ListStructure structure = of(LOOPING, false, false, sent("34", "34", "34"));
            assertThat(codes(structure)).containsExactly("34");
            // As two codes alike, cut; from the second of two alike; as three alike.
            double once = ONE_CODE * AGAIN * AGAIN;
            double asTwo = 2 * Math.pow(ONE_CODE, 2) * UNLIKELY_CUT / 2 * AGAIN * SAME_CODE_TWICE;
            double asThree = Math.pow(ONE_CODE, 3) * SAME_CODE_TWICE * SAME_CODE_TWICE;
            double rough = Math.log(once) - Math.log(asThree / SAME_CODE_TWICE / SAME_CODE_TWICE);
            assertThat(rough).isLessThan(12);
            assertThat(evidence(structure)).isCloseTo(once + asTwo + asThree, within(1e-9));
        }

        @Test
        void may_be_begun_and_left_anywhere_where_both_ends_were_cut() {
            ListStructure structure = of(LOOPING, true, true, sent("34", "56"));
            // In either order: begun with the first code and complete, or with the second and cut at one of two places.
            double inOrder = Math.pow(ONE_CODE, 2) / 2;
            double turned = Math.pow(ONE_CODE, 2) / 2 / 2;
            double asOne = ONE_CODE * Math.pow(2e-8, 2);
            assertThat(evidence(structure)).isCloseTo(inOrder + turned + asOne, EXACT);
            assertThat(structure.columns.get(0).probability()).isCloseTo(inOrder / (inOrder + turned), EXACT);
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.whole).isTrue();
        }

        @Test
        void with_a_gap_of_its_own_before_it_begins_again_is_begun_there() {
            FormatModel marking = Sendings.shipped("pair-loop");
            ListStructure structure =
                    of(marking, true, true, whole("56"), repeat("34"), whole("56"), repeat("34"), whole("56"));
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.whole).isFalse();
        }

        @Test
        void of_which_a_column_was_not_seen_is_not_whole() {
            // Both sendings hold a code amid which the recording was cut.
            ListStructure structure =
                    of(LOOPING, true, true, begunBefore(1, sign("4", 1.0)), unfinished(sign("3", 1.0)));
            assertThat(codes(structure)).containsExactly("34");
            assertThat(structure.readCodes()).isEmpty();
        }
    }

    @Test
    void no_list_is_longer_than_the_format_allows() {
        FormatModel shortLists = looping("\"most_codes\": 2", "");
        assertThat(codes(of(LOOPING, true, true, sent("34", "56", "78")))).containsExactly("34", "56", "78");
        assertThat(of(shortLists, true, true, sent("34", "56", "78")).columns).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void cut_at_its_beginning_or_at_its_end_alike_a_list_begins_where_it_was_seen() {
        ListStructure structure = of(LOOPING, false, false, sent("34", "56", "15", "34", "56", "15", "34", "56"));
        assertThat(codes(structure)).containsExactly("34", "56", "15");
        assertThat(structure.columns.get(0).probability()).isCloseTo(0.5, within(1e-3));
    }

    /** Two codes twice make four groups; six once had no layout at all, and the decoder broke off. */
    @Test
    void more_groups_than_any_list_has_are_lists_sent_more_often_than_they_should_be() {
        FormatModel shortLists = Sendings.format(TWO_DIGITS + "\"list\": {\"list_times\": 2, \"most_codes\": 2}");
        ListStructure structure = of(shortLists, false, false, sent("12", "21", "12", "21", "12", "21"));
        assertThat(codes(structure)).containsExactly("12", "21");
        assertThat(structure.whole).isFalse();
        double two = ONE_CODE * ONE_CODE * Math.pow(AGAIN, 4);
        double overfull = UNLIKELY_CUT * UNLIKELY_CUT;
        // Or begun in the second of four places, which ends as evenly.
        double begun = UNLIKELY_CUT / 4;
        assertThat(evidence(structure) / (two * overfull * (1 + begun))).isCloseTo(1, within(1e-6));
    }

    @Test
    void a_list_is_found_among_more_layouts_than_are_weighed() {
        ListStructure structure =
                of(LOOPING, true, true, sent("56", "78", "34", "56", "78", "34", "56", "78", "34", "56"));
        // Of its turns the one that ends where the recording does.
        assertThat(codes(structure)).containsExactly("78", "34", "56");
    }

    @Test
    void where_signs_are_in_doubt_a_layout_is_weighed_that_the_likeliest_codes_deny() {
        Found one = whole(sign("3", 1.0), sign("4", 0.6, "5", 0.4));
        Found again = whole(sign("3", 1.0), sign("4", 0.4, "5", 0.6));
        Found two = whole(sign("6", 1.0), sign("7", 0.6, "8", 0.4));
        Found twoAgain = whole(sign("6", 1.0), sign("7", 0.4, "8", 0.6));
        ListStructure structure = of(LOOPING, false, false, one, two, again, twoAgain);
        // Four codes, or two of which each came twice: that two second digits agree is 0.48, against one in nine.
        double four = Math.pow(ONE_CODE, 4);
        double two48 = Math.pow(ONE_CODE, 2) * Math.pow(9 * 9 * 0.48, 2);
        assertThat(evidence(structure)).isCloseTo(four + two48, within(1e-3));
        assertThat(codes(structure)).hasSize(2);
    }

    @Test
    void where_all_signs_are_sure_a_layout_in_which_two_codes_differ_is_left_out() {
        Found one = whole(sign("3", 1.0), sign("4", 0.9995, "5", 0.0005));
        Found again = whole(sign("3", 1.0), sign("4", 0.0005, "5", 0.9995));
        Found two = whole(sign("6", 1.0), sign("7", 0.9995, "8", 0.0005));
        Found twoAgain = whole(sign("6", 1.0), sign("7", 0.0005, "8", 0.9995));
        ListStructure structure = of(LOOPING, false, false, one, two, again, twoAgain);
        assertThat(evidence(structure)).isCloseTo(Math.pow(ONE_CODE, 4), within(1e-6));
    }

    @Nested
    class Framed {
        @Test
        void codes_stand_between_frames_and_frames_are_no_codes() {
            ListStructure structure = of(FRAMED, false, false, sent("12", "34", "56", "12"));
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.framedFirst).isTrue();
            assertThat(structure.framedLast).isTrue();
            assertThat(structure.framing).hasSize(2);
            assertThat(structure.stretches).containsExactly(2);
            assertThat(structure.whole).isTrue();
            // Each frame saves choosing a code.
            double mixed = ONE_CODE * Math.pow(2e-8, 2);
            assertThat(structure.logEvidence)
                    .isCloseTo(2 * Math.log(AGAIN) + Math.log(ONE_CODE * ONE_CODE + mixed), EXACT);
        }

        @Test
        void a_frame_may_be_seen_at_one_end_or_amid_or_nowhere() {
            ListStructure before = of(FRAMED, false, true, sent("12", "34"));
            assertThat(before.framedFirst).isTrue();
            assertThat(before.framedLast).isFalse();
            ListStructure after = of(FRAMED, true, false, sent("34", "12"));
            assertThat(after.framedFirst).isFalse();
            assertThat(after.framedLast).isTrue();
            ListStructure amid = of(FRAMED, true, true, sent("34", "12", "34"));
            assertThat(amid.framedFirst).isFalse();
            assertThat(amid.framedLast).isFalse();
            assertThat(amid.stretches).containsExactly(1, 1);
            assertThat(of(FRAMED, false, false, sent("34")).framing).isEmpty();
        }

        @Test
        void nothing_between_frames_is_no_list() {
            ListStructure structure = of(FRAMED, false, false, sent("12", "12"));
            assertThat(structure.columns).isEmpty();
            assertThat(structure.stretches).isEmpty();
            assertThat(structure.whole).isFalse();
            assertThat(structure.logEvidence).isCloseTo(2 * Math.log(AGAIN), EXACT);
            assertThat(structure.lists()).isEmpty();
        }

        @Test
        void a_stretch_that_frames_close_is_very_unlikely_to_lack_a_code() {
            ListStructure structure = of(FRAMED, false, false, sent("12", "34", "56", "12", "34", "12"));
            assertThat(codes(structure)).containsExactly("34", "56");
            assertThat(structure.whole).isFalse();
            // Two codes, with one lacking, rather than one, in which three sendings would differ.
            assertThat(structure.logEvidence)
                    .isCloseTo(
                            3 * Math.log(AGAIN) + Math.log(ONE_CODE * ONE_CODE * UNLIKELY_CUT * UNLIKELY_CUT * AGAIN),
                            within(1e-6));
        }

        @Test
        void the_last_stretch_may_be_cut_where_no_frame_closes_it() {
            ListStructure structure = of(FRAMED, false, true, sent("12", "34", "56", "12", "34"));
            assertThat(structure.logEvidence)
                    .isCloseTo(2 * Math.log(AGAIN) + Math.log(ONE_CODE * ONE_CODE * AGAIN / 2), within(1e-6));
        }

        @Test
        void a_recording_that_begins_before_a_frame_begins_anywhere_in_the_list() {
            ListStructure structure = of(FRAMED, true, false, sent("56", "12", "34", "56", "12"));
            assertThat(codes(structure)).containsExactly("34", "56");
            // Begun at one place of two, and nothing lacking.
            assertThat(structure.logEvidence)
                    .isCloseTo(2 * Math.log(AGAIN) + Math.log(ONE_CODE * ONE_CODE * AGAIN / 2), within(1e-6));
        }
    }

    @Test
    void a_code_that_came_too_seldom_speaks_against_the_whole() {
        FormatModel thrice = Sendings.shipped("pair-thrice");
        double twoOfThree = 0.002;
        assertThat(of(thrice, false, false, sent("34", "34", "34")).logEvidence)
                .isCloseTo(Math.log(ONE_CODE * AGAIN * AGAIN), EXACT);
        assertThat(of(thrice, false, false, sent("34", "34")).logEvidence)
                .isCloseTo(Math.log(ONE_CODE * AGAIN * twoOfThree), EXACT);
    }

    @Test
    void the_codes_of_its_blocks_are_read_each_by_itself() {
        ListStructure structure = of(
                FRAMED,
                true,
                false,
                begunBefore(1, sign("7", 1.0)),
                whole("34"),
                whole("12"),
                whole("56"),
                whole("34"));
        assertThat(structure.readCodes()).containsExactly("34", "56");
    }

    @Test
    void the_first_of_its_likely_lists_is_the_one_it_reads() {
        ListStructure structure = of(TWICE, true, false, sent("56", "34", "56"));
        assertThat(structure.lists().iterator().next()).containsExactly("34", "56");
    }

    @Property(tries = 100)
    void what_speaks_for_the_groups_is_the_sum_over_every_layout(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 4) int count,
            @ForAll boolean twice,
            @ForAll boolean midway,
            @ForAll boolean early) {
        Chance chance = Chance.of(seed);
        FormatModel model = twice ? TWICE : FRAMED;
        List<Found> groups = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double first = chance.between(0.1, 0.9);
            groups.add(
                    !twice && chance.happens(0.3)
                            ? whole("12")
                            : whole(sign("3", first, "4", 1 - first), sign("7", 0.5, "8", 0.5)));
        }
        ListStructure structure = new ListStructure(model, groups, midway, early);
        AllLayouts all = new AllLayouts(model, groups, midway, early);
        assertThat(structure.logEvidence).isCloseTo(all.log(), within(1e-8));
    }
}
