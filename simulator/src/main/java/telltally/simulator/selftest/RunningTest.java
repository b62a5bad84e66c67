package telltally.simulator.selftest;

import java.util.LinkedHashSet;
import java.util.Set;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Phase;

/**
 * The engine is held at a raised speed and everything is looked at again and again. Some vehicles prompt for the
 * throttle half way. Speeds and times are common practice, no source.
 */
final class RunningTest extends Stage {
    private static final double TEST_RPM = 1600;
    private static final double AFTER_TEST_RPM = 1000;
    private static final long BETWEEN_LOOKS_NANOS = SECOND;
    private static final long BEFORE_CODES_NANOS = 4 * SECOND;

    private static final long BEFORE_PROMPT_NANOS = SECOND / 2;
    private static final long ANSWER_WITHIN_NANOS = 15 * SECOND;
    private static final double ANSWERING_SHARE = 0.15;

    private final long lengthNanos;
    private final Set<String> found = new LinkedHashSet<>();
    private int looks;
    private long promptedNanos = NEVER;
    private double restShare;
    private boolean pressed;
    private boolean answered;

    private RunningTest(long sinceNanos, long lengthNanos) {
        super(sinceNanos);
        this.lengthNanos = lengthNanos;
    }

    static RunningTest begin(Controller controller) {
        controller.engineBay().holdSpeed(TEST_RPM);
        return new RunningTest(
                controller.nowNanos(),
                controller.setup().format().sessions().orElseThrow().runningTestNanos());
    }

    @Override
    long untilNanos() {
        return sinceNanos() + looks * BETWEEN_LOOKS_NANOS;
    }

    @Override
    void elapsed(Controller controller) {
        found.addAll(controller.codes().look(Segment.RUNNING, Phase.ENGINE_RUNNING));
        looks++;
        boolean halfWay = controller.nowNanos() >= sinceNanos() + lengthNanos / 2;
        if (promptedNanos == NEVER && controller.setup().asksForThrottle() && halfWay) {
            prompt(controller);
        }
        if (untilNanos() > sinceNanos() + lengthNanos) {
            end(controller);
        }
    }

    private void prompt(Controller controller) {
        promptedNanos = controller.nowNanos();
        restShare = controller.senses().throttleShare();
        Transmission flash = controller
                .encoder()
                .encodeCount(GroupKind.PROMPT, Segment.RUNNING, 1, new Pacing(BEFORE_PROMPT_NANOS, 1, 1));
        controller.output().begin(flash, Segment.RUNNING);
        controller.event(Kind.PROMPT, "");
    }

    private void end(Controller controller) {
        if (promptedNanos != NEVER && !answered) {
            found.addAll(controller.codes().unansweredPrompt(pressed));
        }
        controller.engineBay().holdSpeed(AFTER_TEST_RPM);
        Transmission sent = controller
                .encoder()
                .encodeList(
                        Segment.RUNNING,
                        controller.codes().sendable(found),
                        new Pacing(BEFORE_CODES_NANOS, Sending.REST_NANOS, 1));
        controller.enter(Sending.begin(controller, sent, Segment.RUNNING, AwaitingBalance::new));
    }

    /** Whoever answers without the sensor showing it has not failed; the sensor has. */
    @Override
    void pedal(Controller controller, double share) {
        pressed |= waitingForAnswer(controller.nowNanos()) && share >= ANSWERING_SHARE;
    }

    @Override
    void throttle(Controller controller, double fromShare, double toShare) {
        if (waitingForAnswer(controller.nowNanos()) && !answered && toShare - restShare >= ANSWERING_SHARE) {
            answered = true;
            controller.event(Kind.PROMPT_ANSWERED, "");
        }
    }

    private boolean waitingForAnswer(long nanos) {
        return nanos >= promptedNanos && nanos - promptedNanos <= ANSWER_WITHIN_NANOS;
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.play(untilNanos);
    }

    @Override
    void jumperOut(Controller controller) {
        controller.returnToIdle();
    }
}
