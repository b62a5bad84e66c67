package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.Marked;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.Marker;
import telltally.trainer.lesson.Marking.Row;
import telltally.trainer.screen.Timeline.Bar;
import telltally.trainer.screen.Timeline.Digit;
import telltally.trainer.screen.Timeline.Look;
import telltally.trainer.screen.Timeline.Pause;
import telltally.trainer.screen.Timeline.Piece;
import telltally.trainer.screen.Timeline.Verdict;
import telltally.trainer.text.Texts;

/** Lays an answer under what was sent. */
final class TimelineMaker {
    private final Texts texts;
    private final Drill drill;
    private final Marked marked;
    private final List<Interval> taps;
    private final List<Interval> lights;
    private final Set<Row> told = new HashSet<>();
    private final Set<String> named = new HashSet<>();

    TimelineMaker(Texts texts, Drill drill, Marked marked, List<Interval> taps) {
        this.texts = texts;
        this.drill = drill;
        this.marked = marked;
        this.taps = taps;
        this.lights = drill.pulses().intervals().stream().filter(Interval::lit).toList();
    }

    Timeline timeline() {
        List<SentGroup> groups = drill.truth().groups();
        List<Piece> pieces = new ArrayList<>();
        long before = 0;
        joined(groups).ifPresent(pieces::add);
        if (!pieces.isEmpty()) {
            before = pieces.get(0).endNanos();
        }
        for (int i = 0; i < groups.size(); i++) {
            SentGroup group = groups.get(i);
            long after = i + 1 < groups.size() ? groups.get(i + 1).startNanos() : drill.lampNanos();
            pieces.add(piece(group, pause(pieces.size(), group.startNanos() - before), before, after));
            before = group.endNanos();
        }
        pieces.addAll(neverSent());
        return new Timeline(pieces);
    }

    /** Nothing stands before the first group. */
    private Optional<Pause> pause(int groupsBefore, long lengthNanos) {
        if (groupsBefore == 0) {
            return Optional.empty();
        }
        double seconds = lengthNanos / 1e9;
        return Optional.of(new Pause(
                lengthNanos,
                pausesAreAskedFor()
                        ? texts.of("drill.piece-pause-numbered", groupsBefore, seconds)
                        : texts.of("drill.piece-pause", seconds)));
    }

    private boolean pausesAreAskedFor() {
        return drill.skill() == Skill.SEPARATOR_PAUSE;
    }

    /** What was written and belongs to nothing that was sent. */
    private List<Piece> neverSent() {
        return marked.marking().stream()
                .flatMap(marking -> marking.rows().stream())
                .filter(row -> row.sent().isEmpty())
                .map(row -> row.written().orElse(""))
                .map(written -> new Piece(
                        texts.of("drill.piece-not-sent"),
                        Verdict.WRONG,
                        Optional.empty(),
                        drill.lampNanos(),
                        drill.lampNanos(),
                        List.of(),
                        List.of(),
                        List.of(),
                        written,
                        Optional.empty(),
                        spoken(texts.of("drill.piece-not-sent"), Verdict.WRONG, written)))
                .toList();
    }

    /** The end of a group that the learner came upon midway. */
    private Optional<Piece> joined(List<SentGroup> groups) {
        long firstNanos = groups.isEmpty() ? drill.lampNanos() : groups.get(0).startNanos();
        List<Bar> bars = lights.stream()
                .filter(light -> light.endNanos() <= firstNanos)
                .map(light -> bar(Look.SEEN, light))
                .toList();
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        long start = bars.get(0).startNanos();
        long end = bars.get(bars.size() - 1).endNanos();
        String name = texts.of("drill.piece-joined");
        return Optional.of(new Piece(
                name,
                Verdict.NONE,
                Optional.empty(),
                start,
                end,
                bars,
                near(0, start, end, firstNanos),
                List.of(),
                "",
                Optional.empty(),
                name));
    }

    private Piece piece(SentGroup group, Optional<Pause> pause, long beforeNanos, long afterNanos) {
        Optional<Row> row = row(group);
        String written = row.flatMap(Row::written).orElse("");
        Verdict verdict =
                row.map(each -> each.right() ? Verdict.RIGHT : Verdict.WRONG).orElse(Verdict.NONE);
        String name = name(group);
        return new Piece(
                name,
                verdict,
                pause,
                group.startNanos(),
                group.endNanos(),
                bars(group),
                near(beforeNanos, group.startNanos(), group.endNanos(), afterNanos),
                digits(group, row.isPresent(), written),
                written,
                group.kind() == GroupKind.STEADY ? Optional.empty() : Optional.of(group),
                spoken(name, verdict, written));
    }

    private String spoken(String name, Verdict verdict, String written) {
        if (verdict == Verdict.NONE) {
            return name;
        }
        String answer = written.isEmpty()
                ? texts.of("drill.spoken-nothing", name)
                : texts.of("drill.spoken-written", name, written);
        return texts.of(verdict == Verdict.RIGHT ? "drill.spoken-right" : "drill.spoken-wrong", answer);
    }

    /** The answer stands under the first sending of a code; a repeat is only there to check it. */
    private Optional<Row> row(SentGroup group) {
        if (group.kind() != GroupKind.CODE && group.kind() != GroupKind.BALANCE) {
            return Optional.empty();
        }
        Optional<Row> row = marked.marking()
                .flatMap(marking -> marking.rows(group.segment()).stream()
                        .filter(each ->
                                each.sent().filter(group.digits()::equals).isPresent())
                        .findFirst());
        return row.filter(told::add);
    }

    private String name(SentGroup group) {
        Optional<Marker> marker = Marker.of(drill.format(), group);
        if (marker.isPresent()) {
            return marker.get().title(texts);
        }
        if (group.kind() == GroupKind.STEADY) {
            return texts.of("drill.piece-steady");
        }
        boolean repeat = !named.add(group.segment() + group.digits()) && !pausesAreAskedFor();
        return texts.of(repeat ? "drill.piece-again" : "drill.piece-code", group.digits());
    }

    private List<Bar> bars(SentGroup group) {
        List<Bar> bars = new ArrayList<>();
        List<Interval> sent =
                group.signs().stream().flatMap(sign -> sign.flashes().stream()).toList();
        sent.forEach(flash -> bars.add(bar(lights.contains(flash) ? Look.SEEN : Look.MISSED, flash)));
        lights.stream()
                .filter(light -> light.startNanos() > group.startNanos() && light.endNanos() < group.endNanos())
                .filter(light -> !sent.contains(light))
                .forEach(light -> bars.add(bar(Look.GHOST, light)));
        return bars;
    }

    private static List<Digit> digits(SentGroup group, boolean asked, String written) {
        List<Digit> digits = new ArrayList<>();
        boolean aligned =
                group.signs().size() == 1 || written.length() == group.signs().size();
        for (int place = 0; place < group.signs().size(); place++) {
            SentSign sign = group.signs().get(place);
            if (sign.text().isEmpty() || sign.flashes().isEmpty()) {
                continue;
            }
            String own =
                    !asked || !aligned ? "" : group.signs().size() == 1 ? written : written.substring(place, place + 1);
            digits.add(new Digit(
                    sign.text(),
                    own,
                    own.equals(sign.text()),
                    sign.flashes().get(0).startNanos(),
                    sign.flashes().get(sign.flashes().size() - 1).endNanos()));
        }
        return digits;
    }

    /** Taps nearer to this group than to its neighbours. */
    private List<Bar> near(long beforeNanos, long startNanos, long endNanos, long afterNanos) {
        long from = (beforeNanos + startNanos) / 2;
        long to = (endNanos + afterNanos) / 2;
        return taps.stream()
                .filter(tap -> tap.startNanos() >= from && tap.startNanos() < to)
                .map(tap -> bar(Look.SEEN, tap))
                .toList();
    }

    private static Bar bar(Look look, Interval interval) {
        return new Bar(look, interval.startNanos(), interval.endNanos());
    }
}
