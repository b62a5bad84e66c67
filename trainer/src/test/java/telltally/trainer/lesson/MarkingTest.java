package telltally.trainer.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Marking.Row;
import telltally.trainer.text.Texts;

class MarkingTest {
    /** Shares are quotients of small whole numbers, so only the last bit may differ. */
    private static final double EXACT = 1e-12;

    private final Texts english = Texts.in(Locale.ENGLISH);
    private final Lesson lesson = SampleLessons.keyOn(List.of("34", "42"), List.of("15"));

    private static AnswerSheet sheet(List<String> present, List<String> stored) {
        return AnswerSheet.empty().with(Segment.PRESENT, present).with(Segment.STORED, stored);
    }

    private Marking mark(List<String> present, List<String> stored) {
        return lesson.mark(sheet(present, stored));
    }

    @Test
    void what_was_written_as_sent_is_right() {
        Marking marking = mark(List.of("34", "42"), List.of("15"));

        assertThat(marking.allRight()).isTrue();
        assertThat(marking.shareRight()).isEqualTo(1);
        assertThat(marking.codesSent()).isEqualTo(3);
        assertThat(marking.codesRight()).isEqualTo(3);
    }

    @Test
    void an_empty_sheet_has_lost_every_code() {
        Marking marking = lesson.mark(AnswerSheet.empty());

        assertThat(marking.slips())
                .containsExactly(
                        new Slip.LostCode(Segment.PRESENT, "34"),
                        new Slip.LostCode(Segment.PRESENT, "42"),
                        new Slip.LostCode(Segment.STORED, "15"));
        assertThat(marking.shareRight()).isZero();
    }

    @Test
    void a_lost_code_costs_one_and_not_the_rest_of_the_list() {
        Marking marking = mark(List.of("42"), List.of("15"));

        assertThat(marking.slips()).containsExactly(new Slip.LostCode(Segment.PRESENT, "34"));
        assertThat(marking.slips().get(0).sentence(english))
                .isEqualTo("34 was sent and is missing from your present codes.");
        assertThat(marking.shareRight()).isCloseTo(2.0 / 3, within(EXACT));
    }

    @Test
    void a_code_that_was_never_sent_stands_where_it_was_written() {
        Marking marking = mark(List.of("34", "77", "42"), List.of("15"));

        assertThat(marking.rows(Segment.PRESENT))
                .extracting(Row::sent)
                .containsExactly(Optional.of("34"), Optional.empty(), Optional.of("42"));
        assertThat(marking.slips()).containsExactly(new Slip.ExtraCode(Segment.PRESENT, "77"));
        assertThat(marking.shareRight()).isCloseTo(3.0 / 4, within(EXACT));
    }

    @Nested
    class Within_a_code {
        @Test
        void a_miscounted_digit_is_told_with_how_many() {
            Marking marking = mark(List.of("35", "42"), List.of("15"));

            assertThat(marking.slips()).containsExactly(new Slip.MiscountedDigit("34", 1, 4, 5));
            assertThat(marking.slips().get(0).sentence(english))
                    .isEqualTo("34: the second digit was 4 flashes; you wrote 5, one too many.");
        }

        @Test
        void too_few_is_told_as_too_few() {
            assertThat(mark(List.of("14", "42"), List.of("15")).slips().get(0).sentence(english))
                    .isEqualTo("34: the first digit was 3 flashes; you wrote 1, two too few.");
        }

        @Test
        void swapped_digits_count_once() {
            Marking marking = mark(List.of("43", "42"), List.of("15"));

            assertThat(marking.slips()).containsExactly(new Slip.SwappedDigits("34", "43"));
        }

        @Test
        void a_missing_digit_and_one_too_many_are_told_apart() {
            assertThat(mark(List.of("3", "42"), List.of("15")).slips())
                    .containsExactly(new Slip.MissingDigit("34", 1, "4"));
            assertThat(mark(List.of("344", "42"), List.of("15")).slips())
                    .containsExactly(new Slip.DigitTooMany("34", "344", "4"));
        }

        @Test
        void the_code_that_is_nearer_by_count_is_the_one_that_was_miscounted() {
            Lesson near = SampleLessons.keyOn(List.of("31", "36"), List.of("15"));

            assertThat(near.mark(sheet(List.of("35"), List.of("15"))).slips())
                    .containsExactly(new Slip.LostCode(Segment.PRESENT, "31"), new Slip.MiscountedDigit("36", 1, 6, 5));
        }

        @Test
        void a_single_count_is_one_digit_however_it_is_written() {
            Lesson count = SampleLessons.in("count-loop", new Message.Codes(List.of("12")));

            assertThat(count.mark(AnswerSheet.empty().with(Segment.CODES, List.of("11")))
                            .slips())
                    .containsExactly(new Slip.MiscountedDigit("12", Slip.WHOLE_COUNT, 12, 11));
        }

        @Test
        void long_flashes_are_counted_like_short_ones() {
            Lesson longShort = SampleLessons.in("long-short", new Message.Codes(List.of("23")));

            assertThat(longShort
                            .mark(AnswerSheet.empty().with(Segment.CODES, List.of("13")))
                            .slips())
                    .containsExactly(new Slip.MiscountedDigit("23", 0, 2, 1));
        }
    }

    @Nested
    class Taken_for_a_code {
        @Test
        void the_separator() {
            for (String written : List.of("1", "10")) {
                Marking marking = mark(List.of("34", "42", written), List.of("15"));

                assertThat(marking.slips()).containsExactly(new Slip.MarkerTakenForCode(Marker.SEPARATOR, written));
                assertThat(marking.slips().get(0).sentence(english))
                        .contains("single flash between present and stored");
            }
        }

        @Test
        void the_separator_does_not_pass_for_a_badly_counted_code() {
            assertThat(mark(List.of("34", "1"), List.of("15")).slips())
                    .containsExactlyInAnyOrder(
                            new Slip.LostCode(Segment.PRESENT, "42"),
                            new Slip.MarkerTakenForCode(Marker.SEPARATOR, "1"));
        }

        @Test
        void the_cylinder_flashes_and_the_prompt() {
            Lesson running = SampleLessons.in("pair-even", new Message.Running(8, true, List.of("21")));
            Marking marking = running.mark(AnswerSheet.empty().with(Segment.RUNNING, List.of("4", "1", "21")));

            assertThat(marking.slips())
                    .containsExactly(
                            new Slip.MarkerTakenForCode(Marker.CYLINDERS, "4"),
                            new Slip.MarkerTakenForCode(Marker.PROMPT, "1"));
            assertThat(marking.shareRight()).isCloseTo(1.0 / 3, within(EXACT));
        }

        @Test
        void the_framing_code() {
            Lesson framed = SampleLessons.in("pair-thrice", new Message.Codes(List.of("35")));
            Marking marking = framed.mark(AnswerSheet.empty().with(Segment.CODES, List.of("12", "35", "12")));

            assertThat(marking.rows()).hasSize(3);
            assertThat(marking.slips()).containsExactly(new Slip.MarkerTakenForCode(Marker.FRAMING, "12"));
        }

        @Test
        void the_pass_code_is_one() {
            Lesson nothing = SampleLessons.keyOn(List.of(), List.of());

            assertThat(nothing.mark(sheet(List.of("11"), List.of("11"))).allRight())
                    .isTrue();
        }
    }

    @Nested
    class In_the_wrong_segment {
        @Test
        void stored_filed_as_present_is_one_error() {
            Marking marking = mark(List.of("34", "42", "15"), List.of());

            assertThat(marking.slips()).containsExactly(new Slip.WrongSegment("15", Segment.STORED, Segment.PRESENT));
            assertThat(marking.slips().get(0).title(english)).isEqualTo("stored filed as present");
            assertThat(marking.shareRight()).isCloseTo(2.0 / 3, within(EXACT));
        }

        @Test
        void present_filed_as_stored_likewise() {
            assertThat(mark(List.of("34"), List.of("42", "15")).slips())
                    .containsExactly(new Slip.WrongSegment("42", Segment.PRESENT, Segment.STORED));
        }

        @Test
        void lists_that_changed_places_are_no_miscounts() {
            Lesson one = SampleLessons.keyOn(List.of("34"), List.of("35"));

            assertThat(one.mark(sheet(List.of("35"), List.of("34"))).slips())
                    .containsExactlyInAnyOrder(
                            new Slip.WrongSegment("34", Segment.PRESENT, Segment.STORED),
                            new Slip.WrongSegment("35", Segment.STORED, Segment.PRESENT));
        }

        @Test
        void a_miscount_that_happens_to_be_a_code_of_the_other_segment_stays_a_miscount() {
            Lesson near = SampleLessons.keyOn(List.of("34"), List.of("35"));

            assertThat(near.mark(sheet(List.of("35"), List.of("35"))).slips())
                    .containsExactly(new Slip.MiscountedDigit("34", 1, 4, 5));
        }
    }

    @Test
    void the_repeat_of_a_list_is_no_new_code() {
        Marking marking = mark(List.of("34", "42", "34", "42"), List.of("15"));

        assertThat(marking.slips()).containsExactly(new Slip.WrittenTwice("34"), new Slip.WrittenTwice("42"));
    }

    @Test
    void a_code_at_another_place_of_its_list_is_one_error() {
        Marking marking = mark(List.of("42", "34"), List.of("15"));

        assertThat(marking.slips()).hasSize(1).first().isInstanceOf(Slip.OutOfOrder.class);
    }

    @Test
    void a_balance_result_is_right_with_and_without_its_zero() {
        Lesson balance = SampleLessons.in("pair-even", new Message.Balance(4));

        assertThat(balance.mark(AnswerSheet.empty().with(Segment.BALANCE, List.of("4")))
                        .allRight())
                .isTrue();
        assertThat(balance.mark(AnswerSheet.empty().with(Segment.BALANCE, List.of("40")))
                        .allRight())
                .isTrue();
        assertThat(balance.mark(AnswerSheet.empty().with(Segment.BALANCE, List.of("5")))
                        .slips())
                .containsExactly(new Slip.MiscountedDigit("4", Slip.WHOLE_COUNT, 4, 5));
    }

    @Test
    void nothing_written_where_nothing_was_sent_is_right() {
        Lesson blinking = SampleLessons.in("pair-loop", new Message.Codes(List.of()));

        assertThat(blinking.mark(AnswerSheet.empty()).shareRight()).isEqualTo(1);
    }
}
