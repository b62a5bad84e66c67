package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.format.Transmission;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** The self-test output as it is written, and what of it was sent whole. */
final class OutputLine {
    private static final long DARK = -1;

    private final boolean visible;
    private final Segment segmentOfLights;
    private final PulseTrain.Builder lamp = PulseTrain.builder();
    private final PulseTrain.Builder wire = PulseTrain.builder();
    private final List<SentGroup> groups = new ArrayList<>();
    private final Map<Segment, Set<String>> codes = new EnumMap<>(Segment.class);

    private @Nullable Playing playing;
    private long lightSinceNanos = DARK;

    /**
     * @param visible whether the lamp shows anything at all
     * @param segmentOfLights the segment under which lights that are no flashes are noted
     */
    OutputLine(boolean visible, Segment segmentOfLights) {
        this.visible = visible;
        this.segmentOfLights = segmentOfLights;
    }

    /** One level until an instant, as the controller holds it; whatever was being sent is over. */
    void light(boolean on, long untilNanos) {
        endPlaying();
        if (!on) {
            endLight();
        } else if (lightSinceNanos == DARK) {
            lightSinceNanos = wire.nowNanos();
        }
        lamp.stay(on && visible, untilNanos - lamp.nowNanos());
        wire.stay(on, untilNanos - wire.nowNanos());
    }

    /** From here on a transmission is sent, the codes of this segment first. */
    void begin(Transmission sent, Segment first) {
        endPlaying();
        endLight();
        playing = new Playing(sent, wire.nowNanos());
        if (sent.codes().containsKey(first)) {
            codes.computeIfAbsent(first, each -> new LinkedHashSet<>());
        }
    }

    /** The transmission turns out to be longer; what was sent of it so far is the same. */
    void goOnWith(Transmission longer) {
        if (playing != null) {
            playing.goOnWith(longer);
        }
    }

    /** Sends of what was begun as much as comes before an instant; dark where nothing is left of it. */
    void play(long untilNanos) {
        if (playing == null) {
            light(false, untilNanos);
            return;
        }
        playing.copyLamp(lamp, visible, untilNanos);
        playing.copyWire(wire, untilNanos);
        while (true) {
            Optional<SentGroup> whole = playing.nextWhole(untilNanos);
            if (whole.isEmpty()) {
                return;
            }
            note(whole.get());
        }
    }

    private void note(SentGroup group) {
        groups.add(group);
        if (group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE) {
            codes.computeIfAbsent(group.segment(), segment -> new LinkedHashSet<>())
                    .add(group.digits());
        }
    }

    private void endPlaying() {
        blinking().ifPresent(groups::add);
        playing = null;
    }

    private void endLight() {
        lightSoFar().ifPresent(groups::add);
        lightSinceNanos = DARK;
    }

    private Optional<SentGroup> blinking() {
        return playing == null ? Optional.empty() : playing.blinking(wire.nowNanos());
    }

    private Optional<SentGroup> lightSoFar() {
        if (lightSinceNanos == DARK || lightSinceNanos == wire.nowNanos()) {
            return Optional.empty();
        }
        Interval light = new Interval(true, lightSinceNanos, wire.nowNanos());
        return Optional.of(
                new SentGroup(GroupKind.STEADY, segmentOfLights, "", List.of(new SentSign("", List.of(light)))));
    }

    /** Whether the output was pulled low up to now. */
    boolean lit() {
        return lightSinceNanos != DARK || (playing != null && playing.litBefore(wire.nowNanos()));
    }

    PulseTrain lamp() {
        return lamp.build();
    }

    PulseTrain wire() {
        return wire.build();
    }

    /** Every group that was sent whole, and every light that is no flash. */
    List<SentGroup> groups() {
        List<SentGroup> all = new ArrayList<>(groups);
        blinking().ifPresent(all::add);
        lightSoFar().ifPresent(all::add);
        return all;
    }

    /** The codes that were sent whole, each once per segment, in the order sent. */
    Map<Segment, List<String>> codes() {
        Map<Segment, List<String>> lists = new EnumMap<>(Segment.class);
        codes.forEach((segment, list) -> lists.put(segment, List.copyOf(list)));
        return lists;
    }
}
