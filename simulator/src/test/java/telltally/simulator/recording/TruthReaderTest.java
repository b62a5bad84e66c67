package telltally.simulator.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

class TruthReaderTest {
    private static final PulseTrain DARK = PulseTrain.of(false, 1_000_000_000L);

    private static SentGroup group(GroupKind kind, Segment segment, String digits, long startNanos, long endNanos) {
        return new SentGroup(
                kind,
                segment,
                digits,
                List.of(new SentSign(digits, List.of(new Interval(true, startNanos, endNanos)))));
    }

    private static List<String> problems(String text) {
        return catchThrowableOfType(ProblemException.class, () -> TruthReader.read(new TextFile("truth.json", text)))
                .problems()
                .stream()
                .map(Problem::toString)
                .toList();
    }

    @Test
    void what_was_written_is_read_back() throws ProblemException {
        Truth truth = new Truth(
                "pair-even",
                Map.of(Segment.STORED, List.of("11"), Segment.PRESENT, List.of("34", "42")),
                List.of(
                        group(GroupKind.STEADY, Segment.PRESENT, "", 1, 100),
                        group(GroupKind.CODE, Segment.PRESENT, "34", 2_345_000_000L, 11_845_000_000L),
                        group(GroupKind.SEPARATOR, Segment.PRESENT, "1", 17_845_000_000L, 18_345_000_001L)));
        String text = TruthJson.text(new Recording("yard-van", -7, 3, DARK, DARK, truth));
        assertThat(TruthReader.read(new TextFile("truth.json", text))).isEqualTo(truth);
    }

    @Test
    void every_problem_is_told_at_its_place() {
        assertThat(problems("""
                {"schema": "telltally/truth/2", "codes": {"presnt": ["34"], "stored": "11"}, "events": [
                 {"kind": "code", "segment": "present", "digits": "34", "start_s": 2, "end_s": 2},
                 {"kind": "cade", "segment": "present", "start_s": 1, "end_s": 2}]}"""))
                .containsExactly(
                        "truth.json:1:1: /format: is missing; expected a text",
                        "truth.json:1:12: /schema: is \"telltally/truth/2\"; expected \"telltally/truth/1\"",
                        "truth.json:1:53: /codes/presnt: no segment is called \"presnt\"; expected present, stored,"
                                + " running, balance, codes",
                        "truth.json:1:71: /codes/stored: is a text; expected an array of texts",
                        "truth.json:2:80: /events/0/end_s: is not after \"start_s\"",
                        "truth.json:3:2: /events/1/digits: is missing; expected a text",
                        "truth.json:3:11: /events/1/kind: is \"cade\"; expected \"code\" or \"separator\" or \"cylinders\" or"
                                + " \"prompt\" or \"balance\" or \"steady\" or \"unreadable\"");
    }
}
