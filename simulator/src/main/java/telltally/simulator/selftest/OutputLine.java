package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.Transmission;
import telltally.simulator.signal.PulseTrain;

/** The self-test output as it is written, and what of it was sent whole. */
final class OutputLine {
    private final boolean visible;
    private final PulseTrain.Builder lamp = PulseTrain.builder();
    private final PulseTrain.Builder wire = PulseTrain.builder();
    private final List<SentGroup> groups = new ArrayList<>();
    private final Map<Segment, Set<String>> codes = new EnumMap<>(Segment.class);

    OutputLine(boolean visible) {
        this.visible = visible;
    }

    long nowNanos() {
        return wire.nowNanos();
    }

    /** One level until an instant. */
    void hold(boolean lit, long untilNanos) {
        lamp.stay(lit && visible, untilNanos - lamp.nowNanos());
        wire.stay(lit, untilNanos - wire.nowNanos());
    }

    /** The part of a transmission up to an instant; what was written of it before stays. */
    void play(Transmission sent, long startNanos, long untilNanos) {
        copy(sent.lamp(), visible, lamp, startNanos, untilNanos);
        copy(sent.wire(), true, wire, startNanos, untilNanos);
    }

    private static void copy(PulseTrain from, boolean shown, PulseTrain.Builder to, long startNanos, long untilNanos) {
        while (to.nowNanos() < untilNanos) {
            long at = to.nowNanos() - startNanos;
            long edge = from.nextEdgeAfter(at);
            long next = edge > untilNanos - startNanos ? untilNanos : startNanos + edge;
            to.stay(from.litAt(at) && shown, next - to.nowNanos());
        }
    }

    /** Notes the groups of a transmission that ended by an instant. */
    void sent(Transmission transmission, long startNanos, long byNanos) {
        for (SentGroup group : transmission.groups()) {
            SentGroup placed = group.later(startNanos);
            if (placed.endNanos() <= byNanos) {
                groups.add(placed);
                if (group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE) {
                    codes.computeIfAbsent(group.segment(), segment -> new LinkedHashSet<>())
                            .add(group.digits());
                }
            }
        }
    }

    /** A bulb check or a light that says outputs are on: seen, and no flash. */
    void codesBegin(Segment segment) {
        codes.computeIfAbsent(segment, each -> new LinkedHashSet<>());
    }

    PulseTrain lamp() {
        return lamp.build();
    }

    PulseTrain wire() {
        return wire.build();
    }

    List<SentGroup> groups() {
        return List.copyOf(groups);
    }

    Map<Segment, List<String>> codes() {
        Map<Segment, List<String>> lists = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> lists.put(segment, List.copyOf(list)));
        return lists;
    }
}
