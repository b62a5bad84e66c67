package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** What the controller can tell from its pins at this instant: never a fault itself, only what it does to the volts. */
final class Senses {
    private final Diagnosis diagnosis;
    private final List<CircuitFault> lastingFaults;
    private List<CircuitFault> faults;
    private Conditions conditions;

    Senses(BenchSetup setup, Diagnosis diagnosis) {
        this.diagnosis = diagnosis;
        this.lastingFaults = setup.lastingFaults();
        this.faults = lastingFaults;
        this.conditions = setup.conditions();
    }

    Conditions conditions() {
        return conditions;
    }

    void conditions(Conditions now) {
        conditions = now;
    }

    void faults(List<CircuitFault> now) {
        faults = now;
    }

    /** Whether something can be told this instant that comes of a fault which is not always there. */
    boolean intermittent(Phase phase) {
        return !newConditions(phase).isEmpty();
    }

    /** Conditions that hold because of faults which are not always there. */
    List<String> newConditions(Phase phase) {
        if (faults.equals(lastingFaults)) {
            return List.of();
        }
        List<String> fresh = new ArrayList<>(conditions(phase));
        fresh.removeAll(diagnosis.conditions(lastingFaults, conditions, phase));
        return fresh;
    }

    /** Names of the conditions that hold, as code lists refer to them. */
    List<String> conditions(Phase phase) {
        return diagnosis.conditions(faults, conditions, phase);
    }

    /** Those that would hold in the same vehicle with sound circuits: they come of how the test is run. */
    List<String> conditionsIfSound(Phase phase) {
        return diagnosis.conditions(List.of(), conditions, phase);
    }

    /** The outputs whose solenoids move when all are switched on. */
    List<String> movingSolenoids() {
        return diagnosis.movingSolenoids(faults, conditions);
    }

    /** Where the throttle seems to be, 0 closed, 1 to the floor. */
    double throttleShare() {
        return diagnosis.throttleShare(faults, conditions);
    }

    /** Whether the controller has supply enough to work. */
    boolean awake() {
        return diagnosis.awake(faults, conditions);
    }
}
