package telltally.trainer.lesson;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.Segment;

/** What a learner wrote down, by segment, in the order written. Immutable; blanks are left out. */
public final class AnswerSheet {
    private static final AnswerSheet EMPTY = new AnswerSheet(new EnumMap<>(Segment.class));

    private final Map<Segment, List<String>> written;

    private AnswerSheet(EnumMap<Segment, List<String>> written) {
        this.written = Collections.unmodifiableMap(written);
    }

    public static AnswerSheet empty() {
        return EMPTY;
    }

    /** This sheet with the codes of one segment in place of what stood there. */
    public AnswerSheet with(Segment segment, List<String> codes) {
        EnumMap<Segment, List<String>> changed = new EnumMap<>(Segment.class);
        changed.putAll(written);
        changed.put(
                segment,
                codes.stream()
                        .map(String::strip)
                        .filter(code -> !code.isEmpty())
                        .toList());
        return new AnswerSheet(changed);
    }

    public List<String> codes(Segment segment) {
        return written.getOrDefault(segment, List.of());
    }

    /** The segments in which something was written. */
    public List<Segment> segments() {
        return written.keySet().stream()
                .filter(segment -> !codes(segment).isEmpty())
                .toList();
    }
}
