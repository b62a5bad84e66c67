package telltally.simulator.selftest;

import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;

/** The running test opens with half the number of cylinders. That is no code. */
final class CylinderFlashes extends Stage {
    private static final long WAIT_NANOS = 3 * SECOND;

    private final Transmission sent;

    private CylinderFlashes(long sinceNanos, Transmission sent) {
        super(sinceNanos);
        this.sent = sent;
    }

    static CylinderFlashes begin(Controller controller) {
        controller.event(Kind.TEST_BEGINS, "engine-running");
        controller.engineBay().forgetBalanceTests();
        int half = controller.setup().vehicle().cylinders().count() / 2;
        Transmission sent = controller
                .encoder()
                .encodeCount(GroupKind.CYLINDERS, Segment.RUNNING, half, new Pacing(WAIT_NANOS, SECOND, 1));
        controller.output().begin(sent, Segment.RUNNING);
        return new CylinderFlashes(controller.nowNanos(), sent);
    }

    @Override
    long untilNanos() {
        return sinceNanos() + sent.lamp().endNanos();
    }

    @Override
    void elapsed(Controller controller) {
        controller.enter(RunningTest.begin(controller));
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
