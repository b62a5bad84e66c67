package telltally.simulator.selftest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.vehicle.Circuit;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.DetectableConditions;
import telltally.simulator.vehicle.Harness;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.PotentiometerCircuit;
import telltally.simulator.vehicle.Vehicle;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/**
 * What the controller sees in one vehicle under given conditions and faults. The circuits are solved once for each case
 * that is asked for, since sessions of one scenario ask for the same few over and over; cases of long ago are forgotten.
 * Not for sharing between threads.
 */
public final class Diagnosis {
    private static final int CASES_KEPT = 500;

    private record Case(List<CircuitFault> faults, Conditions conditions) {}

    /** All that is asked of one case, worked out at the first asking. */
    private record Answers(
            boolean awake, double throttleShare, List<String> engineOff, List<String> running, List<String> moving) {}

    private final Vehicle vehicle;
    private final Map<Case, Answers> known = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Case, Answers> eldest) {
            return size() > CASES_KEPT;
        }
    };

    public Diagnosis(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** Names of the conditions that hold, as code lists refer to them. */
    List<String> conditions(List<CircuitFault> faults, Conditions conditions, Phase phase) {
        Answers answers = answers(faults, conditions);
        return phase == Phase.ENGINE_OFF ? answers.engineOff : answers.running;
    }

    /** The outputs whose solenoids move when all are switched on. */
    List<String> movingSolenoids(List<CircuitFault> faults, Conditions conditions) {
        return answers(faults, conditions).moving;
    }

    /** Whether the controller has supply enough to work. */
    boolean awake(List<CircuitFault> faults, Conditions conditions) {
        return answers(faults, conditions).awake;
    }

    /** Where the sensor says the throttle is, 0 closed, 1 to the floor; where it is, in a vehicle without a sensor. */
    double throttleShare(List<CircuitFault> faults, Conditions conditions) {
        return answers(faults, conditions).throttleShare;
    }

    private Answers answers(List<CircuitFault> faults, Conditions conditions) {
        return known.computeIfAbsent(new Case(faults, conditions), this::workOut);
    }

    private Answers workOut(Case asked) {
        Vehicle faulty = vehicle;
        for (CircuitFault each : asked.faults) {
            faulty = faulty.with(each.circuit(), each.fault());
        }
        Harness harness = Harness.of(faulty, asked.conditions);
        Harness on = harness.allSwitched(true);
        return new Answers(
                harness.controllerAwake(),
                throttleShare(harness),
                DetectableConditions.present(harness, Phase.ENGINE_OFF),
                DetectableConditions.present(harness, Phase.ENGINE_RUNNING),
                vehicle.outputs().stream().filter(on::pulledIn).toList());
    }

    private double throttleShare(Harness harness) {
        for (Circuit circuit : vehicle.circuits()) {
            if (circuit instanceof PotentiometerCircuit sensor) {
                double track = harness.pinVolts(sensor.name()) / Circuit.REFERENCE_VOLTS;
                double share = (track - sensor.closedShare()) / (sensor.openShare() - sensor.closedShare());
                return Math.max(0, Math.min(1, share));
            }
        }
        return harness.conditions().throttleShare();
    }
}
