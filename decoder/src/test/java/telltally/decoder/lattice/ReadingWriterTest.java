package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.GroupFinder.Oddity;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

class ReadingWriterTest {
    /** Flashes from 1 to 1.5, 2.7345 to 2.9845, 4.9845 to 5.1095 and 8.1095 to 8.6095 s. */
    private static final String FOUR_FLASHES = "1 0.5 1.2345 0.25 2 0.125 3 0.5 1";

    private static final FlashFormat EVEN = Recordings.shipped("pair-even");
    private static final FlashFormat FRAMED = Recordings.shipped("pair-thrice");

    /** A recording in which nothing was found as yet. */
    private static FormatTrial blank(FlashFormat format, String darkAndLitSeconds) {
        FormatTrial trial = Recordings.trial(format, darkAndLitSeconds);
        trial.regions.clear();
        trial.finder().groups.clear();
        trial.finder().oddities.clear();
        trial.finder().startsMidway = false;
        trial.finder().stopsEarly = false;
        return trial;
    }

    private static FormatTrial blank() {
        return blank(EVEN, FOUR_FLASHES);
    }

    private static Reading written(FormatTrial trial) {
        return new ReadingWriter(trial, 1).reading();
    }

    /** What a sign may have been, by shares. */
    private static Guess guess(Map<String, Double> shares) {
        Guess guess = Guess.ofShares(9);
        new TreeMap<>(shares).forEach(guess::add);
        return guess;
    }

    private static Found found(GroupKind kind, int first, int last, int place, Guess... signs) {
        Found found = new Found(kind, first, place, false, false);
        found.lastFlash = last;
        found.signs.addAll(List.of(signs));
        return found;
    }

    private static Reading withGroup(FlashFormat format, Found found) {
        FormatTrial trial = blank(format, FOUR_FLASHES);
        trial.finder().groups.add(found);
        return written(trial);
    }

    /** A list of one segment in which nothing is left to settle. */
    private static Region region(FormatTrial trial, Segment segment) {
        Region region = new Region(segment, List.of(), new ListStructure(trial.model, List.of(), false, false));
        trial.regions.add(region);
        return region;
    }

    private static Region.Reported reported(GroupKind kind, String digits, int first, int last) {
        return new Region.Reported(
                kind, Segment.STORED, digits, 0.75, first, last, List.of(new Alternative("99", 0.25)));
    }

    /** Codes 12 and 11 of pair-even, each sent twice, with the separator between. */
    @Test
    void a_session_is_told_with_its_format_its_codes_and_its_groups_in_order_of_time() {
        String session = "3 0.5 2 0.5 0.5 0.5  4 0.5 2 0.5 0.5 0.5  6 0.5  6 0.5 2 0.5  4 0.5 2 0.5 8";
        FormatTrial trial = Recordings.trial(EVEN, session);

        Reading reading = new ReadingWriter(trial, 0.95).reading();

        assertThat(reading.format()).contains(new FormatEstimate("pair-even", 0.95, trial.channel.scale()));
        assertThat(reading.codes()).isEqualTo(Map.of(Segment.PRESENT, List.of("12"), Segment.STORED, List.of("11")));
        assertThat(reading.groups())
                .extracting(group -> group.kind().key() + " " + group.segment().key() + " " + group.digits())
                .containsExactly(
                        "code present 12",
                        "code present 12",
                        "separator present 1",
                        "code stored 11",
                        "code stored 11");
        assertThat(reading.groups())
                .extracting(Group::startNanos)
                .containsExactly(3_000_000_000L, 11_000_000_000L, 21_000_000_000L, 27_500_000_000L, 34_500_000_000L);
        assertThat(reading.groups())
                .extracting(Group::endNanos)
                .containsExactly(7_000_000_000L, 15_000_000_000L, 21_500_000_000L, 30_500_000_000L, 37_500_000_000L);
        assertThat(reading.groups())
                .extracting(Group::probability)
                .allSatisfy(each -> assertThat(each).isGreaterThan(0.999));
        assertThat(reading.warnings()).isEmpty();
    }

    @Nested
    class Lists {
        private final FormatTrial trial = blank();

        @Test
        void what_a_list_reports_is_told_with_the_instants_of_its_flashes() {
            region(trial, Segment.STORED).reported.add(reported(GroupKind.CODE, "34", 1, 2));

            assertThat(written(trial).groups())
                    .containsExactly(new Group(
                            GroupKind.CODE,
                            Segment.STORED,
                            "34",
                            0.75,
                            2_734_500_000L,
                            5_109_500_000L,
                            List.of(new Alternative("99", 0.25))));
            assertThat(written(trial).warnings()).isEmpty();
        }

        @Test
        void the_codes_of_a_list_stand_under_its_segment() {
            region(trial, Segment.STORED).codes.addAll(List.of("34", "12"));

            assertThat(written(trial).codes()).isEqualTo(Map.of(Segment.STORED, List.of("34", "12")));
        }

        @Test
        void a_list_without_a_readable_code_has_no_codes() {
            region(trial, Segment.STORED);

            assertThat(written(trial).codes()).isEmpty();
        }

        @Test
        void an_unreadable_group_is_warned_of_where_it_begins() {
            region(trial, Segment.STORED).reported.add(reported(GroupKind.UNREADABLE, "3", 1, 2));

            assertThat(written(trial).warnings())
                    .containsExactly(new Warning(
                            2_734_500_000L,
                            WarningKind.UNREADABLE_GROUP,
                            "a group that is no whole code of the format"));
        }

        @Test
        void a_sending_that_differs_from_the_others_is_warned_of_where_it_begins() {
            Found sending = found(GroupKind.CODE, 2, 3, 0, guess(Map.of("3", 1.0)), guess(Map.of("5", 1.0)));
            Block block = new Block(trial.model, List.of(sending));
            region(trial, Segment.STORED).structure.columns.add(new ListStructure.Column(block, "34", 1));

            assertThat(written(trial).warnings())
                    .containsExactly(new Warning(
                            4_984_500_000L,
                            WarningKind.REPEATS_DIFFER,
                            "this sending reads otherwise than the others; all of them together were weighed"));
        }

        @Test
        void groups_and_warnings_come_in_order_of_time_whatever_was_looked_at_first() {
            region(trial, Segment.STORED).reported.add(reported(GroupKind.UNREADABLE, "3", 2, 3));
            trial.finder().groups.add(found(GroupKind.UNREADABLE, 1, 1, 0));
            trial.finder().startsMidway = true;

            assertThat(written(trial).groups())
                    .extracting(Group::startNanos)
                    .containsExactly(2_734_500_000L, 4_984_500_000L);
            assertThat(written(trial).warnings())
                    .extracting(Warning::atNanos)
                    .containsExactly(0L, 2_734_500_000L, 4_984_500_000L);
        }

        @Test
        void groups_of_codes_are_told_by_their_lists_alone() {
            trial.finder().groups.add(found(GroupKind.CODE, 0, 1, 0, guess(Map.of("3", 1.0))));

            assertThat(written(trial).groups()).isEmpty();
        }
    }

    @Nested
    class Frames {
        /** The framing code 12 of pair-thrice as it was read. */
        private final Region.Reported frame = reported(GroupKind.SEPARATOR, "12", 0, 3);

        @Test
        void a_frame_around_nothing_says_that_there_are_no_codes() {
            FormatTrial trial = blank(FRAMED, FOUR_FLASHES);
            region(trial, Segment.CODES).reported.add(frame);

            assertThat(written(trial).codes()).isEqualTo(Map.of(Segment.CODES, List.of()));
        }

        @Test
        void a_frame_around_codes_leaves_them() {
            FormatTrial trial = blank(FRAMED, FOUR_FLASHES);
            region(trial, Segment.CODES).reported.add(frame);
            trial.regions.get(0).codes.add("34");

            assertThat(written(trial).codes()).isEqualTo(Map.of(Segment.CODES, List.of("34")));
        }

        @Test
        void what_is_no_frame_says_nothing_of_codes() {
            FormatTrial other = blank(FRAMED, FOUR_FLASHES);
            region(other, Segment.CODES).reported.add(reported(GroupKind.SEPARATOR, "13", 0, 3));
            FormatTrial code = blank(FRAMED, FOUR_FLASHES);
            region(code, Segment.CODES).reported.add(reported(GroupKind.CODE, "12", 0, 3));

            assertThat(written(other).codes()).isEmpty();
            assertThat(written(code).codes()).isEmpty();
        }

        @Test
        void a_format_without_a_framing_code_has_no_frame() {
            FormatTrial trial = blank();
            region(trial, Segment.STORED).reported.add(frame);

            assertThat(written(trial).codes()).isEmpty();
        }
    }

    @Nested
    class Groups_that_are_no_codes {
        /** What another reading of it would have been, down to one in a million. */
        @Test
        void other_counts_are_told_most_probable_first_unless_they_are_next_to_impossible() {
            Guess guess = guess(Map.of("2", 0.1, "3", 0.7, "4", 0.2 - 2.5e-6, "5", 2e-6, "6", 5e-7));
            Group group = withGroup(EVEN, found(GroupKind.CYLINDERS, 0, 2, 0, guess))
                    .groups()
                    .get(0);

            assertThat(group.kind()).isEqualTo(GroupKind.CYLINDERS);
            assertThat(group.digits()).isEqualTo("3");
            assertThat(group.startNanos()).isEqualTo(1_000_000_000L);
            assertThat(group.endNanos()).isEqualTo(5_109_500_000L);
            assertThat(group.probability()).isCloseTo(0.7, within(1e-7));
            assertThat(group.alternatives()).extracting(Alternative::digits).containsExactly("4", "2", "5");
            assertThat(group.alternatives().get(0).probability()).isCloseTo(0.2 - 2.5e-6, within(1e-7));
            assertThat(group.alternatives().get(2).probability()).isCloseTo(2e-6, within(1e-9));
        }

        @Test
        void light_that_is_no_sign_has_no_digits_and_is_sure() {
            Group group =
                    withGroup(EVEN, found(GroupKind.STEADY, 1, 1, 2)).groups().get(0);

            assertThat(group)
                    .isEqualTo(new Group(
                            GroupKind.STEADY, Segment.PRESENT, "", 1, 2_734_500_000L, 2_984_500_000L, List.of()));
        }

        @Test
        void a_group_that_ended_before_it_was_seen_to_go_on_is_its_first_flash() {
            Group group =
                    withGroup(EVEN, found(GroupKind.STEADY, 2, 1, 2)).groups().get(0);

            assertThat(group.endNanos()).isEqualTo(5_109_500_000L);
        }

        @Test
        void a_balance_result_is_a_code_of_its_segment() {
            Reading reading = withGroup(EVEN, found(GroupKind.BALANCE, 0, 3, 0, guess(Map.of("4", 1.0))));

            assertThat(reading.codes()).isEqualTo(Map.of(Segment.BALANCE, List.of("4")));
            assertThat(reading.groups().get(0).segment()).isEqualTo(Segment.BALANCE);
        }

        @Test
        void a_balance_result_that_could_not_be_counted_is_none() {
            assertThat(withGroup(EVEN, found(GroupKind.BALANCE, 0, 3, 0)).codes())
                    .isEmpty();
        }

        @Test
        void other_counts_are_no_codes() {
            Reading reading = withGroup(EVEN, found(GroupKind.CYLINDERS, 0, 3, 0, guess(Map.of("4", 1.0))));

            assertThat(reading.codes()).isEmpty();
        }

        @Test
        void even_blinking_says_that_there_are_no_codes() {
            Found blinking = found(GroupKind.STEADY, 0, 3, FreeGrammar.BLINKING);

            assertThat(withGroup(Recordings.shipped("pair-loop"), blinking).codes())
                    .isEqualTo(Map.of(Segment.CODES, List.of()));
        }

        @Test
        void steady_light_and_a_place_of_other_groups_say_nothing_of_codes() {
            assertThat(withGroup(EVEN, found(GroupKind.STEADY, 0, 3, 2)).codes())
                    .isEmpty();
            assertThat(withGroup(EVEN, found(GroupKind.SEPARATOR, 0, 0, FreeGrammar.BLINKING))
                            .codes())
                    .isEmpty();
        }

        @Test
        void only_flashes_that_nothing_explains_are_warned_of() {
            assertThat(withGroup(EVEN, found(GroupKind.UNREADABLE, 1, 3, 0)).warnings())
                    .containsExactly(new Warning(
                            2_734_500_000L,
                            WarningKind.UNREADABLE_GROUP,
                            "flashes that no rule of the format explains"));
            assertThat(withGroup(EVEN, found(GroupKind.STEADY, 1, 3, 0)).warnings())
                    .isEmpty();
        }

        @Test
        void cylinder_flashes_and_the_prompt_belong_to_the_running_test() {
            for (GroupKind kind : List.of(GroupKind.CYLINDERS, GroupKind.PROMPT)) {
                assertThat(withGroup(EVEN, found(kind, 0, 0, 0)).groups().get(0).segment())
                        .isEqualTo(Segment.RUNNING);
            }
        }

        @Test
        void whatever_else_belongs_to_the_first_segment_that_was_seen() {
            FormatTrial trial = blank();
            region(trial, Segment.STORED);
            region(trial, Segment.BALANCE);
            trial.finder().groups.add(found(GroupKind.SEPARATOR, 0, 0, 0));

            assertThat(written(trial).groups().get(0).segment()).isEqualTo(Segment.STORED);
        }

        @Test
        void where_no_segment_was_seen_it_belongs_to_the_first_of_the_format() {
            assertThat(withGroup(EVEN, found(GroupKind.SEPARATOR, 0, 0, 0))
                            .groups()
                            .get(0)
                            .segment())
                    .isEqualTo(Segment.PRESENT);
            assertThat(withGroup(FRAMED, found(GroupKind.STEADY, 0, 0, 0))
                            .groups()
                            .get(0)
                            .segment())
                    .isEqualTo(Segment.CODES);
        }
    }

    @Nested
    class The_whole_recording {
        @Test
        void a_format_is_doubtful_below_nine_tenths() {
            assertThat(new ReadingWriter(blank(), 0.899).reading().warnings())
                    .containsExactly(new Warning(
                            0, WarningKind.FORMAT_DOUBTFUL, "another format explains the flashes about equally well"));
            assertThat(new ReadingWriter(blank(), 0.9).reading().warnings()).isEmpty();
        }

        @Test
        void a_recording_that_begins_within_a_list_says_so_at_its_beginning() {
            FormatTrial trial = blank();
            trial.finder().startsMidway = true;

            assertThat(written(trial).warnings())
                    .containsExactly(new Warning(0, WarningKind.STARTS_MIDWAY, "the recording begins within a list"));
        }

        @Test
        void a_recording_that_ends_before_its_list_says_so_at_the_last_flash() {
            FormatTrial trial = blank();
            trial.finder().stopsEarly = true;

            assertThat(written(trial).warnings())
                    .containsExactly(new Warning(
                            8_609_500_000L, WarningKind.STOPS_EARLY, "the recording ends before the list does"));
        }

        @Test
        void short_pulses_left_out_are_counted_where_the_first_of_them_stood() {
            assertThat(written(blank(EVEN, "1 0.5 1 0.001 1 0.002 1 0.5 1")).warnings())
                    .containsExactly(new Warning(
                            2_500_000_000L,
                            WarningKind.SHORT_PULSES,
                            "2 pulses or gaps far shorter than any of the format were left out"));
        }

        @Test
        void flashes_beyond_the_most_that_are_read_are_told_where_reading_ended() {
            FormatModel model = new FormatModel(EVEN);
            Flashes flashes = Flashes.of(Recordings.train(FOUR_FLASHES), true, 1_000_000, 1_000_000, 3);
            FormatTrial trial = new FormatTrial(
                    model, flashes, List.of(new CoarseClock.Fit(1, 0)), KnownNoise.NOTHING, new LatticeStock());
            trial.run();
            trial.read();
            trial.regions.clear();
            trial.finder().groups.clear();
            trial.finder().oddities.clear();
            trial.finder().stopsEarly = false;

            assertThat(written(trial).warnings())
                    .containsExactly(
                            new Warning(5_109_500_000L, WarningKind.STOPS_EARLY, "only the first 3 flashes were read"));
        }
    }

    @Nested
    class Odd_gaps_and_flashes {
        private List<Warning> warnings(Oddity oddity) {
            FormatTrial trial = blank();
            trial.finder().oddities.add(oddity);
            return written(trial).warnings();
        }

        /** From 1.5 to 2.7345 s, rounded half up to a millisecond. */
        @Test
        void a_flash_missed_inside_a_digit_is_told_with_the_length_of_the_gap() {
            assertThat(warnings(new Oddity(0, 1, 1, 0, true, 1)))
                    .containsExactly(new Warning(
                            1_500_000_000L,
                            WarningKind.MISSED_FLASH,
                            "a dark gap of 1.235 s inside a digit: one flash was probably not seen"));
        }

        @Test
        void flashes_missed_at_the_end_of_a_digit_are_told_with_their_number() {
            assertThat(warnings(new Oddity(1, 2, 2, 0, false, 1)))
                    .containsExactly(new Warning(
                            2_984_500_000L,
                            WarningKind.MISSED_FLASH,
                            "a dark gap of 2.0 s at the end of a digit: 2 flashes were probably not seen"));
        }

        @Test
        void a_gap_that_was_neither_is_doubtful() {
            assertThat(warnings(new Oddity(2, 3, 0, 0, true, 0.6)))
                    .containsExactly(new Warning(
                            5_109_500_000L, WarningKind.DOUBTFUL_GAP, "a dark gap of 3.0 s lies between two classes"));
        }

        @Test
        void darkness_before_the_first_flash_and_after_the_last_is_no_gap() {
            assertThat(warnings(new Oddity(-1, 0, 1, 0, true, 1))).isEmpty();
            assertThat(warnings(new Oddity(-1, 0, 0, 0, true, 0.6))).isEmpty();
            assertThat(warnings(new Oddity(3, 4, 1, 0, true, 1))).isEmpty();
            assertThat(warnings(new Oddity(3, 4, 0, 0, true, 0.6))).isEmpty();
        }

        @Test
        void each_flash_where_none_belongs_is_told_with_its_length() {
            assertThat(warnings(new Oddity(0, 3, 0, 2, true, 1)))
                    .containsExactly(
                            new Warning(
                                    2_734_500_000L,
                                    WarningKind.EXTRA_FLASH,
                                    "a flash of 0.25 s where none belongs was left out"),
                            new Warning(
                                    4_984_500_000L,
                                    WarningKind.EXTRA_FLASH,
                                    "a flash of 0.125 s where none belongs was left out"));
        }

        @Test
        void a_flash_before_all_others_may_be_one_that_does_not_belong() {
            assertThat(warnings(new Oddity(-1, 1, 0, 1, true, 1)))
                    .containsExactly(new Warning(
                            1_000_000_000L,
                            WarningKind.EXTRA_FLASH,
                            "a flash of 0.5 s where none belongs was left out"));
        }
    }
}
