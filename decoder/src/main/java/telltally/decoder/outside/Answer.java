package telltally.decoder.outside;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.Outcome.Failure;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Fields.PlacedText;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.Problems;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;

/**
 * Reads the answer to one request: its id and the keys of a reading, of which only {@code codes} must be there. Other
 * members are passed over.
 */
final class Answer {
    private static final double SLOWEST_CLOCK = 1e6;

    private final Fields fields;
    private final List<FlashFormat> candidates;

    private Answer(Fields fields, List<FlashFormat> candidates) {
        this.fields = fields;
        this.candidates = candidates;
    }

    /** @throws Misbehaviour if the line is no answer, or one to another request */
    static Reading read(byte[] line, long id, List<FlashFormat> candidates) throws Misbehaviour {
        try {
            TextFile source = TextFile.decode("answer", line);
            Problems problems = new Problems(source.name());
            Fields fields = Fields.of(source, problems);
            long answered = fields.wholeLong("id");
            problems.throwIfAny();
            if (answered < id) {
                throw Program.unasked();
            }
            if (answered > id) {
                throw new Misbehaviour(
                        Failure.OUT_OF_ORDER, "answered the request " + answered + " when asked the request " + id);
            }
            Reading reading = new Answer(fields, candidates).reading();
            problems.throwIfAny();
            return reading;
        } catch (ProblemException e) {
            throw new Misbehaviour(Failure.RUBBISH, e.problems().get(0).toString());
        }
    }

    private Reading reading() {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        fields.object("codes").ifPresent(each -> codes(each, codes));
        return new Reading(
                format(codes.isEmpty()),
                codes,
                fields.optionalObjects("groups").stream().map(Answer::group).toList(),
                fields.optionalObjects("warnings").stream().map(Answer::warning).toList());
    }

    private static void codes(Fields lists, Map<Segment, List<String>> codes) {
        for (String key : lists.names()) {
            List<String> list = lists.texts(key).stream().map(PlacedText::text).toList();
            Stream.of(Segment.values())
                    .filter(segment -> segment.key().equals(key))
                    .findFirst()
                    .ifPresentOrElse(
                            segment -> codes.put(segment, list),
                            () -> lists.problem(
                                    key, "is no segment; expected present, stored, running, balance or codes"));
        }
    }

    /** Who was told the format and read something has read that. */
    private Optional<FormatEstimate> format(boolean nothingRead) {
        if (fields.isObject("format")) {
            return fields.object("format").map(this::format);
        }
        return nothingRead || candidates.size() > 1
                ? Optional.empty()
                : Optional.of(new FormatEstimate(candidates.get(0).id(), 1, 1));
    }

    private FormatEstimate format(Fields format) {
        List<String> ids = candidates.stream().map(FlashFormat::id).toList();
        return new FormatEstimate(
                format.choice("id", ids, id -> id),
                optional(format, "probability", 1, 1),
                optional(format, "clock_scale", SLOWEST_CLOCK, 1));
    }

    private static double optional(Fields fields, String name, double most, double otherwise) {
        return fields.has(name) ? fields.number(name, 0, most) : otherwise;
    }

    private static Group group(Fields group) {
        long startNanos = group.nanos("start_s", 0, Seconds.MAX_NANOS);
        List<Alternative> alternatives = new ArrayList<>();
        for (Fields each : group.optionalObjects("alternatives")) {
            alternatives.add(new Alternative(each.text("digits"), each.number("probability", 0, 1)));
        }
        return new Group(
                group.choice("kind", List.of(GroupKind.values()), GroupKind::key),
                group.choice("segment", List.of(Segment.values()), Segment::key),
                group.anyText("digits"),
                optional(group, "probability", 1, 1),
                startNanos,
                group.nanos("end_s", startNanos, Seconds.MAX_NANOS),
                alternatives);
    }

    private static Warning warning(Fields warning) {
        return new Warning(
                warning.nanos("time_s", 0, Seconds.MAX_NANOS),
                warning.choice("kind", List.of(WarningKind.values()), WarningKind::key),
                warning.anyText("text"));
    }
}
