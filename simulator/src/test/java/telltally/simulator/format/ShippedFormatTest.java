package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/**
 * What each shipped format sends, spelled out flash by flash. The times are common practice of the trade, no source;
 * they stand here by hand, not from the files that are tested.
 */
class ShippedFormatTest {
    @Nested
    class Pair_even {
        @Test
        void sends_each_list_twice_and_one_flash_between_them() {
            Transmission sent = send("pair-even", keyOn(List.of("12", "31"), List.of("21")));

            String twelve = "0.5  2.0  0.5 0.5 0.5";
            String thirtyOne = "0.5 0.5 0.5 0.5 0.5  2.0  0.5";
            String twentyOne = "0.5 0.5 0.5  2.0  0.5";
            assertThat(OnOff.whole(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            "3.0",
                            twelve,
                            "4.0",
                            thirtyOne,
                            "4.0",
                            twelve,
                            "4.0",
                            thirtyOne,
                            "6.0  0.5  6.0",
                            twentyOne,
                            "4.0",
                            twentyOne,
                            "8.0"));
        }

        @Test
        void names_every_group_with_its_place_in_the_train() {
            assertThat(groups(send("pair-even", keyOn(List.of("12"), List.of("21")))))
                    .containsExactly(
                            "code present 12 from 3.0 to 7.0",
                            "code present 12 from 11.0 to 15.0",
                            "separator present 1 from 21.0 to 21.5",
                            "code stored 21 from 27.5 to 31.5",
                            "code stored 21 from 35.5 to 39.5");
        }

        @Test
        void tells_each_code_once_per_segment_as_the_truth() {
            Transmission sent = send("pair-even", keyOn(List.of("42", "34"), List.of("21")));

            assertThat(sent.codes())
                    .containsExactly(
                            Map.entry(Segment.PRESENT, List.of("42", "34")), Map.entry(Segment.STORED, List.of("21")));
        }

        @Test
        void sends_the_pass_code_for_an_empty_segment_and_reports_it_as_a_code() {
            Transmission sent = send("pair-even", keyOn(List.of(), List.of()));

            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            "0.5 2.0 0.5  4.0  0.5 2.0 0.5", "6.0 0.5 6.0", "0.5 2.0 0.5  4.0  0.5 2.0 0.5"));
            assertThat(sent.codes().values()).containsExactly(List.of("11"), List.of("11"));
        }

        @Test
        void opens_a_running_test_with_half_the_cylinders_then_stays_dark_then_sends_its_codes() {
            Transmission sent = send("pair-even", new Message.Running(8, false, List.of("21")));

            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            "0.5 0.5 0.5 0.5 0.5 0.5 0.5", "90.0", "0.5 0.5 0.5 2.0 0.5  4.0  0.5 0.5 0.5 2.0 0.5"));
            assertThat(groups(sent))
                    .containsExactly(
                            "cylinders running 4 from 3.0 to 6.5",
                            "code running 21 from 96.5 to 100.5",
                            "code running 21 from 104.5 to 108.5");
        }

        @Test
        void asks_for_a_press_of_the_throttle_by_one_flash_in_the_dark_time() {
            Transmission sent = send("pair-even", new Message.Running(4, true, List.of()));

            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled("0.5 0.5 0.5", "45.0  0.5  45.0", "0.5 2.0 0.5  4.0  0.5 2.0 0.5"));
            assertThat(groups(sent).subList(0, 2))
                    .containsExactly("cylinders running 2 from 3.0 to 4.5", "prompt running 1 from 49.5 to 50.0");
        }

        @Test
        void sends_a_balance_result_once_as_one_group() {
            Transmission sent = send("pair-even", new Message.Balance(4));

            assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled("0.5 0.5 0.5 0.5 0.5 0.5 0.5"));
            assertThat(groups(sent)).containsExactly("balance balance 4 from 3.0 to 6.5");
            assertThat(sent.codes()).containsExactly(Map.entry(Segment.BALANCE, List.of("4")));
        }
    }

    @Nested
    class The_wire_of_pair_even {
        private static final String FAST_TWELVE = "0.005  0.02  0.005 0.005 0.005";
        private static final String SLOW_TWELVE = "0.5  2.0  0.5 0.5 0.5";

        @Test
        void carries_each_list_a_hundred_times_faster_one_second_before_the_slow_one() {
            Transmission sent = send("pair-even", keyOn(List.of("12"), List.of()));

            assertThat(OnOff.whole(sent.wire()))
                    .isEqualTo(OnOff.spelled(
                            "1.88",
                            FAST_TWELVE + " 0.04 " + FAST_TWELVE,
                            "1.0",
                            SLOW_TWELVE + " 4.0 " + SLOW_TWELVE,
                            "6.0 0.5 4.9",
                            "0.005 0.02 0.005  0.04  0.005 0.02 0.005",
                            "1.0",
                            "0.5 2.0 0.5  4.0  0.5 2.0 0.5",
                            "8.0"));
        }

        @Test
        void tells_running_codes_fast_only_when_the_engine_has_been_tested() {
            Transmission sent = send("pair-even", new Message.Running(4, false, List.of("12")));

            assertThat(OnOff.of(sent.wire()))
                    .isEqualTo(OnOff.spelled(
                            "0.5 0.5 0.5",
                            "88.88",
                            FAST_TWELVE + " 0.04 " + FAST_TWELVE,
                            "1.0",
                            SLOW_TWELVE + " 4.0 " + SLOW_TWELVE));
        }

        @Test
        void carries_a_balance_result_fast_and_slow() {
            Transmission sent = send("pair-even", new Message.Balance(2));

            assertThat(OnOff.of(sent.wire())).isEqualTo(OnOff.spelled("0.005 0.005 0.005  1.0  0.5 0.5 0.5"));
        }

        @Test
        void makes_room_for_a_fast_list_that_is_longer_than_the_gap() {
            List<String> many = List.of(
                    "99", "98", "97", "96", "95", "94", "93", "92", "91", "89", "88", "87", "86", "85", "84", "83",
                    "82");
            Transmission sent = send("pair-even", keyOn(List.of(), many));

            SentGroup separator = sent.groups().get(2);
            SentGroup first = sent.groups().get(3);
            SentGroup last = sent.groups().get(sent.groups().size() - 1);
            long slowNanos = last.endNanos() - first.startNanos();
            assertThat(first.startNanos() - separator.endNanos())
                    .isEqualTo(2_000_000_000L + slowNanos / 100)
                    .isGreaterThan(6_000_000_000L);
        }
    }

    @Nested
    class Triple_even {
        @Test
        void sends_three_digits_and_the_pass_code_111() {
            Transmission sent = send("triple-even", keyOn(List.of("213"), List.of()));

            String code = "0.5 0.5 0.5  2.0  0.5  2.0  0.5 0.5 0.5 0.5 0.5";
            String pass = "0.5 2.0 0.5 2.0 0.5";
            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(code, "4.0", code, "6.0 0.5 6.0", pass, "4.0", pass));
            assertThat(sent.codes().values()).containsExactly(List.of("213"), List.of("111"));
        }

        @Test
        void opens_a_running_test_with_cylinder_flashes_and_sends_three_digits() {
            Transmission sent = send("triple-even", new Message.Running(6, false, List.of()));

            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            "0.5 0.5 0.5 0.5 0.5", "90.0", "0.5 2.0 0.5 2.0 0.5  4.0  0.5 2.0 0.5 2.0 0.5"));
        }

        @Test
        void sends_a_balance_result_as_one_group_of_nine() {
            Transmission sent = send("triple-even", new Message.Balance(9));

            assertThat(groups(sent)).containsExactly("balance balance 9 from 3.0 to 11.5");
        }

        @Test
        void carries_the_list_fast_on_the_wire() {
            Transmission sent = send("triple-even", keyOn(List.of("213"), List.of("211")));

            String fast = "0.005 0.005 0.005  0.02  0.005  0.02  0.005 0.005 0.005 0.005 0.005";
            assertThat(OnOff.of(sent.wire()))
                    .startsWith(OnOff.spelled(fast, "0.04", fast, "1.0", "0.5 0.5 0.5")
                            .toArray(String[]::new));
        }
    }

    @Nested
    class Long_short {
        @Test
        void counts_tens_long_and_ones_short_and_starts_again_after_three_seconds() {
            Transmission sent = send("long-short", codes("23", "11"), 2);

            String twentyThree = "1.2 0.4 1.2  1.0  0.4 0.4 0.4 0.4 0.4";
            String eleven = "1.2  1.0  0.4";
            assertThat(OnOff.whole(sent.lamp()))
                    .isEqualTo(
                            OnOff.spelled("3.0", twentyThree, "3.0", eleven, "3.0", twentyThree, "3.0", eleven, "8.0"));
        }

        @Test
        void has_no_separator_and_no_segments() {
            Transmission sent = send("long-short", codes("23"), 1);

            assertThat(groups(sent)).containsExactly("code codes 23 from 3.0 to 8.8");
            assertThat(sent.codes()).containsOnlyKeys(Segment.CODES);
        }

        @Test
        void stays_dark_when_nothing_is_stored() {
            Transmission sent = send("long-short", codes(), 1);

            assertThat(sent.lamp()).isEqualTo(PulseTrain.of(false, 11_000_000_000L));
            assertThat(sent.groups()).isEmpty();
            assertThat(sent.codes()).containsExactly(Map.entry(Segment.CODES, List.of()));
        }
    }

    @Nested
    class Pair_thrice {
        private static final String TWELVE = "0.4  1.2  0.4 0.4 0.4";
        private static final String THIRTY_ONE = "0.4 0.4 0.4 0.4 0.4  1.2  0.4";
        private static final String TWENTY_TWO = "0.4 0.4 0.4  1.2  0.4 0.4 0.4";

        @Test
        void sends_each_code_three_times_and_frames_the_list_with_12() {
            Transmission sent = send("pair-thrice", codes("31", "22"), 1);

            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            TWELVE,
                            "3.2",
                            TWELVE,
                            "3.2",
                            TWELVE,
                            "3.2",
                            THIRTY_ONE,
                            "3.2",
                            THIRTY_ONE,
                            "3.2",
                            THIRTY_ONE,
                            "3.2",
                            TWENTY_TWO,
                            "3.2",
                            TWENTY_TWO,
                            "3.2",
                            TWENTY_TWO,
                            "3.2",
                            TWELVE,
                            "3.2",
                            TWELVE,
                            "3.2",
                            TWELVE));
        }

        @Test
        void loops_the_list_between_the_frames() {
            Transmission sent = send("pair-thrice", codes("31"), 2);

            assertThat(sent.groups().stream().map(SentGroup::digits))
                    .containsExactly("12", "12", "12", "31", "31", "31", "31", "31", "31", "12", "12", "12");
        }

        @Test
        void does_not_count_the_frame_among_the_codes() {
            Transmission sent = send("pair-thrice", codes("31"), 1);

            assertThat(sent.codes()).containsExactly(Map.entry(Segment.CODES, List.of("31")));
            assertThat(groups(sent)).startsWith("separator codes 12 from 3.0 to 5.8");
        }

        @Test
        void refuses_the_framing_code_as_a_trouble_code() {
            assertThat(codes("31", "12").refusal(TestFormats.shipped("pair-thrice")))
                    .contains("12: is the framing code of this format and no part of a list");
        }
    }

    @Nested
    class Quad_lead {
        @Test
        void announces_each_code_by_a_long_light_and_sends_it_twice() {
            Transmission sent = send("quad-lead", codes("1213", "2111"));

            String leadIn = "2.5 2.5";
            String first = "0.5  2.5  0.5 0.5 0.5  2.5  0.5  2.5  0.5 0.5 0.5 0.5 0.5";
            String second = "0.5 0.5 0.5  2.5  0.5  2.5  0.5  2.5  0.5";
            assertThat(OnOff.whole(sent.lamp()))
                    .isEqualTo(OnOff.spelled(
                            "3.0", leadIn, first, "2.5", leadIn, first, "2.5", leadIn, second, "2.5", leadIn, second,
                            "8.0"));
        }

        @Test
        void tells_the_lead_in_as_a_steady_light_that_is_no_flash() {
            assertThat(groups(send("quad-lead", codes("1111"))))
                    .containsExactly(
                            "steady codes  from 3.0 to 5.5",
                            "code codes 1111 from 8.0 to 17.5",
                            "steady codes  from 20.0 to 22.5",
                            "code codes 1111 from 25.0 to 34.5");
        }
    }

    @Nested
    class Pair_loop {
        @Test
        void begins_the_list_again_after_a_longer_gap() {
            Transmission sent = send("pair-loop", codes("12", "21"), 2);

            String twelve = "0.5  1.5  0.5 0.5 0.5";
            String twentyOne = "0.5 0.5 0.5  1.5  0.5";
            assertThat(OnOff.of(sent.lamp()))
                    .isEqualTo(OnOff.spelled(twelve, "2.5", twentyOne, "4.5", twelve, "2.5", twentyOne));
        }

        @Test
        void blinks_evenly_when_there_is_nothing_to_report() {
            Transmission sent = send("pair-loop", codes(), 1);

            assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled("0.25" + " 0.25 0.25".repeat(7)));
            assertThat(groups(sent)).containsExactly("steady codes  from 3.0 to 6.75");
            assertThat(sent.codes()).containsExactly(Map.entry(Segment.CODES, List.of()));
        }
    }

    @Nested
    class Count_loop {
        @Test
        void sends_one_count_and_begins_again_after_three_seconds() {
            Transmission sent = send("count-loop", codes("3"), 3);

            String three = "0.3 0.3 0.3 0.3 0.3";
            assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled(three, "3.0", three, "3.0", three));
        }

        @Test
        void writes_twelve_flashes_as_12() {
            Transmission sent = send("count-loop", codes("12"), 1);

            assertThat(OnOff.of(sent.lamp())).isEqualTo(OnOff.spelled("0.3" + " 0.3 0.3".repeat(11)));
            assertThat(groups(sent)).containsExactly("code codes 12 from 3.0 to 9.9");
        }

        @Test
        void sends_no_second_code() {
            assertThat(codes("3", "4").refusal(TestFormats.shipped("count-loop")))
                    .contains("2 codes; the format count-loop sends at most 1");
        }
    }

    private static Message keyOn(List<String> present, List<String> stored) {
        return new Message.KeyOn(present, stored);
    }

    private static Message.Codes codes(String... codes) {
        return new Message.Codes(List.of(codes));
    }

    private static Transmission send(String format, Message message) {
        return send(format, message, 1);
    }

    /** Three seconds dark before and eight after, as every recording. */
    private static Transmission send(String format, Message message, int loops) {
        return new Encoder(TestFormats.shipped(format))
                .encode(message, new Pacing(3_000_000_000L, 8_000_000_000L, loops));
    }

    private static List<String> groups(Transmission sent) {
        return sent.groups().stream()
                .map(each -> each.kind().key() + " " + each.segment().key() + " " + each.digits() + " from "
                        + Seconds.text(each.startNanos()) + " to " + Seconds.text(each.endNanos()))
                .toList();
    }
}
