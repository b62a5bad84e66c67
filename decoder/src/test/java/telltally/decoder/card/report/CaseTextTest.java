package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Cards;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Line;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.SeedCase;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

class CaseTextTest {
    private static final long SECOND = 1_000_000_000L;
    private static final FlashFormat FORMAT =
            FormatCatalog.shipped().find("count-loop").orElseThrow();

    private static SentGroup sent(String digits, long atSecond) {
        Interval flash = new Interval(true, atSecond * SECOND, atSecond * SECOND + SECOND);
        return new SentGroup(GroupKind.CODE, Segment.CODES, digits, List.of(new SentSign(digits, List.of(flash))));
    }

    private static Group read(String digits, long atSecond) {
        return new Group(
                GroupKind.CODE, Segment.CODES, digits, 0.75, atSecond * SECOND, (atSecond + 1) * SECOND, List.of());
    }

    private final PulseTrain train = PulseTrain.of(false, 45 * SECOND, SECOND, 2 * SECOND, 41 * SECOND, 42 * SECOND);
    private final SeedCase given = new SeedCase(
            7,
            "random message",
            Optional.of(FORMAT),
            train,
            train,
            new Truth("count-loop", Map.of(Segment.CODES, List.of("3", "5")), List.of(sent("3", 1), sent("5", 41))),
            ImpairmentChain.of());

    @Test
    void what_was_sent_stands_beside_what_was_read_and_differences_are_marked() {
        Reading reading = new Reading(
                Optional.empty(), Reading.merged(List.of(read("5", 42))), List.of(read("5", 42)), List.of());
        String text = CaseText.text("set", given, Line.PIN, "mine", new Outcome.Read(reading));
        assertThat(text)
                .startsWith("""
                        set, seed 7, random message, on the pin, read by mine
                          sent  in count-loop: codes 3 5
                          read  in no format: codes 5
                          codes: 1 right, 0 wrong, 1 lost, 0 invented; lists: 0 of 1 right
                        """)
                .contains("  !  code 3, codes  1.0     -\n")
                .contains("     code 5, codes  41.0    code 5, codes  42.0    0.750\n");
    }

    @Test
    void a_failure_says_why() {
        Outcome died = new Outcome.Failed(Failure.OUT_OF_ORDER, "answered 9 when asked 8");
        assertThat(CaseText.text("set", given, Line.LAMP, "mine", died))
                .contains("\n  no answer, out of order: answered 9 when asked 8\n");
    }

    @Test
    void the_format_that_was_read_stands_with_how_sure_that_is_and_how_slow_the_clock() {
        Reading reading = new Reading(
                Optional.of(new FormatEstimate("count-loop", 0.98761, 1.02)), Map.of(), List.of(), List.of());
        assertThat(CaseText.text("set", given, Line.LAMP, "mine", new Outcome.Read(reading)))
                .contains("\n  read  in count-loop (0.9876, clock 1.020): nothing\n");
    }

    @Test
    void other_digits_are_mentioned_where_they_are_likelier_than_one_in_a_thousand() {
        Group group = new Group(
                GroupKind.CODE,
                Segment.CODES,
                "3",
                0.75,
                SECOND,
                2 * SECOND,
                List.of(new Alternative("4", 0.2), new Alternative("5", 0.001), new Alternative("6", 0.00099)));
        Reading reading = new Reading(Optional.empty(), Map.of(), List.of(group), List.of());
        assertThat(CaseText.text("set", given, Line.LAMP, "mine", new Outcome.Read(reading)))
                .contains("code 3, codes  1.0     0.750; or 4 0.200, 5 0.001\n");
    }

    @Test
    void warnings_stand_with_their_instants_before_the_flashes() {
        Warning warning = new Warning(42_390_000_000L, WarningKind.DOUBTFUL_GAP, "look again");
        Reading reading = new Reading(Optional.empty(), Map.of(), List.of(), List.of(warning));
        assertThat(CaseText.text("set", given, Line.LAMP, "mine", new Outcome.Read(reading)))
                .contains("\n\n  42.3 s: look again\n\n      0 s  ");
    }

    @Test
    void where_nothing_was_sent_and_nothing_read_there_is_no_table() {
        Truth silence = new Truth("none", Map.of(), List.of());
        SeedCase dark =
                new SeedCase(7, "random message", Optional.empty(), train, train, silence, ImpairmentChain.of());
        Reading nothing = new Reading(Optional.empty(), Map.of(), List.of(), List.of());
        assertThat(CaseText.text("set", dark, Line.LAMP, "mine", new Outcome.Read(nothing)))
                .startsWith("""
                        set, seed 7, random message, on the lamp, read by mine
                          sent  nothing
                          read  in no format: nothing
                          all right

                              0 s""");
    }

    @Test
    void a_shipped_case_reads_right() throws Exception {
        var set = Cards.sets().get(1);
        SeedCase each = new telltally.decoder.score.SeedCases(set)
                .of(set.seeds().from())
                .get(0);
        Reading reading =
                new PlainDecoder().decode(each.lamp(), FormatCatalog.shipped().all());
        assertThat(CaseText.text(set.id(), each, Line.LAMP, "plain", new Outcome.Read(reading)))
                .contains("\n  all right\n");
    }
}
