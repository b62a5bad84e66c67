package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.Score;

/** Counts of blocks, lines, formats and shards add up, and what does not belong together is refused. */
class SumsTest {
    private static final Counts TWICE = new Counts(80, 50, 88, 62, 180, 140, 18, 6);

    @Test
    void counts_add_up_one_by_one() {
        assertThat(SmallCard.COUNTS.plus(SmallCard.PLAIN)).isEqualTo(new Counts(80, 46, 88, 57, 180, 134, 21, 8));
        assertThat(SmallCard.COUNTS.codesLost()).isEqualTo(90 - 70 - 9);
    }

    @Test
    void to_a_floor_a_code_read_in_place_of_another_is_invented() {
        assertThat(SmallCard.COUNTS.score()).isEqualTo(new Score(44, 31, 90, 70, 12));
    }

    @Test
    void a_tally_adds_up_formats_failures_and_probabilities() {
        Tally one = new Tally(
                SmallCard.COUNTS,
                new TreeMap<>(Map.of("pair-even", 3L, "pair-loop", 1L)),
                failures(Failure.HUNG, 2, Failure.DIED, 5),
                SmallCard.bin(3, new Calibration.Bin(4, 1, 700_000)));
        Tally other = new Tally(
                SmallCard.PLAIN,
                new TreeMap<>(Map.of("pair-even", 10L, Tally.NO_FORMAT, 7L)),
                failures(Failure.HUNG, 20, Failure.THREW, 30),
                SmallCard.bin(3, new Calibration.Bin(1, 1, 200_000)));
        Tally both = one.plus(other);
        assertThat(both.counts()).isEqualTo(SmallCard.COUNTS.plus(SmallCard.PLAIN));
        assertThat(both.readAs()).isEqualTo(Map.of("pair-even", 13L, "pair-loop", 1L, Tally.NO_FORMAT, 7L));
        assertThat(both.failures()).isEqualTo(Map.of(Failure.HUNG, 22L, Failure.DIED, 5L, Failure.THREW, 30L));
        assertThat(both.calibration().bins().get(3)).isEqualTo(new Calibration.Bin(5, 2, 900_000));
        assertThat(both.unanswered()).isEqualTo(57);
        assertThat(Tally.NOTHING.unanswered()).isZero();
    }

    private static Map<Failure, Long> failures(Failure one, long ofOne, Failure other, long ofOther) {
        Map<Failure, Long> failures = new EnumMap<>(Failure.class);
        failures.put(one, ofOne);
        failures.put(other, ofOther);
        return failures;
    }

    @Test
    void calibration_needs_all_its_bins_and_is_sorted_into_them_by_twentieths() {
        assertThatThrownBy(() -> new Calibration(List.of())).hasMessage("0 bins");
        assertThat(Calibration.bin(950_000)).isEqualTo(19);
        assertThat(Calibration.bin(949_999)).isEqualTo(18);
        assertThat(SmallCard.bin(3, new Calibration.Bin(4, 1, 700_000)).codes()).isEqualTo(4);
    }

    @Test
    void a_format_of_two_blocks_counts_what_was_counted_beside_in_either() {
        FormatCard alone = beside(Optional.empty(), Optional.empty());
        FormatCard plain = beside(Optional.of(SmallCard.PLAIN), Optional.empty());
        FormatCard told = beside(Optional.empty(), Optional.of(SmallCard.TOLD));
        assertThat(alone.plus(plain).plain()).contains(SmallCard.PLAIN);
        assertThat(plain.plus(alone).plain()).contains(SmallCard.PLAIN);
        assertThat(plain.plus(plain).plain()).contains(SmallCard.PLAIN.plus(SmallCard.PLAIN));
        assertThat(told.plus(told).told()).contains(SmallCard.TOLD.plus(SmallCard.TOLD));
        assertThat(alone.plus(alone).plain()).isEmpty();
        assertThat(alone.plus(alone).decoder().counts()).isEqualTo(TWICE);
    }

    private static FormatCard beside(Optional<Counts> plain, Optional<Counts> told) {
        return new FormatCard("pair-even", SmallCard.tally(SmallCard.COUNTS, "pair-even"), plain, told);
    }

    @Test
    void silence_is_rightly_taken_for_no_format_and_a_format_for_itself() {
        FormatCard pairs = beside(Optional.empty(), Optional.empty());
        assertThat(pairs.rightly("pair-even")).isTrue();
        assertThat(pairs.rightly(Tally.NO_FORMAT)).isFalse();
        FormatCard silent = SmallCard.lamp().formats().get(0);
        assertThat(silent.rightly(Tally.NO_FORMAT)).isTrue();
        assertThat(silent.rightly(FormatCard.NOTHING_SENT)).isFalse();
    }

    @Test
    void a_line_adds_up_its_formats() {
        LineCard lamp = SmallCard.lamp();
        assertThat(lamp.decoder().counts()).isEqualTo(SmallCard.COUNTS.plus(SmallCard.NOTHING_SENT));
        assertThat(lamp.plain()).contains(SmallCard.PLAIN.plus(SmallCard.NOTHING_SENT));
        assertThat(lamp.told()).contains(SmallCard.TOLD.plus(SmallCard.NOTHING_SENT));
        assertThat(SmallCard.pin().plain()).isEmpty();
        assertThat(SmallCard.pin().told()).isEmpty();
    }

    @Test
    void two_lines_are_one_with_the_formats_and_right_cases_of_both() {
        LineCard pairs = new LineCard(
                Line.LAMP, List.of(beside(Optional.empty(), Optional.empty())), SmallCard.right(1, 3), List.of());
        LineCard both = SmallCard.lamp().plus(pairs);
        assertThat(both.line()).isEqualTo(Line.LAMP);
        assertThat(both.formats()).extracting(FormatCard::format).containsExactly(FormatCard.NOTHING_SENT, "pair-even");
        assertThat(both.formats().get(1).decoder().counts()).isEqualTo(TWICE);
        assertThat(both.right()).isEqualTo(SmallCard.right(0, 1, 3, 51));
    }

    @Test
    void of_two_lines_the_five_worst_cases_are_kept() {
        List<WorstCase> some = List.of(SmallCard.answered(4, 9), SmallCard.answered(8, 3), SmallCard.answered(1, 2));
        List<WorstCase> others = List.of(SmallCard.worst(9, 1), SmallCard.answered(2, 9), SmallCard.answered(0, 2));
        LineCard both = worst(some).plus(worst(others));
        // Who does not answer is worst; then who has more errors; of equals the first of the set.
        assertThat(both.worst()).extracting(WorstCase::index).containsExactly(9, 2, 4, 8, 0);
        assertThat(worst(some).plus(worst(List.of())).worst()).isEqualTo(some);
    }

    private static LineCard worst(List<WorstCase> worst) {
        return new LineCard(Line.LAMP, List.of(), SmallCard.right(), worst);
    }

    @Test
    void a_set_of_two_shards_adds_up_lines_and_tells_all_flaws_by_block() {
        SetCard set = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp(), SmallCard.pin()));
        SetCard both = set.plus(new SetCard(
                set.title(),
                set.floors(),
                List.of(new SetCard.Flaw(3, "early"), new SetCard.Flaw(1, "gone")),
                set.lines()));
        assertThat(both.flaws())
                .containsExactly(
                        new SetCard.Flaw(1, "gone"),
                        new SetCard.Flaw(2, "moved"),
                        new SetCard.Flaw(3, "early"),
                        new SetCard.Flaw(3, "late"));
        assertThat(both.lines())
                .containsExactly(
                        SmallCard.lamp().plus(SmallCard.lamp()), SmallCard.pin().plus(SmallCard.pin()));
        assertThat(both.title()).isEqualTo(set.title());
    }

    @Test
    void sets_that_are_not_the_same_are_not_added_up() {
        SetCard set = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        SetCard.Title title = set.title();
        SetCard moved = new SetCard(
                new SetCard.Title(
                        title.id(),
                        title.why(),
                        title.curve(),
                        title.channel(),
                        title.from() + 1,
                        title.seeds(),
                        title.cases(),
                        title.fingerprint()),
                set.floors(),
                set.flaws(),
                set.lines());
        SetCard floored = SmallCard.set(Optional.of(new Floors(0, 0, 9)), set.lines());
        SetCard longer = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp(), SmallCard.pin()));
        for (SetCard other : List.of(moved, floored, longer)) {
            assertThatThrownBy(() -> set.plus(other)).hasMessage("the seed set jitter-5 is not the same in both");
        }
    }

    @Test
    void shards_of_a_card_are_one_card() {
        SetCard set = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        ScoreCard both =
                SmallCard.card(new Part(2, List.of(1)), set).plus(SmallCard.card(new Part(2, List.of(2)), set));
        assertThat(both).isEqualTo(SmallCard.card(Part.WHOLE, set.plus(set)));
    }

    @Test
    void cards_of_other_decoders_recordings_and_commands_are_not_one_card() {
        SetCard set = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        Part part = new Part(2, List.of(2));
        ScoreCard first = SmallCard.card(new Part(2, List.of(1)), set);
        List<String> arguments = first.arguments();
        List<SetCard> sets = List.of(set);
        assertThatThrownBy(() -> first.plus(new ScoreCard("quill", 7, arguments, true, part, sets)))
                .hasMessage("one is of the decoder abacus, the other of quill");
        assertThatThrownBy(() -> first.plus(new ScoreCard("abacus", 8, arguments, true, part, sets)))
                .hasMessage("one has recordings of generator 7, the other of 8");
        for (ScoreCard other : List.of(
                new ScoreCard("abacus", 7, List.of(), true, part, sets),
                new ScoreCard("abacus", 7, arguments, false, part, sets),
                new ScoreCard("abacus", 7, arguments, true, part, List.of(set, set)))) {
            assertThatThrownBy(() -> first.plus(other)).hasMessage("they come from different commands");
        }
    }

    @Test
    void a_total_is_of_one_line_in_all_sets() {
        SetCard both = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp(), SmallCard.pin()));
        SetCard lamp = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        ScoreCard card = SmallCard.card(Part.WHOLE, both, lamp);
        Counts once = SmallCard.COUNTS.plus(SmallCard.NOTHING_SENT);
        assertThat(card.total(Line.LAMP).counts()).isEqualTo(once.plus(once));
        assertThat(card.total(Line.PIN).counts()).isEqualTo(SmallCard.TOLD);
        assertThat(card.lines()).containsExactly(Line.LAMP, Line.PIN);
        SetCard pin = SmallCard.set(Optional.empty(), List.of(SmallCard.pin()));
        assertThat(SmallCard.card(Part.WHOLE, pin, lamp).lines()).containsExactly(Line.LAMP, Line.PIN);
    }

    /** 42 of 56 lists and 70 of 90 codes are right, twelve codes wrong or invented with nothing sent, one more. */
    @Test
    void a_card_holds_where_every_floor_holds_and_no_set_is_flawed() {
        Floors held = new Floors(0.75, 0.77, 13);
        Floors missed = new Floors(0.75, 0.77, 12);
        assertThat(unflawed(Part.WHOLE, held).holds()).isTrue();
        assertThat(unflawed(Part.WHOLE, missed).holds()).isFalse();
        assertThat(unflawed(new Part(2, List.of(1)), missed).holds()).isTrue();
        SetCard flawed = SmallCard.set(Optional.empty(), List.of(SmallCard.lamp()));
        assertThat(SmallCard.card(Part.WHOLE, flawed).holds()).isFalse();
        assertThat(SmallCard.card(new Part(2, List.of(1)), flawed).holds()).isFalse();
    }

    private static ScoreCard unflawed(Part part, Floors floors) {
        SetCard set = SmallCard.set(Optional.of(floors), List.of(SmallCard.lamp()));
        return SmallCard.card(part, new SetCard(set.title(), set.floors(), List.of(), set.lines()));
    }

    @Test
    void right_cases_are_within_the_cases() {
        BitSet third = new BitSet();
        third.set(2);
        assertThat(new RightCases(3, third).right(2)).isTrue();
        assertThat(new RightCases(3, third).right(1)).isFalse();
        assertThat(new RightCases(3, third)).hasToString("1 of 3 cases right");
        assertThatThrownBy(() -> new RightCases(2, third)).hasMessage("2 cases, the last one right is 2");
        assertThatThrownBy(() -> new RightCases(-1, new BitSet())).hasMessageStartingWith("-1 cases");
        assertThat(new RightCases(0, new BitSet()).texts()).isEmpty();
    }

    @Test
    void right_cases_of_two_shards_are_those_of_either() {
        assertThat(SmallCard.right(0, 5).or(SmallCard.right(5, 51))).isEqualTo(SmallCard.right(0, 5, 51));
        assertThat(SmallCard.right(0, 5, 51).rightHereOnly(SmallCard.right(5, 6)))
                .isEqualTo(2);
        assertThat(SmallCard.right(0, 5).count()).isEqualTo(2);
        assertThat(SmallCard.right(0, 5).cases()).isEqualTo(52);
        assertThatThrownBy(() -> SmallCard.right(0).or(new RightCases(51, new BitSet())))
                .hasMessage("52 cases and 51");
    }

    @Test
    void right_cases_are_equal_where_cases_and_bits_are() {
        assertThat(SmallCard.right(1)).isEqualTo(SmallCard.right(1)).hasSameHashCodeAs(SmallCard.right(1));
        assertThat(SmallCard.right(1)).isNotEqualTo(SmallCard.right(2)).isNotEqualTo("1 of 52 cases right");
        assertThat(new RightCases(3, new BitSet())).isNotEqualTo(new RightCases(4, new BitSet()));
        assertThat(new RightCases(3, new BitSet()).hashCode()).isNotEqualTo(new RightCases(4, new BitSet()).hashCode());
        assertThat(SmallCard.right(1).hashCode())
                .isNotEqualTo(SmallCard.right(2).hashCode());
    }

    /** RFC 4648: 3000 bytes are 4000 characters of Base64, so one bit more begins another text. */
    @Test
    void bits_of_many_cases_are_written_in_pieces() {
        BitSet last = new BitSet();
        last.set(24_000);
        List<String> pieces = new RightCases(24_001, last).texts();
        assertThat(pieces).hasSize(2);
        assertThat(pieces.get(0)).hasSize(4_000);
        assertThat(pieces.get(1)).isEqualTo("AQ==");
        assertThat(new RightCases(24_000, new BitSet()).texts()).hasSize(1);
        assertThat(RightCases.of(24_001, new ArrayList<>(pieces))).isEqualTo(new RightCases(24_001, last));
    }

    @Test
    void parts_are_of_at_least_one_shard_of_those_there_are() {
        for (Part part : List.of(new Part(3, List.of(1)), new Part(3, List.of(3)))) {
            assertThat(part.whole()).isFalse();
        }
        assertThatThrownBy(() -> new Part(0, List.of(1))).hasMessage("no part: [1] of 0");
        assertThatThrownBy(() -> new Part(3, List.of(0))).hasMessage("no part: [0] of 3");
        assertThatThrownBy(() -> new Part(3, List.of())).hasMessage("no part: [] of 3");
        assertThat(Part.WHOLE).hasToString("the whole run");
        assertThat(new Part(3, List.of(2)).holds(4)).isTrue();
        assertThat(new Part(3, List.of(2)).holds(3)).isFalse();
        assertThat(new Part(3, List.of(2)).holds(3_000_000_001L)).isTrue();
    }
}
