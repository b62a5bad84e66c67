package telltally.decoder.card.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Counts;
import telltally.decoder.card.FormatCard;
import telltally.decoder.card.LineCard;
import telltally.decoder.card.Tally;
import telltally.decoder.card.WorstCase;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedCase;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;

/** How marks are counted up. */
class SheetTest {
    private static final Counts RIGHT = new Counts(1, 1, 1, 1, 2, 2, 0, 0);
    private static final Counts WRONG = new Counts(1, 0, 1, 0, 2, 1, 1, 3);

    private static Mark mark(Counts counts, Mark.Claim... claims) {
        return new Mark(counts, "pair-even", Optional.empty(), List.of(claims), Map.of(Segment.CODES, List.of("13")));
    }

    private static SeedCase given(int seed, Truth truth) {
        return new SeedCase(
                seed,
                "lesson " + seed,
                Optional.empty(),
                SmallSet.train(seed),
                SmallSet.train(seed),
                truth,
                ImpairmentChain.of());
    }

    private static LineSheet.Marks alone(Mark mark) {
        return new LineSheet.Marks(mark, Optional.empty(), Optional.empty());
    }

    @Test
    void a_tally_counts_sessions_formats_failures_and_claims_by_bin() {
        TallySheet sheet = new TallySheet();
        sheet.add(mark(RIGHT, new Mark.Claim(990_000, true), new Mark.Claim(960_000, false)));
        sheet.add(mark(WRONG, new Mark.Claim(20_000, true)));
        sheet.add(new Mark(WRONG, Tally.NO_ANSWER, Optional.of(Failure.DIED), List.of(), Map.of()));
        sheet.add(new Mark(WRONG, Tally.NO_ANSWER, Optional.of(Failure.DIED), List.of(), Map.of()));
        Tally tally = sheet.tally();
        assertThat(tally.counts()).isEqualTo(RIGHT.plus(WRONG).plus(WRONG).plus(WRONG));
        assertThat(tally.readAs()).isEqualTo(Map.of("pair-even", 2L, Tally.NO_ANSWER, 2L));
        assertThat(tally.failures()).isEqualTo(Map.of(Failure.DIED, 2L));
        assertThat(tally.calibration().bins().get(19)).isEqualTo(new Calibration.Bin(2, 1, 1_950_000));
        assertThat(tally.calibration().bins().get(0)).isEqualTo(new Calibration.Bin(1, 1, 20_000));
        assertThat(tally.calibration().codes()).isEqualTo(3);
    }

    @Test
    void a_line_counts_each_format_for_itself_and_silence_as_none() {
        LineSheet sheet = new LineSheet(Line.PIN);
        sheet.add(0, given(1, SmallSet.truth(1)), alone(mark(RIGHT)));
        sheet.add(1, given(2, Truth.nothing()), alone(mark(WRONG)));
        sheet.add(3, given(3, SmallSet.truth(3)), alone(mark(RIGHT)));
        LineCard card = sheet.card(9);
        assertThat(card.line()).isEqualTo(Line.PIN).isEqualTo(sheet.line());
        assertThat(card.formats())
                .extracting(FormatCard::format)
                .containsExactly(FormatCard.NOTHING_SENT, SmallSet.FORMAT.id());
        assertThat(card.formats().get(1).decoder().counts()).isEqualTo(RIGHT.plus(RIGHT));
        assertThat(card.formats().get(1).plain()).isEmpty();
        assertThat(card.right().cases()).isEqualTo(9);
        assertThat(card.right().count()).isEqualTo(2);
        assertThat(card.right().right(3)).isTrue();
        assertThat(card.worst()).extracting(WorstCase::index).containsExactly(1);
    }

    @Test
    void what_ran_beside_is_counted_beside() {
        LineSheet sheet = new LineSheet(Line.LAMP);
        for (int i = 0; i < 2; i++) {
            sheet.add(
                    i,
                    given(i, SmallSet.truth(1)),
                    new LineSheet.Marks(mark(RIGHT), Optional.of(mark(WRONG)), Optional.of(mark(RIGHT))));
        }
        FormatCard format = sheet.card(2).formats().get(0);
        assertThat(format.plain()).contains(WRONG.plus(WRONG));
        assertThat(format.told()).contains(RIGHT.plus(RIGHT));
    }

    @Test
    void a_worst_case_says_what_is_needed_to_see_it_again() {
        LineSheet sheet = new LineSheet(Line.LAMP);
        Mark died = new Mark(WRONG, Tally.NO_ANSWER, Optional.of(Failure.DIED), List.of(), Map.of());
        sheet.add(5, given(42, SmallSet.truth(12)), alone(died));
        assertThat(sheet.card(6).worst())
                .containsExactly(new WorstCase(
                        5,
                        42,
                        "lesson 42",
                        SmallSet.FORMAT.id(),
                        5, // one wrong, three invented, one list
                        "codes 12",
                        "nothing",
                        Optional.of(Failure.DIED)));
    }

    @Test
    void the_five_worst_cases_are_kept_the_worst_first() {
        LineSheet sheet = new LineSheet(Line.LAMP);
        int[] invented = {2, 7, 1, 9, 3, 8, 2};
        for (int i = 0; i < invented.length; i++) {
            sheet.add(i, given(i, SmallSet.truth(1)), alone(mark(new Counts(1, 0, 1, 0, 2, 2, 0, invented[i]))));
        }
        assertThat(sheet.card(9).worst()).extracting(WorstCase::index).containsExactly(3, 5, 1, 4, 0);
    }

    @Test
    void lists_of_more_than_two_hundred_characters_are_cut() {
        assertThat(sent(SmallSet.truth(Map.of(Segment.CODES, Collections.nCopies(100, "1")))))
                .isEqualTo("codes" + " 1".repeat(97) + " ...");
        String room = "1".repeat(200 - "codes ".length());
        assertThat(sent(SmallSet.truth(Map.of(Segment.CODES, List.of(room))))).isEqualTo("codes " + room);
    }

    private static String sent(Truth truth) {
        LineSheet sheet = new LineSheet(Line.LAMP);
        sheet.add(0, given(1, truth), alone(mark(WRONG)));
        return sheet.card(1).worst().get(0).sent();
    }
}
