package telltally.simulator.selftest;

import java.util.List;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Phase;

/**
 * All engine-off codes are out. The throttle to the floor switches every output on, and off again; a circuit that opens
 * while it is moved lights the lamp.
 */
final class OutputCheck extends Stage {
    /** How far the pedal has to go. Common practice, no source. */
    private static final double FLOOR_SHARE = 0.9;

    private boolean outputsOn;
    private List<String> pulledIn = List.of();

    OutputCheck(long sinceNanos) {
        super(sinceNanos);
    }

    @Override
    void throttle(Controller controller, double fromShare, double toShare) {
        if (fromShare < FLOOR_SHARE && toShare >= FLOOR_SHARE && controller.segmented()) {
            outputsOn = !outputsOn;
            controller.event(outputsOn ? Kind.OUTPUTS_ON : Kind.OUTPUTS_OFF, "");
            circuitsChanged(controller);
        }
    }

    /** Every solenoid that moves is heard, one that a loose connector drops too. */
    @Override
    void circuitsChanged(Controller controller) {
        List<String> now = outputsOn ? controller.senses().movingSolenoids() : List.of();
        for (String output : controller.setup().vehicle().outputs()) {
            if (now.contains(output) != pulledIn.contains(output)) {
                controller.event(now.contains(output) ? Kind.SOLENOID_CLICKS : Kind.SOLENOID_DROPS, output);
            }
        }
        pulledIn = now;
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.light(outputsOn || controller.senses().intermittent(Phase.ENGINE_OFF), untilNanos);
    }

    @Override
    void jumperOut(Controller controller) {
        controller.enter(new Waiting(controller.nowNanos()));
    }
}
