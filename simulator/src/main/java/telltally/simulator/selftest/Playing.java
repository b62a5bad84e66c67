package telltally.simulator.selftest;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.format.Transmission;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** A transmission in the course of being sent: how far each of its trains was copied, and its groups. */
final class Playing {
    private final long startNanos;
    private Transmission sent;
    private int lampEdges;
    private int wireEdges;
    private int groups;

    Playing(Transmission sent, long startNanos) {
        this.sent = sent;
        this.startNanos = startNanos;
    }

    /** The transmission turns out to be longer; what was copied of it so far is the same. */
    void goOnWith(Transmission longer) {
        sent = longer;
    }

    void copyLamp(PulseTrain.Builder to, boolean visible, long untilNanos) {
        lampEdges = copy(sent.lamp(), lampEdges, to, visible, untilNanos);
    }

    void copyWire(PulseTrain.Builder to, long untilNanos) {
        wireEdges = copy(sent.wire(), wireEdges, to, true, untilNanos);
    }

    private int copy(PulseTrain from, int edges, PulseTrain.Builder to, boolean visible, long untilNanos) {
        int edge = edges;
        boolean lit = from.litAtStart() ^ (edge % 2 == 1);
        while (edge < from.edgeCount() && startNanos + from.edgeNanos(edge) < untilNanos) {
            to.stay(lit && visible, startNanos + from.edgeNanos(edge) - to.nowNanos());
            lit = !lit;
            edge++;
        }
        long end = Math.min(untilNanos, startNanos + from.endNanos());
        to.stay(lit && visible, Math.max(0, end - to.nowNanos()));
        to.dark(untilNanos - to.nowNanos());
        return edge;
    }

    /** Whether the wire is pulled low just before an instant up to which it was copied. */
    boolean litBefore(long nanos) {
        long at = nanos - startNanos - 1;
        return at < sent.wire().endNanos() && sent.wire().litAt(at);
    }

    /** Takes from it the next group that was sent whole by an instant. Blinking, which has no end, is no such group. */
    Optional<SentGroup> nextWhole(long byNanos) {
        if (groups == sent.groups().size()) {
            return Optional.empty();
        }
        SentGroup next = sent.groups().get(groups);
        if (isBlinking(next) || startNanos + next.endNanos() > byNanos) {
            return Optional.empty();
        }
        groups++;
        return Optional.of(next.later(startNanos));
    }

    /** Blinking as far as its flashes were sent whole. */
    Optional<SentGroup> blinking(long byNanos) {
        if (groups == sent.groups().size() || !isBlinking(sent.groups().get(groups))) {
            return Optional.empty();
        }
        SentGroup blinking = sent.groups().get(groups).later(startNanos);
        List<Interval> whole = blinking.signs().get(0).flashes().stream()
                .filter(flash -> flash.endNanos() <= byNanos)
                .toList();
        return whole.isEmpty()
                ? Optional.empty()
                : Optional.of(new SentGroup(blinking.kind(), blinking.segment(), "", List.of(new SentSign("", whole))));
    }

    /** A lead-in is steady light as well, but has an end. */
    private static boolean isBlinking(SentGroup group) {
        return group.kind() == GroupKind.STEADY
                && group.signs().get(0).flashes().size() > 1;
    }
}
