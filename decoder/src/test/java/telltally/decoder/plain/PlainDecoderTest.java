package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.plain.Trains.even;
import static telltally.decoder.plain.Trains.read;
import static telltally.decoder.plain.Trains.told;
import static telltally.decoder.plain.Trains.warned;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** What a pulse train says, written out: rules and timings of the formats are common practice, no source. */
class PlainDecoderTest {
    /** Code 34 twice, the separator, the pass code twice. */
    private static final String CODE_34 = "3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1";

    @Nested
    class The_usual_two_digit_format {
        @Test
        void code_34_is_three_flashes_a_long_gap_and_four_flashes() {
            Reading reading = read(even(CODE_34), "pair-even");

            assertThat(reading.codes())
                    .isEqualTo(Map.of(Segment.PRESENT, List.of("34"), Segment.STORED, List.of("11")));
            assertThat(told(reading))
                    .containsExactly(
                            "code present 34",
                            "code present 34",
                            "separator present 1",
                            "code stored 11",
                            "code stored 11");
            assertThat(reading.warnings()).isEmpty();
            Group first = reading.groups().get(0);
            // Dark for 3 s; 3 flashes and 2 gaps, 2 s, 4 flashes and 3 gaps.
            assertThat(first.startNanos()).isEqualTo(3_000_000_000L);
            assertThat(first.endNanos()).isEqualTo(3_000_000_000L + 2_500_000_000L + 2_000_000_000L + 3_500_000_000L);
            assertThat(first.probability()).isBetween(0.98, 0.9999);
        }

        @Test
        void the_clock_is_told_as_a_factor() {
            PulseTrain slow = Impairment.slowed(even(CODE_34), 1.1);

            Reading.FormatEstimate format = read(slow, "pair-even").format().orElseThrow();
            // Drawn a little towards 1, as if one more length had been seen that was nominal.
            assertThat(format.clockScale()).isCloseTo(1.1, within(0.005));
        }

        @Test
        void a_gap_inside_a_digit_is_reported_as_a_missed_flash() {
            Reading reading = read(even("2 (1.5) 1 / 4 (4) 4 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");

            assertThat(told(reading)).startsWith("code present 44", "code present 44");
            assertThat(reading.codes()).containsEntry(Segment.PRESENT, List.of("44"));
            assertThat(reading.warnings())
                    .containsExactly(new Warning(
                            4_500_000_000L,
                            WarningKind.MISSED_FLASH,
                            "a dark gap of 1.5 s inside a digit: one flash was probably not seen"));
            Group doubtful = reading.groups().get(0);
            assertThat(doubtful.alternatives()).extracting(Alternative::digits).containsExactly("34");
            assertThat(doubtful.probability())
                    .isLessThan(reading.groups().get(1).probability());
        }

        @Test
        void a_group_that_is_no_code_is_unreadable_and_the_rest_is_read() {
            Reading reading = read(even("3 / 4 (4) 2 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");

            assertThat(told(reading)).startsWith("code present 34", "unreadable present 2", "code present 34");
            assertThat(warned(reading)).contains(WarningKind.UNREADABLE_GROUP);
            assertThat(reading.codes())
                    .isEqualTo(Map.of(Segment.PRESENT, List.of("34"), Segment.STORED, List.of("11")));
        }

        @Test
        void where_the_sendings_differ_the_one_that_fits_better_counts_and_the_difference_is_told() {
            // The last flash of the second 34 was not seen: the gap after it is 5 s, between two kinds.
            Reading reading = read(even("3 / 4 (4) 3 / 3 (7) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");

            assertThat(reading.codes()).containsEntry(Segment.PRESENT, List.of("34"));
            assertThat(told(reading)).startsWith("code present 34", "code present 33");
            assertThat(warned(reading)).contains(WarningKind.REPEATS_DIFFER);
        }

        @Test
        void a_recording_that_ends_before_the_separator_is_said_to_stop_early() {
            Reading reading = read(even("3 / 4 (4) 3 / 4"), "pair-even");

            assertThat(reading.codes()).isEqualTo(Map.of(Segment.PRESENT, List.of("34")));
            assertThat(warned(reading)).contains(WarningKind.STOPS_EARLY);
        }

        @Test
        void a_recording_that_begins_within_a_code_is_said_to_start_midway() {
            Reading reading = read(even("4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1"), "pair-even");

            assertThat(told(reading)).startsWith("unreadable present 4", "code present 34");
            assertThat(warned(reading)).contains(WarningKind.STARTS_MIDWAY);
        }

        @Test
        void a_bulb_check_is_steady_light_and_no_flash() {
            PulseTrain train =
                    Trains.of("0.2 3.0 | 2.7 0.5 0.5 0.5 0.5 0.5 | 20.0 0.5 | 2.0 0.5 | 4.0 0.5 | 2.0 0.5 | 1.0");

            Reading reading = read(train, "pair-even");
            assertThat(told(reading))
                    .containsExactly("steady running", "cylinders running 3", "code running 11", "code running 11");
        }

        @Test
        void a_running_test_with_a_prompt_has_cylinder_flashes_a_prompt_and_running_codes() {
            Reading reading = read(even("4 (40) 1 (35) 2 / 1 (4) 2 / 1"), "pair-even");

            assertThat(told(reading))
                    .containsExactly("cylinders running 4", "prompt running 1", "code running 21", "code running 21");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.RUNNING, List.of("21")));
        }

        @Test
        void one_cylinder_flash_and_one_prompt_are_no_code() {
            Reading reading = read(even("1 (10) 1 (10) 1 / 1 (4) 1 / 1"), "pair-even");

            assertThat(told(reading))
                    .containsExactly("cylinders running 1", "prompt running 1", "code running 11", "code running 11");
        }

        @Test
        void one_lone_group_is_a_balance_result() {
            Reading reading = read(even("4"), "pair-even");

            assertThat(told(reading)).containsExactly("balance balance 4");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.BALANCE, List.of("4")));
        }

        @Test
        void a_whole_bench_session_is_read_in_one_recording() {
            Reading reading = read(even(CODE_34 + " (30) 3 (60) 2 / 1 (4) 2 / 1 (90) 9"), "pair-even");

            assertThat(reading.codes())
                    .isEqualTo(Map.of(
                            Segment.PRESENT, List.of("34"),
                            Segment.STORED, List.of("11"),
                            Segment.RUNNING, List.of("21"),
                            Segment.BALANCE, List.of("9")));
        }
    }

    @Nested
    class The_other_formats {
        @Test
        void three_digits_are_told_from_two_by_the_digits_of_a_code() {
            String triple = "1 / 2 / 3 (4) 1 / 2 / 3 (6) 1 (6) 1 / 1 / 1 (4) 1 / 1 / 1";

            assertThat(read(even(triple)).format().orElseThrow().id()).isEqualTo("triple-even");
            assertThat(read(even(CODE_34)).format().orElseThrow().id()).isEqualTo("pair-even");
        }

        @Test
        void a_balance_result_is_read_in_the_first_of_two_formats_that_fit_and_the_doubt_is_told() {
            Reading tripleFirst = read(even("4"), "triple-even", "pair-even");

            assertThat(tripleFirst.format().orElseThrow().id()).isEqualTo("triple-even");
            assertThat(tripleFirst.format().orElseThrow().probability()).isCloseTo(0.5, within(0.01));
            assertThat(warned(tripleFirst)).containsExactly(WarningKind.FORMAT_DOUBTFUL);
            assertThat(read(even("4"), "pair-even", "triple-even")
                            .format()
                            .orElseThrow()
                            .id())
                    .isEqualTo("pair-even");
        }

        @Test
        void long_flashes_are_tens_and_short_ones_are_ones() {
            PulseTrain train = Trains.of(
                    "3 1.2 0.4 1.2 | 1.0 0.4 0.4 0.4 0.4 0.4 | 3.0 1.2 0.4 1.2 | 1.0 0.4 0.4 0.4 0.4 0.4 | 1");

            Reading reading = read(train);
            assertThat(reading.format().orElseThrow().id()).isEqualTo("long-short");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("23")));
        }

        @Test
        void a_short_bulb_check_is_no_long_flash() {
            PulseTrain train = Trains.of("0.2 1.5 | 2.5 1.2 | 1.0 0.4 | 1.0");

            assertThat(told(read(train, "long-short"))).containsExactly("steady codes", "code codes 11");
        }

        @Test
        void the_framing_code_is_no_code() {
            String twelve = "0.4 1.2 0.4 0.4 0.4 | 3.2 ";
            String code21 = "0.4 0.4 0.4 1.2 0.4 | 3.2 ";

            Reading reading = read(Trains.of("3 " + twelve.repeat(3) + code21.repeat(3) + twelve.repeat(3)));
            assertThat(reading.format().orElseThrow().id()).isEqualTo("pair-thrice");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("21")));
            assertThat(told(reading)).startsWith("separator codes 12").hasSize(9);
        }

        @Test
        void framing_and_nothing_else_is_an_empty_list() {
            Reading reading = read(Trains.of("3 " + "0.4 1.2 0.4 0.4 0.4 | 3.2 ".repeat(6)));

            assertThat(reading.format().orElseThrow().id()).isEqualTo("pair-thrice");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of()));
            assertThat(reading.decoded()).isTrue();
        }

        @Test
        void a_lead_in_is_steady_light() {
            String code = "2.5 2.5 | 0.5 2.5 0.5 0.5 0.5 2.5 0.5 2.5 0.5 | 2.5 ";

            Reading reading = read(Trains.of("1 " + code.repeat(2)));
            assertThat(reading.format().orElseThrow().id()).isEqualTo("quad-lead");
            assertThat(told(reading))
                    .containsExactly("steady codes", "code codes 1211", "steady codes", "code codes 1211");
        }

        @Test
        void even_blinking_says_that_there_is_nothing_to_report() {
            Reading reading = read(Trains.of("2 " + "0.25 0.25 ".repeat(20)));

            assertThat(reading.format().orElseThrow().id()).isEqualTo("pair-loop");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of()));
            assertThat(told(reading)).containsExactly("steady codes");
        }

        @Test
        void a_count_of_twelve_is_written_in_decimal() {
            String twelve = "0.3 " + "0.3 0.3 ".repeat(11);

            Reading reading = read(Trains.of("2 " + twelve + "3.0 " + twelve + "1.0"));
            assertThat(reading.format().orElseThrow().id()).isEqualTo("count-loop");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("12")));
        }
    }

    /** Found by searching at random; shrunk by hand. */
    @Nested
    class Cases_that_once_went_wrong {
        @Test
        void a_light_that_cannot_be_read_before_a_list_does_not_turn_the_order_of_the_list() {
            String code21 = "0.5 0.5 0.5 1.5 0.5 ";
            String code12 = "0.5 1.5 0.5 0.5 0.5 ";
            String list = code21 + "2.5 " + code12;

            Reading reading = read(Trains.of("1 0.5 2.5 " + list + "4.5 " + list + "4.5 " + list + "1"), "pair-loop");
            assertThat(told(reading)).startsWith("unreadable codes 1", "code codes 21");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("21", "12")));
        }

        @Test
        void a_bulb_check_hardly_longer_than_a_long_flash_is_steady_light() {
            // By a fast clock and chance, 1.5 s became 1.26 s; the gap after it is near one that would hide a flash.
            PulseTrain train = Trains.of("0.8 1.26 | 1.96 1.2 0.4 1.2 | 1.0 0.4 | 3.0 1.2 0.4 1.2 | 1.0 0.4 | 1");

            Reading reading = read(train, "long-short");
            assertThat(told(reading)).containsExactly("steady codes", "code codes 21", "code codes 21");
        }

        @Test
        void code_12_three_times_in_a_loop_is_no_frame() {
            String code = "0.5 1.5 0.5 0.5 0.5 | 4.5 ";

            Reading reading = read(Trains.of("3 " + code.repeat(3)));
            assertThat(reading.format().orElseThrow().id()).isEqualTo("pair-loop");
            assertThat(reading.codes()).isEqualTo(Map.of(Segment.CODES, List.of("12")));
        }

        @Test
        void one_short_flash_by_a_fast_clock_is_still_a_count_where_that_is_asked_for() {
            assertThat(read(Trains.of("1.5 0.228 6"), "count-loop").codes())
                    .isEqualTo(Map.of(Segment.CODES, List.of("1")));
        }

        @Test
        void a_count_sent_once_between_two_formats_is_read_with_doubt() {
            // 0.3 s by a clock that is a tenth fast, 0.25 s by one that is as slow: nothing else tells them apart.
            Reading reading = read(Trains.of("2 " + "0.27 0.27 ".repeat(9)));

            assertThat(reading.format().orElseThrow().probability()).isLessThan(0.9);
            assertThat(warned(reading)).containsExactly(WarningKind.FORMAT_DOUBTFUL);
        }
    }

    @Nested
    class What_is_no_flash {
        @Test
        void a_fast_list_on_the_wire_leaves_no_trace_but_a_warning() {
            String fast = "0.005 0.005 0.005 0.005 0.005 0.02 0.005 0.005 0.005 ";
            PulseTrain train = Trains.of("1 " + fast + "0.5 0.5 0.5 0.5 | 1");

            Reading reading = read(train, "pair-even");
            assertThat(told(reading)).containsExactly("balance balance 2");
            assertThat(reading.warnings())
                    .containsExactly(new Warning(
                            1_000_000_000L,
                            WarningKind.SHORT_PULSES,
                            "5 pulses shorter than 0.2 s left out: bounce, or a fast list for instruments"));
        }

        @Test
        void a_light_of_a_tenth_of_a_second_is_left_out_and_told() {
            Reading reading = read(Trains.of("1 0.5 0.5 0.5 3 0.1 3"), "pair-even");

            assertThat(told(reading)).containsExactly("balance balance 2");
            assertThat(warned(reading)).containsExactly(WarningKind.SHORT_PULSES, WarningKind.EXTRA_FLASH);
        }

        @Test
        void a_flash_that_bounces_at_both_ends_is_one_flash() {
            String bouncing = "0.003 0.002 0.004 0.003 0.48 0.002 0.003 0.001 0.004 ";
            PulseTrain train = Trains.of("1 " + bouncing + "0.5 " + bouncing + "1");

            assertThat(told(read(train, "pair-even"))).containsExactly("balance balance 2");
        }
    }

    @Nested
    class Where_nothing_can_be_read {
        @Test
        void darkness_holds_no_flashes() {
            assertThat(read(Trains.of("30")))
                    .isEqualTo(Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "no flash was seen")));
        }

        @Test
        void steady_light_is_no_code() {
            Reading reading = read(Trains.of("1 20 1"));

            assertThat(reading.decoded()).isFalse();
            assertThat(warned(reading)).containsExactly(WarningKind.NO_FORMAT);
        }

        @Test
        void a_train_in_another_format_than_the_one_asked_for_is_not_read() {
            Reading reading = read(even(CODE_34), "long-short");

            assertThat(reading.decoded()).isFalse();
            assertThat(reading.format()).isEmpty();
            assertThat(reading.warnings())
                    .containsExactly(
                            new Warning(0, WarningKind.NO_FORMAT, "the flashes are not in the format long-short"));
        }
    }

    @Test
    void the_decoder_is_known_as_plain() {
        assertThat(new PlainDecoder().id()).isEqualTo("plain");
    }
}
