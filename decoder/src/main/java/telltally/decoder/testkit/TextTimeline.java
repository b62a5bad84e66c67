package telltally.decoder.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/**
 * What was sent beside what was read, for a terminal: a line for each group in order of time, with the light in it.
 * Groups are matched by what they say, not by when, since a channel stretches time.
 */
public final class TextTimeline {
    private static final int WIDTH = 26;
    private static final int LIGHT_WIDTH = 60;
    private static final long LEAST_NANOS = 50_000_000L;

    private final Session session;
    private final Reading reading;

    public TextTimeline(Session session, Reading reading) {
        this.session = session;
        this.reading = reading;
    }

    /** Several lines, each with its end. */
    public String text() {
        StringBuilder text = new StringBuilder(session.toString()).append('\n');
        text.append("  sent ").append(codes(session.truth().codes())).append('\n');
        text.append("  read ").append(codes(reading.codes()));
        reading.format().ifPresent(format -> text.append(", as ").append(format.id()));
        text.append('\n');
        if (!reading.groups().isEmpty()) {
            text.append(row("", "sent", "read", "at", "light (# lit, . dark)"));
            rows().forEach(row -> text.append(line(row)));
        }
        reading.warnings()
                .forEach(warning -> text.append("  warning at ")
                        .append(Seconds.text(warning.atNanos()))
                        .append(" s: ")
                        .append(warning.kind().key())
                        .append(": ")
                        .append(warning.text())
                        .append('\n'));
        return text.toString();
    }

    private static String codes(Map<Segment, List<String>> codes) {
        return codes.isEmpty()
                ? "nothing"
                : codes.entrySet().stream()
                        .map(each -> each.getKey().key() + " "
                                + (each.getValue().isEmpty() ? "none" : String.join(" ", each.getValue())))
                        .collect(Collectors.joining(", "));
    }

    private String line(Row row) {
        String sent = row.sent.map(TextTimeline::said).orElse("");
        String read = row.read.map(TextTimeline::said).orElse("");
        String at = row.read
                .map(each -> Seconds.text(each.startNanos() / 1_000_000 * 1_000_000))
                .orElse("");
        String light = row.read.map(each -> light(session.train(), each)).orElse("");
        return row(sent.equals(read) ? " " : ">", sent, read, at, light);
    }

    private static String row(String mark, String sent, String read, String at, String light) {
        return ("  " + padded(mark, 2) + padded(sent, WIDTH) + padded(read, WIDTH) + padded(at, 9) + light)
                        .stripTrailing()
                + "\n";
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String said(SentGroup group) {
        return group.kind().key() + " " + group.segment().key() + " " + group.digits();
    }

    private static String said(Group group) {
        return group.kind().key() + " " + group.segment().key() + " " + group.digits();
    }

    /**
     * The flashes and gaps of a group, in steps of its shortest one; each takes at least one step, and what is too short
     * to be either, such as bounce, none.
     */
    private static String light(PulseTrain train, Group group) {
        List<Interval> inside = train.intervals().stream()
                .filter(each -> each.startNanos() >= group.startNanos() && each.endNanos() <= group.endNanos())
                .filter(each -> each.lengthNanos() >= LEAST_NANOS)
                .toList();
        long step = inside.stream().mapToLong(Interval::lengthNanos).min().orElse(1);
        StringBuilder light = new StringBuilder();
        inside.forEach(each -> light.append((each.lit() ? "#" : ".").repeat((int)
                Math.min(LIGHT_WIDTH, Math.round((double) each.lengthNanos() / step)))));
        return light.length() > LIGHT_WIDTH ? light.substring(0, LIGHT_WIDTH) + "..." : light.toString();
    }

    private record Row(Optional<SentGroup> sent, Optional<Group> read) {}

    /** The longest common row of groups stands side by side; between its members, others as they come. */
    private List<Row> rows() {
        List<SentGroup> sent = session.truth().groups();
        List<Group> read = reading.groups();
        int[][] common = new int[sent.size() + 1][read.size() + 1];
        for (int i = sent.size() - 1; i >= 0; i--) {
            for (int j = read.size() - 1; j >= 0; j--) {
                common[i][j] = said(sent.get(i)).equals(said(read.get(j)))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        List<Row> rows = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < sent.size() || j < read.size()) {
            boolean both = i < sent.size() && j < read.size();
            // Two that differ stand side by side where neither is needed for a better match.
            boolean side = both
                    && common[i + 1][j + 1] + (said(sent.get(i)).equals(said(read.get(j))) ? 1 : 0) == common[i][j];
            if (side) {
                rows.add(new Row(Optional.of(sent.get(i++)), Optional.of(read.get(j++))));
            } else if (i < sent.size() && common[i + 1][Math.min(j, read.size())] == common[i][j]) {
                rows.add(new Row(Optional.of(sent.get(i++)), Optional.empty()));
            } else {
                rows.add(new Row(Optional.empty(), Optional.of(read.get(j++))));
            }
        }
        return rows;
    }
}
