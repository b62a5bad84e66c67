package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.GroupSearch.CLEAR;
import static telltally.decoder.lattice.GroupSearch.CLOSE;
import static telltally.decoder.lattice.GroupSearch.LETTERS;
import static telltally.decoder.lattice.GroupSearch.NOISY;
import static telltally.decoder.lattice.GroupSearch.PAIR;
import static telltally.decoder.lattice.GroupSearch.SESSIONS;

import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.GroupFinder.Oddity;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;

class GroupFinderTest {
    private static GroupFinder find(FlashFormat format, String darkAndLitSeconds) {
        return GroupSearch.of(format, CLEAR, darkAndLitSeconds).finder();
    }

    /** Kind, first flash, last flash, first flash of the group after it, as the best path reads it. */
    private static List<Tuple> groups(GroupFinder finder) {
        return finder.groups.stream()
                .map(found -> Tuple.tuple(
                        found.kind, found.firstFlash, found.lastFlash, found.nextFlash, String.join("", found.read)))
                .toList();
    }

    private static Tuple group(GroupKind kind, int first, int last, int next, String read) {
        return Tuple.tuple(kind, first, last, next, read);
    }

    @Nested
    class Groups {
        @Test
        void codes_are_told_with_their_flashes_and_signs() {
            GroupFinder finder = find(PAIR, "3  0.5 2 0.5 0.5 0.5  4  0.5 0.5 0.5 0.5 0.5 2 0.5  8");

            assertThat(groups(finder))
                    .containsExactly(group(GroupKind.CODE, 0, 2, 3, "12"), group(GroupKind.CODE, 3, 6, 7, "31"));
            assertThat(finder.groups).allSatisfy(found -> {
                assertThat(found.places).containsExactly(0, 1);
                assertThat(found.firstPlace).isZero();
                assertThat(found.begunBefore).isFalse();
                assertThat(found.unfinished).isFalse();
                assertThat(found.repeat).isFalse();
                assertThat(found.afterUnseenSeparator).isFalse();
            });
            assertThat(finder.groups).extracting(Found::digits).containsExactly("12", "31");
            assertThat(finder.oddities).isEmpty();
            assertThat(finder.startsMidway).isFalse();
            assertThat(finder.stopsEarly).isFalse();
            assertThat(finder.unexplained).isZero();
        }

        @Test
        void a_code_after_the_gap_of_a_repeat_says_that_the_list_begins_again() {
            GroupFinder finder = find(PAIR, "3  0.5 2 0.5  4  0.5 2 0.5 0.5 0.5  5.5  0.5 2 0.5  8");

            assertThat(finder.groups).extracting(found -> found.repeat).containsExactly(false, false, true);
        }

        @Test
        void a_separator_and_cylinder_flashes_are_groups_of_their_own() {
            assertThat(groups(find(SESSIONS, "3  0.5 2 0.5  7.5  0.5  7.5  0.5 2 0.5 0.5 0.5  9")))
                    .containsExactly(
                            group(GroupKind.CODE, 0, 1, 2, "11"),
                            group(GroupKind.SEPARATOR, 2, 2, 3, "1"),
                            group(GroupKind.CODE, 3, 5, 6, "12"));
            assertThat(groups(find(SESSIONS, "3  0.5 0.5 0.5  60  0.5 2 0.5 0.5 0.5  9")))
                    .containsExactly(group(GroupKind.CYLINDERS, 0, 1, 2, "2"), group(GroupKind.CODE, 2, 4, 5, "12"));
        }

        @Test
        void flashes_that_nothing_explains_leave_the_code_before_them_unfinished_and_are_counted() {
            GroupFinder finder = find(PAIR, "3  0.5 0.5 0.5  20 9 9 9  20  0.5 2 0.5 0.5 0.5  8");

            assertThat(groups(finder))
                    .containsExactly(
                            group(GroupKind.CODE, 0, 1, 2, ""),
                            group(GroupKind.UNREADABLE, 2, 3, 4, ""),
                            group(GroupKind.CODE, 4, 6, 7, "12"));
            assertThat(finder.groups).extracting(found -> found.unfinished).containsExactly(true, false, false);
            assertThat(finder.unexplained).isEqualTo(2);
            assertThat(finder.groups.get(1).digits()).isEmpty();
        }

        @Test
        void signs_of_any_number_are_read_as_the_best_path_reads_them() {
            GroupSearch search = GroupSearch.of(LETTERS, CLEAR, "1  0.2 0.2 0.6  0.6  0.2  1.4  0.6 0.2 0.2  3");

            assertThat(groups(search.finder()))
                    .containsExactly(group(GroupKind.CODE, 0, 2, 3, "AE"), group(GroupKind.CODE, 3, 4, 5, "N"));
            Guess second = search.groups().get(0).signs.get(1);
            assertThat(search.groups().get(0).signs).hasSize(2);
            assertThat(second.probability("E")).isCloseTo(1, within(1e-7));
            // What was seen of it leaves a hundred millionth of an even share for each of the other two.
            assertThat(second.probability("A")).isCloseTo(1e-8 / 3, within(1e-15));
        }
    }

    @Nested
    class Brinks {
        @Test
        void a_recording_that_ends_within_a_flash_leaves_the_code_unfinished() {
            GroupFinder finder = find(PAIR, "3  0.5 2 0.5 0.5 0.5  4  0.3");

            assertThat(groups(finder))
                    .containsExactly(group(GroupKind.CODE, 0, 2, 3, "12"), group(GroupKind.CODE, 3, 3, 4, ""));
            assertThat(finder.groups).extracting(found -> found.unfinished).containsExactly(false, true);
            assertThat(finder.stopsEarly).isTrue();
        }

        @Test
        void a_recording_that_ends_between_digits_has_read_the_digit_before() {
            GroupFinder finder = find(PAIR, "3  0.5 0.5 0.5 2 0.5 0.5 0.5  4  0.5 0.5 0.5  1.5");

            assertThat(groups(finder))
                    .containsExactly(group(GroupKind.CODE, 0, 3, 4, "22"), group(GroupKind.CODE, 4, 5, 6, "2"));
            assertThat(finder.groups).extracting(found -> found.unfinished).containsExactly(false, true);
            assertThat(finder.stopsEarly).isTrue();
        }

        @Test
        void a_recording_that_ends_long_after_a_code_does_not_stop_early() {
            GroupFinder finder = find(PAIR, "3  0.5 2 0.5  8");

            assertThat(finder.stopsEarly).isFalse();
            assertThat(finder.groups.get(0).unfinished).isFalse();
        }

        @Test
        void a_recording_that_begins_within_a_code_has_its_rest_alone() {
            // Two flashes, then a whole code: what is left of a second digit of 2 or 3.
            GroupFinder finder = find(PAIR, "0.1  0.5 0.5 0.5  4  0.5 2 0.5 0.5 0.5  8");

            assertThat(finder.startsMidway).isTrue();
            assertThat(finder.groups).extracting(found -> found.begunBefore).containsExactly(true, false);
            assertThat(finder.groups.get(0).firstPlace).isEqualTo(1);
            assertThat(finder.groups.get(0).unfinished).isFalse();
            assertThat(finder.groups.get(1).digits()).isEqualTo("12");
        }

        /** Four digits, each code announced by a long light. */
        private final FlashFormat announced = Recordings.format("announced", """
                "flashes_s": {"flash": 0.5},
                "code": {"places": [{"flash": "flash", "from": 1, "to": 3}, {"flash": "flash", "from": 1, "to": 3}]},
                "lead_in": {"lit_s": 2.5, "dark_after_s": 2.5},
                "gaps": {"within_digit_s": 0.5, "between_digits_s": 2.5, "between_codes_s": 2.5},
                "list": {"each_code_times": 2}
                """);

        private static final String CODE_12 = "0.5 2.5 0.5 0.5 0.5";

        @Test
        void a_recording_that_begins_before_the_first_flash_of_a_code_has_it_whole() {
            GroupFinder finder = find(announced, "2  " + CODE_12 + "  2.5  2.5 2.5 " + CODE_12 + " 8");

            assertThat(finder.startsMidway).isTrue();
            assertThat(finder.groups.get(0).digits()).isEqualTo("12");
            assertThat(finder.groups).extracting(found -> found.begunBefore).containsOnly(false);
        }

        @Test
        void a_recording_that_begins_within_the_first_flash_of_a_code_has_its_rest_alone() {
            GroupFinder finder = find(announced, "0 0.3 2.5 0.5 0.5 0.5  2.5  2.5 2.5 " + CODE_12 + " 8");

            assertThat(finder.startsMidway).isTrue();
            assertThat(finder.groups).extracting(found -> found.begunBefore).containsExactly(true, false, false);
        }

        @Test
        void light_at_the_brink_that_is_no_flash_does_not_cut_the_code_after_it() {
            GroupFinder finder = find(announced, "0 0.06 2  " + CODE_12 + "  2.5  2.5 2.5 " + CODE_12 + " 8");

            assertThat(finder.startsMidway).isTrue();
            assertThat(finder.groups.get(0).firstFlash).isEqualTo(1);
            assertThat(finder.groups).extracting(found -> found.begunBefore).containsOnly(false);
        }

        @Test
        void a_lead_in_is_steady_light_without_signs() {
            GroupFinder finder = find(announced, "3  2.5 2.5 " + CODE_12 + "  2.5  2.5 2.5 " + CODE_12 + " 8");

            assertThat(groups(finder))
                    .containsExactly(
                            group(GroupKind.STEADY, 0, 0, 1, ""),
                            group(GroupKind.CODE, 1, 3, 4, "12"),
                            group(GroupKind.STEADY, 4, 4, 5, ""),
                            group(GroupKind.CODE, 5, 7, 8, "12"));
            assertThat(finder.startsMidway).isFalse();
        }
    }

    @Nested
    class Groups_unseen {
        @Test
        void a_separator_that_was_not_seen_is_no_group_but_the_code_after_it_begins_a_segment() {
            // 7.5 s, a flash of 0.5 s and 7.5 s.
            GroupFinder finder = find(SESSIONS, "3  0.5 2 0.5  15.5  0.5 2 0.5 0.5 0.5  4  0.5 2 0.5 0.5 0.5  9");

            assertThat(groups(finder))
                    .containsExactly(
                            group(GroupKind.CODE, 0, 1, 2, "11"),
                            group(GroupKind.CODE, 2, 4, 5, "12"),
                            group(GroupKind.CODE, 5, 7, 8, "12"));
            assertThat(finder.groups)
                    .extracting(found -> found.afterUnseenSeparator)
                    .containsExactly(false, true, false);
        }

        @Test
        void another_group_that_was_not_seen_begins_no_segment() {
            // A lead-in is missing: 2.5 s on either side and its 2.5 s.
            FlashFormat format = Recordings.format("announced", """
                    "flashes_s": {"flash": 0.5},
                    "code": {"places": [{"flash": "flash", "from": 1, "to": 3}]},
                    "lead_in": {"lit_s": 2.5, "dark_after_s": 2.5},
                    "gaps": {"within_digit_s": 0.5, "before_repeat_s": 2.5},
                    "list": {"list_times": 1, "most_codes": 1}
                    """);
            GroupFinder finder = find(format, "3  2.5 2.5 0.5 0.5 0.5  7.5  0.5  8");

            assertThat(groups(finder))
                    .containsExactly(
                            group(GroupKind.STEADY, 0, 0, 1, ""),
                            group(GroupKind.CODE, 1, 2, 3, "2"),
                            group(GroupKind.CODE, 3, 3, 4, "1"));
            assertThat(finder.groups)
                    .extracting(found -> found.afterUnseenSeparator)
                    .containsOnly(false);
        }
    }

    @Nested
    class Oddities {
        private List<Tuple> oddities(FlashFormat format, String darkAndLitSeconds) {
            return find(format, darkAndLitSeconds).oddities.stream()
                    .map(each -> Tuple.tuple(
                            each.afterFlash(), each.nextFlash(), each.missed(), each.ghosts(), each.withinSign()))
                    .toList();
        }

        @Test
        void a_gap_of_a_flash_and_two_gaps_inside_a_digit_is_a_missed_flash() {
            assertThat(oddities(PAIR, "3  0.5 1.5 0.5 2 0.5 0.5 0.5  8"))
                    .containsExactly(Tuple.tuple(0, 1, 1, 0, true));
        }

        @Test
        void a_digit_that_is_a_missed_flash_is_not_within_a_sign() {
            // Code 1 then 2, of which the 1 was not seen: 4 s, 0.5 s, 2 s.
            assertThat(oddities(PAIR, "3  0.5 2 0.5 0.5 0.5  6.5  0.5 0.5 0.5  8"))
                    .containsExactly(Tuple.tuple(2, 3, 1, 0, false));
        }

        /** Three gaps of 0.5 s and two flashes; two gaps of 0.5 s, one of 0.8 s and two flashes. */
        @Test
        void two_flashes_missed_in_a_row_are_counted() {
            assertThat(oddities(CLOSE, "3  0.5 2.5 0.5 0.8 0.5  9")).containsExactly(Tuple.tuple(0, 1, 2, 0, true));
            assertThat(oddities(CLOSE, "3  0.5 2.8 0.5  9")).contains(Tuple.tuple(0, 1, 2, 0, false));
        }

        @Test
        void a_short_flash_in_a_gap_is_one_that_was_not_sent() {
            assertThat(oddities(PAIR, "3  0.5 0.9 0.05 1.05 0.5 0.5 0.5  8"))
                    .containsExactly(Tuple.tuple(0, 2, 0, 1, false));
        }

        @Test
        void a_gap_that_may_be_two_things_is_told_with_the_share_of_all_paths_that_go_over_it() {
            GroupSearch search = GroupSearch.of(CLOSE, NOISY, "3  0.5 0.65 0.5 0.65 0.5  9");
            Oddity first = search.finder().oddities.get(0);

            assertThat(first.afterFlash()).isZero();
            assertThat(first.nextFlash()).isEqualTo(1);
            assertThat(first.missed()).isZero();
            assertThat(first.ghosts()).isZero();
            assertThat(first.withinSign()).isFalse();
            int arc = search.pass().bestPath()[1];
            double over = FreePath.all(search.pass()).stream()
                    .filter(path -> path.arcs().contains(arc))
                    .mapToDouble(FreePath::share)
                    .sum();
            assertThat(first.share()).isLessThan(0.9).isCloseTo(over, within(1e-7));
        }

        @Test
        void doubt_about_where_the_recording_begins_is_no_gap() {
            GroupFinder finder = GroupSearch.of(SESSIONS, CLEAR, "3  0.5  8").finder();

            assertThat(finder.oddities).extracting(Oddity::afterFlash).doesNotContain(-1);
        }
    }
}
