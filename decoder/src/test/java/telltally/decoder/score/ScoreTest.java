package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.Interval;

class ScoreTest {
    private static final List<SentGroup> SOMETHING = List.of(new SentGroup(
            GroupKind.CODE, Segment.CODES, "1", List.of(new SentSign("1", List.of(new Interval(true, 1, 2))))));

    private static Truth sent(Map<Segment, List<String>> codes) {
        return new Truth("pair-even", codes, SOMETHING);
    }

    private static Reading read(Map<Segment, List<String>> codes) {
        return new Reading(Optional.empty(), codes, List.of(), List.of());
    }

    private final Truth keyOn = sent(Map.of(Segment.PRESENT, List.of("34", "42"), Segment.STORED, List.of("11")));

    @Test
    void what_was_read_as_it_was_sent_is_perfect() {
        Score score = Score.of(keyOn, read(keyOn.codes()));
        assertThat(score).isEqualTo(new Score(2, 2, 3, 3, 0));
        assertThat(score.perfect()).isTrue();
    }

    @Test
    void another_order_makes_a_list_wrong_but_no_code() {
        Score score =
                Score.of(keyOn, read(Map.of(Segment.PRESENT, List.of("42", "34"), Segment.STORED, List.of("11"))));
        assertThat(score).isEqualTo(new Score(2, 1, 3, 3, 0));
        assertThat(score.perfect()).isFalse();
    }

    @Test
    void a_code_read_instead_of_another_is_one_missing_and_one_invented() {
        assertThat(Score.of(keyOn, read(Map.of(Segment.PRESENT, List.of("35", "42"), Segment.STORED, List.of("11")))))
                .isEqualTo(new Score(2, 1, 3, 2, 1));
    }

    @Test
    void a_code_in_a_segment_that_it_was_not_sent_in_is_invented() {
        assertThat(Score.of(keyOn, read(Map.of(Segment.PRESENT, List.of("34", "42", "11")))))
                .isEqualTo(new Score(2, 0, 3, 2, 1));
        assertThat(Score.of(
                        keyOn,
                        read(Map.of(
                                Segment.PRESENT,
                                List.of("34", "42"),
                                Segment.STORED,
                                List.of("11"),
                                Segment.RUNNING,
                                List.of("34")))))
                .isEqualTo(new Score(2, 2, 3, 3, 1));
    }

    @Test
    void scores_add_up() {
        assertThat(new Score(1, 2, 3, 4, 5).plus(new Score(10, 20, 30, 40, 50)))
                .isEqualTo(new Score(11, 22, 33, 44, 55));
    }

    @Nested
    class A_list_without_codes {
        private final Map<Segment, List<String>> none = Map.of(Segment.CODES, List.of());

        @Test
        void must_be_read_as_one_where_flashes_say_so() {
            assertThat(Score.of(sent(none), read(none)).perfect()).isTrue();
            assertThat(Score.of(sent(none), read(Map.of())).perfect()).isFalse();
        }

        @Test
        void is_no_reading_at_all_where_nothing_was_sent() {
            Truth silence = new Truth("long-short", none, List.of());
            assertThat(Score.of(silence, read(Map.of())).perfect()).isTrue();
            assertThat(Score.of(silence, read(Map.of(Segment.CODES, List.of("1")))))
                    .isEqualTo(new Score(1, 0, 0, 0, 1));
        }
    }

    @Nested
    class Floors_hold {
        private final Floors floors = new Floors(0.98, 0.99, 1);

        @Test
        void a_score_that_just_reaches_them() {
            assertThat(floors.shortfalls(new Score(500, 490, 500, 495, 1))).isEmpty();
        }

        @Test
        void a_score_of_nothing() {
            assertThat(new Floors(1, 1, 0).shortfalls(Score.NOTHING)).isEmpty();
        }

        @Test
        void nothing_that_falls_short_and_say_in_what() {
            assertThat(floors.shortfalls(new Score(500, 489, 500, 494, 2)))
                    .containsExactly(
                            "489 of 500 lists right; the floor is 0.98",
                            "494 of 500 codes right; the floor is 0.99",
                            "2 invented codes; at most 1 are let pass");
        }
    }
}
