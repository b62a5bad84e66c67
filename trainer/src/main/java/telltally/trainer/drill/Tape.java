package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** What is sent in a drill, one thing after the other. */
final class Tape {
    private final PulseTrain.Builder pulses = PulseTrain.builder();
    private final List<SentGroup> groups = new ArrayList<>();
    private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);

    static Tape of(Transmission sent) {
        return new Tape().send(sent);
    }

    Tape send(Transmission sent) {
        return add(sent.lamp(), sent.groups(), sent.codes());
    }

    Tape append(Tape other) {
        return add(other.pulses(), other.groups, other.codes);
    }

    private Tape add(PulseTrain train, List<SentGroup> sent, Map<Segment, List<String>> lists) {
        long fromNanos = pulses.nowNanos();
        sent.forEach(group -> groups.add(group.later(fromNanos)));
        train.intervals().forEach(each -> pulses.stay(each.lit(), each.lengthNanos()));
        lists.forEach((segment, list) ->
                codes.computeIfAbsent(segment, key -> new ArrayList<>()).addAll(list));
        return this;
    }

    Tape dark(long nanos) {
        pulses.dark(nanos);
        return this;
    }

    /** A light that is no flash. */
    Tape steadyLight(Segment segment, long nanos) {
        Interval light = new Interval(true, pulses.nowNanos(), pulses.nowNanos() + nanos);
        pulses.lit(nanos);
        groups.add(new SentGroup(GroupKind.STEADY, segment, "", List.of(new SentSign("", List.of(light)))));
        return this;
    }

    PulseTrain pulses() {
        return pulses.build();
    }

    Truth truth(FlashFormat format) {
        return new Truth(format.id(), codes, groups);
    }
}
