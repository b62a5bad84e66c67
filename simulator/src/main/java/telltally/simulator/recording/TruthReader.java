package telltally.simulator.recording;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;

/** Reads the truth that lies beside a recording: format, codes and groups; whatever else there is is passed over. */
public final class TruthReader {
    private static final long LONGEST_NANOS = 1_000_000_000_000_000L;

    private final Fields file;

    private TruthReader(Fields file) {
        this.file = file;
    }

    /**
     * The truth without what it says of the bench. A group is given as one flash from its beginning to its end, since
     * the file does not say more.
     *
     * @throws ProblemException with every problem of the file
     */
    public static Truth read(TextFile source) throws ProblemException {
        Problems problems = new Problems(source.name());
        Truth truth = new TruthReader(Fields.of(source, problems)).truth();
        problems.throwIfAny();
        return truth;
    }

    private Truth truth() {
        file.schema(TruthJson.SCHEMA);
        String format = file.text("format");
        Map<Segment, List<String>> codes = file.object("codes").map(this::codes).orElse(Map.of());
        List<SentGroup> groups = new ArrayList<>();
        for (Fields event : file.objects("events")) {
            group(event).ifPresent(groups::add);
        }
        return new Truth(format, codes, groups);
    }

    private Map<Segment, List<String>> codes(Fields lists) {
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        for (String name : lists.names()) {
            List<String> list = lists.texts(name).stream().map(PlacedText::text).toList();
            Optional<Segment> segment = segment(name);
            if (segment.isEmpty()) {
                lists.problem(name, "no segment is called " + Problem.quoted(name) + "; expected " + segments());
            }
            segment.ifPresent(each -> codes.put(each, list));
        }
        return codes;
    }

    private Optional<SentGroup> group(Fields event) {
        int before = event.problems().count();
        GroupKind kind = event.choice("kind", List.of(GroupKind.values()), GroupKind::key);
        Segment segment = event.choice("segment", List.of(Segment.values()), Segment::key);
        String digits = event.anyText("digits");
        long start = event.nanos("start_s", 0, LONGEST_NANOS);
        long end = event.nanos("end_s", 0, LONGEST_NANOS);
        if (end <= start && event.problems().count() == before) {
            event.problem("end_s", "is not after \"start_s\"");
        }
        return event.problems().count() == before
                ? Optional.of(new SentGroup(
                        kind, segment, digits, List.of(new SentSign(digits, List.of(new Interval(true, start, end))))))
                : Optional.empty();
    }

    private static Optional<Segment> segment(String key) {
        return Stream.of(Segment.values())
                .filter(each -> each.key().equals(key))
                .findFirst();
    }

    private static String segments() {
        return String.join(", ", Stream.of(Segment.values()).map(Segment::key).toList());
    }
}
