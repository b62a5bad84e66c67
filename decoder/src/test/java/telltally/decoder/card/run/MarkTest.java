package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Tally;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;

class MarkTest {
    private static final Truth SENT =
            SmallSet.truth(Map.of(Segment.PRESENT, List.of("34", "42", "51"), Segment.STORED, List.of("11")));

    private static Reading reading(Map<Segment, List<String>> codes, Group... groups) {
        return new Reading(Optional.of(new FormatEstimate("pair-even", 1, 1)), codes, List.of(groups), List.of());
    }

    private static Mark mark(Truth truth, Reading reading) {
        return Mark.of(truth, new Outcome.Read(reading), true);
    }

    private static Group group(GroupKind kind, Segment segment, String digits, double probability) {
        return new Group(kind, segment, digits, probability, 0, 1, List.of());
    }

    @Test
    void what_was_read_as_it_was_sent_is_right() {
        Mark mark = mark(SENT, reading(SENT.codes()));
        assertThat(mark.counts()).isEqualTo(new Counts(1, 1, 2, 2, 4, 4, 0, 0));
        assertThat(mark.right()).isTrue();
        assertThat(mark.errors()).isZero();
        assertThat(mark.readAs()).isEqualTo("pair-even");
        assertThat(mark.failure()).isEmpty();
        assertThat(mark.read()).isEqualTo(SENT.codes());
    }

    /** Of the present codes two are missing and one is too many: one wrong, one lost. The stored one is joined by two. */
    @Test
    void of_a_segment_a_missing_code_and_one_too_many_are_one_that_is_wrong() {
        Mark mark = mark(
                SENT, reading(Map.of(Segment.PRESENT, List.of("34", "43"), Segment.STORED, List.of("11", "12", "13"))));
        assertThat(mark.counts()).isEqualTo(new Counts(1, 0, 2, 0, 4, 2, 1, 2));
        assertThat(mark.counts().codesLost()).isEqualTo(1);
        assertThat(mark.right()).isFalse();
        // One wrong, one lost, two invented; two lists.
        assertThat(mark.errors()).isEqualTo(6);
    }

    @Test
    void a_segment_that_was_not_read_is_lost_and_one_that_was_not_sent_is_invented() {
        Mark mark =
                mark(SENT, reading(Map.of(Segment.PRESENT, List.of("34", "42", "51"), Segment.RUNNING, List.of("9"))));
        assertThat(mark.counts()).isEqualTo(new Counts(1, 0, 2, 1, 4, 3, 0, 1));
        assertThat(mark.errors()).isEqualTo(3);
    }

    @Test
    void silence_is_no_answer_even_where_silence_was_right() {
        Mark mark = Mark.of(Truth.nothing(), new Outcome.Failed(Failure.HUNG, "slow"), true);
        assertThat(mark.counts()).isEqualTo(new Counts(1, 0, 1, 0, 0, 0, 0, 0));
        assertThat(mark.readAs()).isEqualTo(Tally.NO_ANSWER);
        assertThat(mark.failure()).contains(Failure.HUNG);
        assertThat(mark.claims()).isEmpty();
        Mark something = Mark.of(SENT, new Outcome.Failed(Failure.DIED, "gone"), true);
        assertThat(something.counts()).isEqualTo(new Counts(1, 0, 2, 0, 4, 0, 0, 0));
    }

    @Test
    void who_reads_no_format_says_so() {
        Reading none = new Reading(Optional.empty(), Map.of(), List.of(), List.of());
        Mark mark = mark(Truth.nothing(), none);
        assertThat(mark.readAs()).isEqualTo(Tally.NO_FORMAT);
        assertThat(mark.counts()).isEqualTo(new Counts(1, 1, 1, 1, 0, 0, 0, 0));
    }

    @Test
    void every_code_claims_the_best_probability_of_its_groups_in_its_segment() {
        Mark mark = mark(
                SENT,
                reading(
                        Map.of(Segment.PRESENT, List.of("34"), Segment.STORED, List.of("12")),
                        group(GroupKind.CODE, Segment.PRESENT, "34", 0.5),
                        group(GroupKind.CODE, Segment.PRESENT, "34", 0.8765432),
                        group(GroupKind.CODE, Segment.PRESENT, "43", 0.9),
                        group(GroupKind.CODE, Segment.STORED, "34", 0.95),
                        group(GroupKind.CYLINDERS, Segment.PRESENT, "34", 0.99),
                        group(GroupKind.CODE, Segment.STORED, "12", 0)));
        assertThat(mark.claims()).containsExactlyInAnyOrder(new Mark.Claim(876_543, true), new Mark.Claim(0, false));
    }

    @Test
    void balance_results_claim_too_and_what_has_no_group_claims_nothing() {
        Truth sent = SmallSet.truth(Map.of(Segment.BALANCE, List.of("9")));
        Mark mark = mark(
                sent,
                reading(
                        Map.of(Segment.BALANCE, List.of("9"), Segment.CODES, List.of("3")),
                        group(GroupKind.BALANCE, Segment.BALANCE, "9", 1)));
        assertThat(mark.claims()).containsExactly(new Mark.Claim(Calibration.MILLION, true));
    }

    @Test
    void a_decoder_whose_probabilities_mean_nothing_claims_nothing() {
        Reading sure = reading(Map.of(Segment.STORED, List.of("11")), group(GroupKind.CODE, Segment.STORED, "11", 0.9));
        assertThat(Mark.of(SENT, new Outcome.Read(sure), false).claims()).isEmpty();
        assertThat(Mark.of(SENT, new Outcome.Read(sure), true).claims()).hasSize(1);
    }

    @Test
    void codes_are_told_by_segment() {
        Map<Segment, List<String>> codes = new LinkedHashMap<>();
        codes.put(Segment.PRESENT, List.of("34", "42"));
        codes.put(Segment.STORED, List.of());
        assertThat(Mark.text(codes)).isEqualTo("present 34 42, stored none");
        assertThat(Mark.text(Map.of())).isEqualTo("nothing");
    }
}
