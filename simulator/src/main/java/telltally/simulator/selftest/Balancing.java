package telltally.simulator.selftest;

import java.util.OptionalInt;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;

/** One injector after the other is cut. Touching the throttle spoils it: then nothing is sent. */
final class Balancing extends Stage {
    private static final double TOUCHED_SHARE = 0.01;
    private static final long BEFORE_RESULT_NANOS = 2 * SECOND;

    private final long endNanos;

    private Balancing(long sinceNanos, long endNanos) {
        super(sinceNanos);
        this.endNanos = endNanos;
    }

    static Balancing begin(Controller controller) {
        controller.event(Kind.BALANCE_BEGINS, "");
        return new Balancing(
                controller.nowNanos(),
                controller.nowNanos() + controller.engineBay().beginBalance());
    }

    @Override
    long untilNanos() {
        return endNanos;
    }

    @Override
    void elapsed(Controller controller) {
        OptionalInt flashes = controller.engineBay().endBalance();
        if (flashes.isEmpty()) {
            spoiled(controller);
            return;
        }
        controller.event(Kind.BALANCE_ENDS, "");
        Transmission sent = controller
                .encoder()
                .encode(
                        new Message.Balance(flashes.getAsInt()),
                        new Pacing(BEFORE_RESULT_NANOS, Sending.REST_NANOS, 1));
        controller.enter(Sending.begin(controller, sent, Segment.BALANCE, AwaitingBalance::new));
    }

    @Override
    void pedal(Controller controller, double share) {
        if (share > TOUCHED_SHARE) {
            controller.engineBay().dropBalance();
            spoiled(controller);
        }
    }

    private static void spoiled(Controller controller) {
        controller.event(Kind.BALANCE_SPOILED, "");
        controller.enter(new AwaitingBalance(controller.nowNanos()));
    }

    @Override
    void jumperOut(Controller controller) {
        controller.returnToIdle();
    }

    @Override
    void interrupted(Controller controller) {
        controller.engineBay().dropBalance();
    }
}
