package telltally.trainer.screen;

import java.util.List;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.SentGroup;
import telltally.simulator.scenario.Display;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.drill.Drill;
import telltally.trainer.lesson.Lesson;

/**
 * What a learner was shown, so that it can be shown again.
 *
 * @param groups what was sent, at the instants of {@code pulses}
 */
record Showing(
        PulseTrain pulses, FlashFormat format, List<SentGroup> groups, Display shownBy, Instruments instruments) {
    static Showing of(Lesson lesson, Display shownBy) {
        return new Showing(
                lesson.pulses(),
                lesson.scenario().format(),
                lesson.recording().truth().groups(),
                shownBy,
                Instruments.of(lesson));
    }

    static Showing of(Drill drill, Display shownBy) {
        return new Showing(drill.pulses(), drill.format(), drill.truth().groups(), shownBy, Instruments.of(drill));
    }
}
