package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** What a format gains over chance, in nats, is the sum of what is told here; all lengths are nominal. */
class CodeReaderTest {
    private static final Offset<Double> HARDLY = within(1e-6);

    /** One of 81 codes. */
    private static final double CODE = Math.log(81);

    private static Optional<Attempt> read(PulseTrain train, String format) {
        FlashFormat rules = Trains.shipped(format);
        Lengths lengths = new Lengths(rules);
        return new CodeReader(rules, lengths).read(new Flashes(train, lengths));
    }

    /**
     * Every length is explained better than by chance, and more so as all are exact: by the logarithm of 4, since 2 % is
     * a quarter of the usual spread. The mean took one of them to measure.
     */
    private static double exact(int flashes) {
        int lengths = 2 * flashes - 1;
        return lengths * Cost.CHANCE + (lengths - 1) * Math.log(4);
    }

    @Nested
    class In_a_format_with_sessions {
        private Attempt even(String counts) {
            return read(Trains.even(counts), "pair-even").orElseThrow();
        }

        @Test
        void a_whole_message_costs_its_codes_and_nothing_else() {
            Attempt attempt = even("3 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

            assertThat(attempt.gain()).isCloseTo(exact(19) - 2 * CODE, HARDLY);
            assertThat(attempt.scale()).isCloseTo(0, HARDLY);
            assertThat(attempt.codes())
                    .isEqualTo(Map.of(Segment.PRESENT, List.of("34"), Segment.STORED, List.of("11")));
        }

        @Test
        void two_sendings_that_differ_break_a_rule() {
            Attempt attempt = even("3 / 4 (4) 3 / 5 (6) 1 (6) 1 / 1 (4) 1 / 1");

            assertThat(attempt.gain()).isCloseTo(exact(20) - 2 * CODE - Cost.RULE_BROKEN, HARDLY);
        }

        @Test
        void a_list_that_is_sent_once_breaks_a_rule_in_each_segment() {
            assertThat(even("3 / 4 (6) 1 (6) 1 / 1").gain())
                    .isCloseTo(exact(10) - 2 * CODE - 2 * Cost.RULE_BROKEN, HARDLY);
        }

        @Test
        void present_codes_without_a_separator_after_them_break_two() {
            assertThat(even("3 / 4 (4) 3 / 4").gain()).isCloseTo(exact(14) - CODE - 2 * Cost.RULE_BROKEN, HARDLY);
        }

        @Test
        void a_flash_that_was_not_seen_costs_what_that_is_worth() {
            // Three flashes, of which the second was not seen: 1.5 s of darkness.
            Attempt attempt = even("1 (1.5) 1 / 4 (4) 3 / 4 (6) 1 (6) 1 / 1 (4) 1 / 1");

            assertThat(attempt.codes()).containsEntry(Segment.PRESENT, List.of("34"));
            assertThat(attempt.gain()).isCloseTo(exact(18) - 2 * CODE - Cost.MISSED, HARDLY);
        }

        @Test
        void a_balance_result_is_one_of_nine_counts() {
            Attempt attempt = even("4");

            assertThat(attempt.codes()).isEqualTo(Map.of(Segment.BALANCE, List.of("4")));
            assertThat(attempt.gain()).isCloseTo(exact(4) - Math.log(9), HARDLY);
        }

        @Test
        void flashes_that_are_no_code_at_all_are_not_read() {
            assertThat(read(
                            Trains.of("1 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 " + "0.5 0.5 ".repeat(20) + "1"),
                            "pair-even"))
                    .isEmpty();
        }
    }

    @Nested
    class In_a_format_with_frames {
        private static final String FRAME = "0.4 1.2 0.4 0.4 0.4 3.2 ";
        private static final String CODE_21 = "0.4 0.4 0.4 1.2 0.4 3.2 ";

        private Attempt framed(String train) {
            return read(Trains.of("3 " + train), "pair-thrice").orElseThrow();
        }

        @Test
        void frames_around_the_list_cost_nothing_and_are_no_codes() {
            Attempt attempt = framed(FRAME.repeat(3) + CODE_21.repeat(3) + FRAME.repeat(3));

            assertThat(attempt.codes()).isEqualTo(Map.of(Segment.CODES, List.of("21")));
            assertThat(attempt.gain()).isCloseTo(exact(27) - CODE, HARDLY);
        }

        @Test
        void frames_alone_are_a_list_without_codes() {
            Attempt attempt = framed(FRAME.repeat(6));

            assertThat(attempt.codes()).isEqualTo(Map.of(Segment.CODES, List.of()));
            assertThat(attempt.gain()).isCloseTo(exact(18), HARDLY);
        }

        @Test
        void no_frame_at_all_breaks_two_rules() {
            assertThat(framed(CODE_21.repeat(3)).gain()).isCloseTo(exact(9) - CODE - 2 * Cost.RULE_BROKEN, HARDLY);
        }

        @Test
        void each_frame_of_another_length_breaks_one() {
            assertThat(framed(FRAME.repeat(2) + CODE_21.repeat(3) + FRAME.repeat(3))
                            .gain())
                    .isCloseTo(exact(24) - CODE - Cost.RULE_BROKEN, HARDLY);
            assertThat(framed(FRAME.repeat(3) + CODE_21.repeat(3) + FRAME.repeat(2))
                            .gain())
                    .isCloseTo(exact(24) - CODE - Cost.RULE_BROKEN, HARDLY);
            assertThat(framed(FRAME.repeat(2) + CODE_21.repeat(3) + FRAME.repeat(4))
                            .gain())
                    .isCloseTo(exact(27) - CODE - 2 * Cost.RULE_BROKEN, HARDLY);
        }

        @Test
        void the_list_between_two_frames_is_one_sending() {
            String code13 = "0.4 1.2 0.4 0.4 0.4 0.4 0.4 3.2 ";
            Attempt attempt =
                    framed(FRAME.repeat(3) + (CODE_21.repeat(3) + code13.repeat(3) + FRAME.repeat(3)).repeat(2));

            assertThat(attempt.codes()).isEqualTo(Map.of(Segment.CODES, List.of("21", "13")));
            assertThat(attempt.gain()).isCloseTo(exact(27 + 18 + 24) - 2 * CODE, HARDLY);
        }
    }
}
