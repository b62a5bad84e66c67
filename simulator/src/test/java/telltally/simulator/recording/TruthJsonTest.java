package telltally.simulator.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

class TruthJsonTest {
    private static final PulseTrain DARK = PulseTrain.of(false, 1_000_000_000L);

    private static SentGroup group(GroupKind kind, Segment segment, String digits, long startNanos, long endNanos) {
        return new SentGroup(
                kind,
                segment,
                digits,
                List.of(new SentSign(digits, List.of(new Interval(true, startNanos, endNanos)))));
    }

    private static Recording recording(Map<Segment, List<String>> codes, SentGroup... groups) {
        return new Recording("yard-van", -7, 3, DARK, DARK, new Truth("pair-even", codes, List.of(groups)));
    }

    @Test
    void the_truth_is_one_object_with_a_line_for_each_event() {
        Recording recording = recording(
                Map.of(Segment.STORED, List.of("11"), Segment.PRESENT, List.of("34", "42")),
                group(GroupKind.CODE, Segment.PRESENT, "34", 2_345_000_000L, 11_845_000_000L),
                group(GroupKind.SEPARATOR, Segment.PRESENT, "1", 17_845_000_000L, 18_345_000_001L));
        assertThat(TruthJson.text(recording)).isEqualTo("""
                        {"schema":"telltally/truth/1","scenario":"yard-van","seed":-7,"generator":3,"format":"pair-even",\
                        "codes":{"present":["34","42"],"stored":["11"]},"events":[
                        {"kind":"code","segment":"present","digits":"34","start_s":2.345,"end_s":11.845},
                        {"kind":"separator","segment":"present","digits":"1","start_s":17.845,"end_s":18.345000001}]}
                        """);
    }

    @Test
    void nothing_sent_is_an_empty_list_of_codes_and_of_events() {
        assertThat(TruthJson.text(recording(Map.of(Segment.CODES, List.of()))))
                .endsWith("\"codes\":{\"codes\":[]},\"events\":[]}\n");
    }

    @Test
    void the_shortest_time_is_written_without_an_exponent() {
        assertThat(TruthJson.text(recording(Map.of(), group(GroupKind.STEADY, Segment.CODES, "", 1, 100))))
                .contains("\"start_s\":0.000000001,\"end_s\":0.0000001");
    }
}
