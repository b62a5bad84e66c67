package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.Sendings.TWO_DIGITS;
import static telltally.decoder.lattice.Sendings.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.Region.Reported;
import telltally.decoder.reading.Reading.Alternative;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** What is reported of one segment, for groups and flashes made by hand. */
class RegionTest {
    private static final FormatModel TWICE = Sendings.format(TWO_DIGITS + "\"list\": {\"list_times\": 2}");
    private static final FormatModel LOOPING =
            Sendings.format(TWO_DIGITS + "\"list\": {\"loops\": true}, \"framing_code\": \"12\"");
    private static final FormatModel SESSIONS = Sendings.shipped("pair-even");

    private static List<String> told(Region region) {
        List<String> told = new ArrayList<>();
        for (Reported each : region.reported) {
            told.add(each.kind() + " " + each.digits() + " " + each.first() + " to " + each.last());
        }
        return told;
    }

    private static Reported code(String digits, double probability, int first, int last) {
        return new Reported(GroupKind.CODE, Segment.STORED, digits, probability, first, last, List.of());
    }

    /** Told as the groups were found: with the first said to end one flash too soon. */
    @Nested
    class WhereNothingIsOpen {
        @Test
        void groups_are_told_as_they_were_found_with_the_probability_of_the_list() {
            Region region = new HandMadeSegment(TWICE).sent("11").sent("11").settled(false);
            double probability = region.structure.columns.get(0).probability();
            assertThat(probability).isBetween(0.9999, 1 - 1e-12);
            assertThat(region.reported).containsExactly(code("11", probability, 0, 0), code("11", probability, 2, 3));
            assertThat(region.codes).containsExactly("11");
            assertThat(region.segment).isEqualTo(Segment.STORED);
        }

        @Test
        void frames_are_told_as_separators() {
            Region region = new HandMadeSegment(LOOPING)
                    .sent("12")
                    .sent("11")
                    .sent("12")
                    .settled(false);
            assertThat(told(region)).containsExactly("SEPARATOR 12 0 to 1", "CODE 11 3 to 3", "SEPARATOR 12 5 to 7");
            assertThat(region.reported.get(0).probability()).isEqualTo(1);
            assertThat(region.codes).containsExactly("11");
        }
    }

    /** Told as the weighing of lists finds them: each with its last flash. */
    @Nested
    class WhereSomethingIsOpen {
        @Test
        void a_recording_that_was_cut_is_weighed() {
            Region region = new HandMadeSegment(TWICE).sent("11").sent("11").settled(true);
            assertThat(region.reported).containsExactly(code("11", 1, 0, 1), code("11", 1, 2, 3));
            assertThat(region.codes).containsExactly("11");
        }

        @Test
        void a_list_that_is_not_whole_is_weighed() {
            Region region =
                    new HandMadeSegment(TWICE).sent("11").sent("21").sent("11").settled(false);
            assertThat(told(region)).containsExactly("CODE 11 0 to 1", "CODE 21 2 to 4", "CODE 11 5 to 6");
            assertThat(region.codes).containsExactlyInAnyOrder("11", "21");
        }

        @Test
        void a_doubtful_sign_is_weighed() {
            Guess doubtful = sign("1", 0.6, "2", 0.4);
            Region region = new HandMadeSegment(TWICE)
                    .sent(1, 2000, 1, sign("1", 1.0), doubtful)
                    .sent(1, 2000, 1, sign("1", 1.0), doubtful)
                    .settled(false);
            assertThat(told(region)).containsExactly("CODE 11 0 to 1", "CODE 11 2 to 3");
            assertThat(region.reported.get(0).alternatives())
                    .extracting(Alternative::digits)
                    .contains("12");
        }

        @Test
        void a_sending_that_reads_otherwise_alone_is_weighed_however_sure_all_are_together() {
            Region region = new HandMadeSegment(LOOPING)
                    .sent("11")
                    .sent("11")
                    .sent(1, 2000, 1, sign("1", 1.0), sign("1", 0.4, "3", 0.6))
                    .settled(false);
            assertThat(region.structure.whole).isTrue();
            assertThat(region.structure.columns).hasSize(1);
            assertThat(region.structure.columns.get(0).probability()).isGreaterThan(0.9999);
            assertThat(told(region)).containsExactly("CODE 11 0 to 1", "CODE 11 2 to 3", "CODE 11 4 to 5");
        }

        @Test
        void frames_are_told_as_separators() {
            Region region = new HandMadeSegment(LOOPING)
                    .sent("12")
                    .sent("11")
                    .sent("12")
                    .settled(true);
            assertThat(told(region)).containsExactly("SEPARATOR 12 0 to 2", "CODE 11 3 to 4", "SEPARATOR 12 5 to 7");
            assertThat(region.reported.get(0).probability()).isEqualTo(1);
            assertThat(region.codes).containsExactly("11");
        }

        @Test
        void flashes_that_no_list_explains_are_told_as_they_were_found() {
            Region region = new HandMadeSegment(TWICE)
                    .sent(7, 2000, 7, sign("1", 1.0), sign("1", 1.0))
                    .sent(7, 2000, 7, sign("1", 1.0), sign("1", 1.0))
                    .settled(true);
            assertThat(told(region)).containsExactly("CODE 11 0 to 12", "CODE 11 14 to 27");
            assertThat(region.codes).containsExactly("11");
        }
    }

    @Nested
    class GroupsThatAreNoWholeCode {
        @Test
        void are_unreadable_at_the_beginning_and_the_rest_is_weighed() {
            Region region = new HandMadeSegment(TWICE)
                    .begunBefore(2)
                    .sent("31")
                    .sent("31")
                    .settled(true);
            assertThat(told(region)).containsExactly("UNREADABLE 2 0 to 0", "CODE 31 2 to 5", "CODE 31 6 to 9");
            assertThat(region.reported.get(0).probability()).isEqualTo(1);
            assertThat(region.codes).containsExactly("31");
        }

        @Test
        void are_unreadable_at_the_end_and_the_rest_is_weighed() {
            HandMadeSegment segment =
                    new HandMadeSegment(LOOPING).sent("31").sent("11").begunBefore(5);
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 31 0 to 3", "CODE 11 4 to 4", "UNREADABLE 5 6 to 10");
            assertThat(region.codes).containsExactly("31", "11");
        }

        @Test
        void are_all_that_is_told_where_there_is_nothing_else() {
            Region region = new HandMadeSegment(TWICE).begunBefore(2).settled(true);
            assertThat(told(region)).containsExactly("UNREADABLE 2 0 to 1");
            assertThat(region.codes).isEmpty();
        }
    }

    @Test
    void a_code_of_the_list_of_which_nothing_was_seen_is_not_read() {
        Region region = new HandMadeSegment(LOOPING)
                .sent("34")
                .unseen("21")
                .unseen("51")
                .settled(true);
        assertThat(told(region)).containsExactly("CODE 34 0 to 6");
        assertThat(region.codes).containsExactly("34");
    }

    @Nested
    class ACodeThatCanHardlyBeTold {
        /** Three flashes, three seconds, three flashes: one was not seen, and it may have belonged to either digit. */
        private HandMadeSegment threeAndThree(HandMadeSegment segment) {
            Guess threeOrFour = sign("3", 0.5, "4", 0.5);
            return segment.sent(3, 3000, 3, threeOrFour, threeOrFour);
        }

        @Test
        void is_not_read_where_it_came_first_and_once() {
            Region region = threeAndThree(new HandMadeSegment(LOOPING))
                    .sent("11")
                    .sent("22")
                    .settled(true);
            assertThat(region.codes).containsExactly("11", "22");
            Reported doubtful = region.reported.get(0);
            assertThat(doubtful.kind()).isEqualTo(GroupKind.UNREADABLE);
            assertThat(doubtful.digits()).isIn("34", "43");
            assertThat(doubtful.probability()).isBetween(0.4, 0.5);
            assertThat(doubtful.alternatives().get(0).digits())
                    .isEqualTo(doubtful.digits().equals("34") ? "43" : "34");
            assertThat(doubtful.alternatives().get(0).probability()).isCloseTo(doubtful.probability(), within(1e-3));
            assertThat(region.reported.get(1).kind()).isEqualTo(GroupKind.CODE);
        }

        @Test
        void is_not_read_where_it_came_last_and_once() {
            Region region = threeAndThree(
                            new HandMadeSegment(LOOPING).sent("11").sent("22"))
                    .settled(true);
            assertThat(region.codes).containsExactly("11", "22");
            assertThat(region.reported.get(2).kind()).isEqualTo(GroupKind.UNREADABLE);
        }

        @Test
        void is_not_read_where_only_a_frame_came_before() {
            Region region = threeAndThree(new HandMadeSegment(LOOPING).sent("12"))
                    .sent("11")
                    .settled(true);
            assertThat(region.codes).containsExactly("11");
            assertThat(region.reported)
                    .extracting(Reported::kind)
                    .containsExactly(GroupKind.SEPARATOR, GroupKind.UNREADABLE, GroupKind.CODE);
        }

        @Test
        void is_read_where_others_came_before_and_after() {
            Region region = threeAndThree(new HandMadeSegment(LOOPING).sent("11"))
                    .sent("22")
                    .settled(true);
            assertThat(region.codes).hasSize(3);
            assertThat(region.codes.get(1)).isIn("34", "43");
            assertThat(region.reported.get(1).probability()).isLessThan(0.5);
            assertThat(region.reported).extracting(Reported::kind).containsOnly(GroupKind.CODE);
        }

        @Test
        void is_read_where_it_came_twice() {
            Region region = threeAndThree(
                            threeAndThree(new HandMadeSegment(LOOPING)).sent("11"))
                    .settled(true);
            assertThat(region.codes).hasSize(2);
            assertThat(region.reported.get(0).probability()).isLessThan(0.5);
            assertThat(region.reported).extracting(Reported::kind).containsOnly(GroupKind.CODE);
        }
    }

    /** Whether it was taken into account is seen by the probabilities, which are those of the lists weighed with it. */
    @Nested
    class WhatStandsBeside {
        private static void assertWeighed(Region region, ListWeigher weigher) {
            for (Reported each : region.reported) {
                assertThat(each.probability()).isEqualTo(weigher.probability(each.digits()));
                assertThat(each.alternatives())
                        .isEqualTo(weigher.alternatives(each.digits()))
                        .isNotEmpty();
            }
        }

        private static HandMadeSegment doubtful(HandMadeSegment segment) {
            Guess two = sign("2", 0.6, "3", 0.4);
            return segment.sent(2, 2000, 2, two, two).sent(2, 2000, 2, two, two);
        }

        @Test
        void a_separator_before_belongs_to_the_row_and_is_not_told() {
            HandMadeSegment segment = doubtful(new HandMadeSegment(SESSIONS).other(GroupKind.SEPARATOR, 500, 6000));
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 22 1 to 4", "CODE 22 5 to 8");
            assertWeighed(region, segment.weigher(region, 0, 9, true, false));
        }

        @Test
        void a_separator_after_belongs_to_the_row_and_is_not_told() {
            HandMadeSegment segment = doubtful(new HandMadeSegment(SESSIONS)).other(GroupKind.SEPARATOR, 500, 6000);
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 22 0 to 3", "CODE 22 4 to 7");
            assertWeighed(region, segment.weigher(region, 0, 9, false, true));
        }

        @Test
        void separators_on_both_sides_belong_to_the_row() {
            HandMadeSegment segment = doubtful(new HandMadeSegment(SESSIONS).other(GroupKind.SEPARATOR, 500, 6000))
                    .other(GroupKind.SEPARATOR, 500, 6000);
            Region region = segment.settled(true);
            assertWeighed(region, segment.weigher(region, 0, 10, true, true));
        }

        @Test
        void groups_of_another_kind_do_not_belong_to_the_row() {
            HandMadeSegment segment = doubtful(new HandMadeSegment(SESSIONS).other(GroupKind.CYLINDERS, 500, 20_000))
                    .other(GroupKind.STEADY, 5000, 20_000);
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 22 1 to 4", "CODE 22 5 to 8");
            assertWeighed(region, segment.weigher(region, 1, 9, false, false));
        }

        @Test
        void steady_light_does_not_where_the_format_announces_no_code_by_it() {
            HandMadeSegment segment = doubtful(new HandMadeSegment(LOOPING).other(GroupKind.STEADY, 2500, 2500));
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 22 1 to 4", "CODE 22 5 to 8");
            assertWeighed(region, segment.weigher(region, 1, 9, false, false));
        }

        @Test
        void steady_light_that_announces_a_code_does() {
            FormatModel announced = Sendings.format(TWO_DIGITS + """
                    "lead_in": {"lit_s": 2.5, "dark_after_s": 2.5}, "list": {"loops": true}
                    """);
            Guess two = sign("2", 0.6, "3", 0.4);
            HandMadeSegment segment = new HandMadeSegment(announced)
                    .other(GroupKind.STEADY, 2500, 2500)
                    .sent(2, 2000, 2, two, two);
            Region region = segment.settled(true);
            assertThat(told(region)).containsExactly("CODE 22 1 to 4");
            assertWeighed(region, segment.weigher(region, 0, 5, false, false));
            // Unannounced, as where the recording began after it.
            HandMadeSegment without = new HandMadeSegment(announced).sent(2, 2000, 2, two, two);
            Region begun = without.settled(true);
            assertWeighed(begun, without.weigher(begun, 0, 4, false, false));
            assertThat(begun.reported.get(0).probability())
                    .isNotEqualTo(region.reported.get(0).probability());
        }
    }

    @Nested
    class TheFirstSendingThatDiffers {
        @Test
        void is_told_by_its_first_flash() {
            Guess doubtful = sign("1", 0.4, "3", 0.6);
            HandMadeSegment segment = new HandMadeSegment(LOOPING)
                    .sent("11")
                    .sent(1, 2000, 1, sign("1", 1.0), doubtful)
                    .sent(1, 2000, 1, sign("1", 1.0), doubtful);
            assertThat(segment.region(false).differing()).isEqualTo(OptionalInt.of(2));
        }

        @Test
        void is_none_where_all_read_alike_or_were_cut() {
            assertThat(new HandMadeSegment(TWICE)
                            .sent("11")
                            .sent("11")
                            .region(false)
                            .differing())
                    .isEmpty();
            HandMadeSegment begun = new HandMadeSegment(LOOPING).begunBefore(1).sent("11");
            assertThat(begun.region(true).structure.columns).hasSize(1);
            assertThat(begun.region(true).differing()).isEmpty();
            HandMadeSegment ended =
                    new HandMadeSegment(TWICE).sent("11").sent(1, 2000, 1, sign("1", 1.0), sign("2", 0.6, "1", 0.4));
            assertThat(ended.region(false).differing()).isEqualTo(OptionalInt.of(2));
            ended.own.get(1).unfinished = true;
            assertThat(ended.region(false).differing()).isEmpty();
        }
    }
}
