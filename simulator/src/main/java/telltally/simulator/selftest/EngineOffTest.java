package telltally.simulator.selftest;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Phase;

/** The controller lets every solenoid click and looks at its circuits a few times. */
final class EngineOffTest extends Stage {
    /** Common practice, no source. */
    private static final long LENGTH_NANOS = 5 * SECOND;

    private static final long BETWEEN_LOOKS_NANOS = SECOND;

    private final Set<String> found = new LinkedHashSet<>();
    private int looks;

    private EngineOffTest(long sinceNanos) {
        super(sinceNanos);
    }

    static EngineOffTest begin(Controller controller) {
        controller.event(Kind.TEST_BEGINS, "engine-off");
        controller.senses().movingSolenoids().forEach(name -> controller.event(Kind.SOLENOID_CLICKS, name));
        return new EngineOffTest(controller.nowNanos());
    }

    @Override
    long untilNanos() {
        return sinceNanos() + looks * BETWEEN_LOOKS_NANOS;
    }

    @Override
    void elapsed(Controller controller) {
        found.addAll(
                controller.codes().look(controller.segmented() ? Segment.PRESENT : Segment.CODES, Phase.ENGINE_OFF));
        looks++;
        if (untilNanos() > sinceNanos() + LENGTH_NANOS) {
            controller.enter(controller.segmented() ? presentAndStored(controller) : allCodes(controller));
        }
    }

    @Override
    void jumperOut(Controller controller) {
        controller.enter(new Waiting(controller.nowNanos()));
    }

    private Stage presentAndStored(Controller controller) {
        Message message = new Message.KeyOn(
                controller.codes().sendable(found),
                controller.codes().sendable(controller.codes().stored()));
        return Sending.begin(
                controller,
                controller.encoder().encode(message, new Pacing(SECOND, Sending.REST_NANOS, 1)),
                Segment.PRESENT,
                OutputCheck::new);
    }

    /** A format without segments tells what is there and what was there in one list. */
    private Stage allCodes(Controller controller) {
        Set<String> all = new LinkedHashSet<>(found);
        all.addAll(controller.codes().stored());
        List<String> codes = controller.codes().sendable(all);
        if (controller.setup().format().repeats().loops()) {
            return Looping.begin(controller, codes);
        }
        return Sending.begin(
                controller,
                controller.encoder().encode(new Message.Codes(codes), new Pacing(SECOND, Sending.REST_NANOS, 1)),
                Segment.CODES,
                OutputCheck::new);
    }
}
