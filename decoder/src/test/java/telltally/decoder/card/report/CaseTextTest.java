package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import telltally.decoder.card.Cards;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
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
            new Truth(
                    "count-loop",
                    java.util.Map.of(Segment.CODES, List.of("3", "5")),
                    List.of(sent("3", 1), sent("5", 41))),
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
    void flashes_are_drawn_ten_seconds_a_line_and_long_darkness_is_shortened() {
        assertThat(FlashLines.text(train))
                .isEqualTo("      0 s  " + ".".repeat(10) + "#".repeat(10) + ".".repeat(80) + "\n"
                        + "     10 s  " + ".".repeat(100) + "\n"
                        + "           and dark on\n"
                        + "     40 s  " + ".".repeat(10) + "#".repeat(10) + ".".repeat(30) + "\n");
        PulseTrain fast = PulseTrain.of(false, SECOND, 310_000_000L, 320_000_000L);
        assertThat(FlashLines.text(fast)).isEqualTo("      0 s  ...+......\n");
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

    @Test
    void alignment_prefers_a_lost_group_to_shifting_all_that_follow() {
        List<GroupAlignment.Pair> pairs = GroupAlignment.of(
                List.of(sent("1", 1), sent("2", 2), sent("3", 3), sent("4", 4)),
                List.of(read("2", 2), read("3", 3), read("5", 4)));
        assertThat(pairs).hasSize(4);
        assertThat(pairs.get(0).read()).isEmpty();
        assertThat(pairs.subList(1, 3)).allMatch(GroupAlignment.Pair::alike);
        assertThat(pairs.get(3).alike()).isFalse();
    }
}
