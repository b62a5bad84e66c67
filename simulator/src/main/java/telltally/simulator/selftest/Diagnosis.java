package telltally.simulator.selftest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.DetectableConditions;
import telltally.simulator.vehicle.Harness;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.Vehicle;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/**
 * What the controller sees in one vehicle under given conditions and faults. The circuits are solved once for each case
 * that is asked for, since sessions of one scenario ask for the same few over and over. Not for sharing between
 * threads.
 */
public final class Diagnosis {
    private record Case(List<CircuitFault> faults, Conditions conditions, Phase phase) {}

    private final Vehicle vehicle;
    private final Map<Case, List<String>> seen = new LinkedHashMap<>();
    private final Map<Case, List<String>> pulledIn = new LinkedHashMap<>();
    private final Map<Case, Boolean> awake = new LinkedHashMap<>();

    public Diagnosis(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** Names of the conditions that hold, as code lists refer to them. */
    List<String> conditions(List<CircuitFault> faults, Conditions conditions, Phase phase) {
        return seen.computeIfAbsent(
                new Case(faults, conditions, phase),
                each -> DetectableConditions.present(harness(faults, conditions), phase));
    }

    /** The outputs whose solenoids move when all are switched on. */
    List<String> movingSolenoids(List<CircuitFault> faults, Conditions conditions) {
        return pulledIn.computeIfAbsent(new Case(faults, conditions, Phase.ENGINE_OFF), each -> {
            Harness on = harness(faults, conditions).allSwitched(true);
            return vehicle.outputs().stream().filter(on::pulledIn).toList();
        });
    }

    /** Whether the controller has supply enough to work. */
    boolean awake(List<CircuitFault> faults, Conditions conditions) {
        return awake.computeIfAbsent(
                new Case(faults, conditions, Phase.ENGINE_OFF),
                each -> harness(faults, conditions).controllerAwake());
    }

    private Harness harness(List<CircuitFault> faults, Conditions conditions) {
        Vehicle faulty = vehicle;
        for (CircuitFault each : faults) {
            faulty = faulty.with(each.circuit(), each.fault());
        }
        return Harness.of(faulty, conditions);
    }
}
