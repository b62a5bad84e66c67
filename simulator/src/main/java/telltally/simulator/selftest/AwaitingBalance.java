package telltally.simulator.selftest;

import telltally.simulator.vehicle.BalanceVerdict;
import telltally.simulator.vehicle.Phase;

/**
 * All running codes are out: a press of the throttle of about half, and its release, starts the balance test. With more
 * cylinders than flashes can tell there is none. A circuit that opens while it is moved lights the lamp.
 */
final class AwaitingBalance extends Stage {
    /** What "about half" may be, and what counts as let go. Common practice, no source. */
    private static final double HALF_FROM_SHARE = 0.25;

    private static final double HALF_TO_SHARE = 0.85;
    private static final double LET_GO_SHARE = 0.1;

    private boolean armed;
    private double furthestShare;

    AwaitingBalance(long sinceNanos) {
        super(sinceNanos);
    }

    @Override
    void throttle(Controller controller, double fromShare, double toShare) {
        // A pedal that was down when the codes ended has to come up before it can be pressed.
        armed |= fromShare <= LET_GO_SHARE;
        furthestShare = Math.max(furthestShare, toShare);
        if (toShare > LET_GO_SHARE) {
            return;
        }
        boolean half = armed && furthestShare >= HALF_FROM_SHARE && furthestShare <= HALF_TO_SHARE;
        furthestShare = 0;
        if (half && controller.setup().vehicle().cylinders().count() < BalanceVerdict.ALL_CONTRIBUTE_FLASHES) {
            controller.enter(Balancing.begin(controller));
        }
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.light(controller.senses().intermittent(Phase.ENGINE_RUNNING), untilNanos);
    }

    @Override
    void jumperOut(Controller controller) {
        controller.returnToIdle();
    }
}
