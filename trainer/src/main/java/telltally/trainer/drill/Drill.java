package telltally.trainer.drill;

import java.util.List;
import java.util.Optional;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;

/**
 * One task. The same skill, level, item and seed always give the same drill.
 *
 * @param item what it was asked to be about: a digit, a code of a list; empty where chance decided
 * @param format the rules that the flashes follow: those of a shipped format, or a slower or wider variant of one
 * @param truth what was sent, at the instants of {@code pulses}
 * @param pulses what drives the display, missed and ghost flashes included; never more than three flashes a second
 * @param display how it is meant to be perceived
 * @param observer what display and eye make of the pulses
 */
public record Drill(
        Skill skill,
        Level level,
        String item,
        long seed,
        FlashFormat format,
        Truth truth,
        PulseTrain pulses,
        Display display,
        Observer observer,
        Question question,
        Optional<Interruption> interruption) {

    /** How long the lamp runs. */
    public long lampNanos() {
        return pulses.endNanos();
    }

    /** Marks an answer; one of another kind than was asked for counts as none. */
    public Marked mark(Answer answer) {
        return new DrillMarker(this).mark(answer);
    }

    /** What somebody answers who makes no mistake and writes each code as soon as it has ended. */
    public Answer perfectAnswer() {
        return new DrillMarker(this).perfectAnswer();
    }

    Drill shownBy(Display other, Observer through) {
        return new Drill(skill, level, item, seed, format, truth, pulses, other, through, question, interruption);
    }

    /** The same drill with something having gone wrong between the controller and the display. */
    Drill seenAs(PulseTrain seen) {
        return new Drill(skill, level, item, seed, format, truth, seen, display, observer, question, interruption);
    }

    Drill interruptedBy(Interruption asked) {
        return new Drill(
                skill, level, item, seed, format, truth, pulses, display, observer, question, Optional.of(asked));
    }

    /** What is learnt by it: the drill's own skill and item. */
    Credit own(boolean right) {
        return new Credit(skill, level, item, right);
    }

    List<String> sent(Segment segment) {
        return truth.codes().getOrDefault(segment, List.of());
    }
}
