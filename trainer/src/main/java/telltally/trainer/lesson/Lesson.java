package telltally.trainer.lesson;

import java.util.List;
import java.util.Optional;
import telltally.simulator.Simulation;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Recording;
import telltally.simulator.scenario.Content;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.selftest.OperatorAct;
import telltally.simulator.signal.PulseTrain;

/** A scenario played with a seed: what will be shown, and the truth to mark it by. */
public record Lesson(Scenario scenario, Recording recording) {
    public static Lesson play(Scenario scenario, long seed) {
        return new Lesson(scenario, Simulation.run(scenario, seed));
    }

    /** What the lamp shows. */
    public PulseTrain pulses() {
        return recording.lamp();
    }

    /** The segments that are sent, each of them to be written down; where nothing is sent, all that could have been. */
    public List<Segment> segments() {
        List<Segment> sent = List.copyOf(recording.truth().codes().keySet());
        return sent.isEmpty() ? scenario.format().segments() : sent;
    }

    public Marking mark(AnswerSheet sheet) {
        return Marking.of(scenario.format(), recording.truth(), sheet);
    }

    /** What a code means by the lesson's code list. */
    public Optional<String> meaning(String code) {
        return scenario.codeList().flatMap(list -> list.meaning(code));
    }

    /** Where a code was sent for the first time. */
    public Optional<SentGroup> firstSent(Segment segment, String code) {
        return recording.truth().groups().stream()
                .filter(group -> group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE)
                .filter(group -> group.segment() == segment && group.digits().equals(code))
                .findFirst();
    }

    /** What must be heeded where this is done on a vehicle. */
    public List<Caution> cautions() {
        if (scenario.content() instanceof Content.Outright outright && outright.message() instanceof Message.Codes) {
            return Caution.ALWAYS;
        }
        return engineRuns() ? Caution.ENGINE_RUNNING : Caution.ENGINE_OFF;
    }

    private boolean engineRuns() {
        if (scenario.content() instanceof Content.Caused caused) {
            return caused.acts().stream().anyMatch(OperatorAct.Crank.class::isInstance);
        }
        Message message = ((Content.Outright) scenario.content()).message();
        return message instanceof Message.Running || message instanceof Message.Balance;
    }
}
