package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.signal.PulseTrain;

class LatticeStreamTest {
    private static final long SECOND = 1_000_000_000;
    private static final long MILLISECOND = 1_000_000;

    /** One code of a single digit, with 4 s before the next: three seconds may be the end of it. */
    private static final FlashFormat COUNTS = counts("counts", 4);

    private final FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
    private final LatticeStream stream = new LatticeStream(new LatticeDecoder(), List.of(format), 0.95);

    @Test
    void a_code_is_told_as_soon_as_the_next_one_begins_and_only_once() {
        Message message = new Message.KeyOn(List.of("34", "42"), List.of("11"));
        PulseTrain lamp = new Encoder(format).encode(message, Pacing.usual()).lamp();
        List<Group> told = feed(lamp);
        told.addAll(stream.quiet(lamp.endNanos()));
        assertThat(told.stream()
                        .filter(group -> group.kind() == GroupKind.CODE)
                        .map(Group::digits)
                        .toList())
                .containsExactly("34", "42", "34", "42", "11", "11");
        assertThat(told.get(0).startNanos()).isEqualTo(lamp.edgeNanos(0));
        // Told for good when the gap after it was over, not at the end of the recording.
        LatticeStream second = new LatticeStream(new LatticeDecoder(), List.of(format), 0.95);
        second.edge(0, false);
        List<Group> early = new ArrayList<>();
        for (int i = 0; i < 15; i++) {
            early.addAll(second.edge(lamp.edgeNanos(i), i % 2 == 0));
        }
        assertThat(early).extracting(Group::digits).containsExactly("34");
    }

    @Test
    void a_million_edges_leave_the_memory_as_it_was() {
        stream.edge(0, false);
        for (long i = 1; i <= 1_000_000; i++) {
            assertThat(stream.edge(i * 1000, i % 2 == 1)).isEmpty();
        }
        assertThat(stream.reading(2_000_000_000L).codes()).isEmpty();
    }

    @Test
    void edges_that_go_back_in_time_or_change_nothing_are_passed_over() {
        stream.edge(0, false);
        stream.edge(1_000_000_000L, true);
        assertThat(stream.edge(1_000_000_000L, false)).isEmpty();
        assertThat(stream.edge(500_000_000L, false)).isEmpty();
        assertThat(stream.edge(1_500_000_000L, true)).isEmpty();
        assertThat(stream.reading(2_000_000_000L).groups()).hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void without_a_format_there_is_nothing_to_read() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LatticeStream(new LatticeDecoder(), List.of(), 0.95))
                .withMessage("at least one format is needed");
    }

    private static FlashFormat counts(String id, int gapSeconds) {
        return Recordings.format(id, """
                "flashes_s": {"flash": 0.5},
                "code": {"places": [{"flash": "flash", "from": 1, "to": 9}]},
                "gaps": {"within_digit_s": 0.5, "before_repeat_s": %d},
                "list": {"loops": true, "most_codes": 1}
                """.formatted(gapSeconds));
    }

    /** Two flashes, from 1 to 2.5 s after an instant. */
    private static void two(LatticeStream stream, long fromNanos) {
        stream.edge(fromNanos + SECOND, true);
        stream.edge(fromNanos + 3 * SECOND / 2, false);
        stream.edge(fromNanos + 2 * SECOND, true);
        stream.edge(fromNanos + 5 * SECOND / 2, false);
    }

    @Test
    void darkness_of_three_quarters_of_the_shortest_gap_between_codes_may_be_the_end_of_one() {
        LatticeStream counts =
                new LatticeStream(new LatticeDecoder(), List.of(counts("slow", 8), COUNTS, counts("slower", 9)), 0.3);
        counts.edge(0, false);
        two(counts, 0);

        assertThat(counts.quiet(11 * SECOND / 2 - 1)).isEmpty();
        assertThat(counts.quiet(11 * SECOND / 2)).extracting(Group::digits).containsExactly("2");
        assertThat(counts.quiet(6 * SECOND)).isEmpty();
    }

    @Test
    void while_a_light_lasts_nothing_is_told_of_it_since_its_end_is_not_known() {
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.3);
        counts.edge(0, false);
        counts.edge(SECOND, true);
        assertThat(counts.quiet(5 * SECOND)).isEmpty();
        assertThat(counts.edge(6 * SECOND, false)).isEmpty();

        List<Group> told = counts.quiet(10 * SECOND);
        assertThat(told).extracting(Group::kind).containsExactly(GroupKind.STEADY);
        assertThat(told.get(0).endNanos()).isEqualTo(6 * SECOND);
    }

    @Test
    void where_the_lamp_rests_lit_darkness_is_the_flash() {
        FlashFormat eclipses = Recordings.format("eclipses", """
                "rests_lit": true,
                "flashes_s": {"flash": 0.5},
                "code": {"places": [{"flash": "flash", "from": 1, "to": 9}]},
                "gaps": {"within_digit_s": 0.5, "before_repeat_s": 4},
                "list": {"loops": true, "most_codes": 1}
                """);
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(eclipses), 0.3);
        counts.edge(0, true);
        counts.edge(SECOND, false);
        counts.edge(3 * SECOND / 2, true);
        counts.edge(2 * SECOND, false);

        assertThat(counts.quiet(9 * SECOND)).isEmpty();
        LatticeStream seen = new LatticeStream(new LatticeDecoder(), List.of(eclipses), 0.3);
        seen.edge(0, true);
        seen.edge(SECOND, false);
        seen.edge(3 * SECOND / 2, true);
        assertThat(seen.quiet(5 * SECOND)).extracting(Group::digits).containsExactly("1");
    }

    @Test
    void before_the_recording_begins_there_is_nothing_to_tell() {
        assertThat(stream.quiet(100 * SECOND)).isEmpty();
    }

    @Test
    void groups_are_told_by_the_clock_of_the_caller_and_read_from_the_beginning_of_the_recording() {
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        counts.edge(100 * SECOND, false);
        two(counts, 100 * SECOND);

        Group told = counts.quiet(106 * SECOND).get(0);
        assertThat(told.startNanos()).isEqualTo(101 * SECOND);
        assertThat(told.endNanos()).isEqualTo(102 * SECOND + SECOND / 2);
        Group read = counts.reading(106 * SECOND).groups().get(0);
        assertThat(read.startNanos()).isEqualTo(SECOND);
        assertThat(read.endNanos()).isEqualTo(2 * SECOND + SECOND / 2);
        assertThat(told.digits()).isEqualTo(read.digits());
        assertThat(told.probability()).isEqualTo(read.probability());
    }

    @Test
    void a_recording_reads_the_same_at_any_hour() {
        LatticeStream early = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        LatticeStream late = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        early.edge(0, false);
        two(early, 0);
        late.edge(100 * SECOND, false);
        two(late, 100 * SECOND);

        assertThat(late.reading(103 * SECOND)).isEqualTo(early.reading(3 * SECOND));
        assertThat(late.reading(103 * SECOND)).isNotEqualTo(early.reading(9 * SECOND));
    }

    @Test
    void an_instant_before_the_last_edge_reads_all_up_to_that() {
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        counts.edge(0, false);
        two(counts, 0);

        assertThat(counts.reading(0)).isEqualTo(counts.reading(5 * SECOND / 2 + 1));
        assertThat(counts.reading(0)).isNotEqualTo(counts.reading(6 * SECOND));
    }

    /** Each of two formats that are the same but for their names has a probability of one half. */
    @Test
    void nothing_is_told_as_long_as_the_format_is_not_sure_enough() {
        List<FlashFormat> twins = List.of(COUNTS, counts("twin", 4));
        LatticeStream strict = new LatticeStream(new LatticeDecoder(), twins, 0.51);
        LatticeStream lenient = new LatticeStream(new LatticeDecoder(), twins, 0.5);
        strict.edge(0, false);
        two(strict, 0);
        lenient.edge(0, false);
        two(lenient, 0);

        assertThat(strict.quiet(7 * SECOND)).isEmpty();
        assertThat(lenient.quiet(7 * SECOND)).extracting(Group::digits).containsExactly("2");
    }

    @Test
    void with_full_certainty_only_what_cannot_be_otherwise_is_told() {
        LatticeStream certain = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 1);
        certain.edge(0, false);
        certain.edge(SECOND, true);
        certain.edge(3 * SECOND, false);
        two(certain, 4 * SECOND);

        assertThat(certain.quiet(11 * SECOND)).extracting(Group::kind).containsExactly(GroupKind.STEADY);
        assertThat(certain.reading(11 * SECOND).groups())
                .extracting(Group::kind)
                .containsExactly(GroupKind.STEADY, GroupKind.CODE);
    }

    @Test
    void beyond_so_many_edges_the_older_half_is_forgotten_and_the_rest_is_read_as_it_was() {
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        counts.edge(0, false);
        // Bounce of a millisecond, which is left out, up to 4096 edges.
        for (int i = 1; i <= 4096; i++) {
            counts.edge(i * MILLISECOND, i % 2 == 1);
        }
        two(counts, 4096 * MILLISECOND);

        Group told = counts.quiet(11 * SECOND).get(0);
        assertThat(told.digits()).isEqualTo("2");
        assertThat(told.startNanos()).isEqualTo(5096 * MILLISECOND);
        assertThat(told.endNanos()).isEqualTo(6596 * MILLISECOND);
        // It begins with the last edge that was forgotten.
        Reading read = counts.reading(11 * SECOND);
        assertThat(read.groups()).hasSize(1);
        assertThat(read.groups().get(0).startNanos()).isEqualTo((5096 - 2048) * MILLISECOND);
        assertThat(read.warnings())
                .extracting(Warning::text)
                .contains("1024 pulses or gaps far shorter than any of the format were left out");
    }

    @Test
    void what_is_kept_of_a_recording_that_began_lit_begins_lit() {
        LatticeStream counts = new LatticeStream(new LatticeDecoder(), List.of(COUNTS), 0.5);
        counts.edge(0, true);
        for (int i = 1; i <= 4095; i++) {
            counts.edge(i * MILLISECOND, i % 2 == 0);
        }
        two(counts, 4095 * MILLISECOND);

        Group told = counts.quiet(11 * SECOND).get(0);
        assertThat(told.digits()).isEqualTo("2");
        assertThat(told.startNanos()).isEqualTo(5095 * MILLISECOND);
    }

    private List<Group> feed(PulseTrain train) {
        List<Group> told = new ArrayList<>(stream.edge(0, train.litAtStart()));
        for (int i = 0; i < train.edgeCount(); i++) {
            told.addAll(stream.edge(train.edgeNanos(i), train.litAtStart() ^ (i % 2 == 0)));
        }
        return told;
    }
}
