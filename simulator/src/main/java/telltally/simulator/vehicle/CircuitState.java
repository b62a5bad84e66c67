package telltally.simulator.vehicle;

import java.util.List;

/**
 * All that changes in a circuit while its make stays the same.
 *
 * @param switchedOn whether the controller drives the circuit's output; false where there is none
 */
public record CircuitState(Conditions conditions, List<Fault> faults, boolean switchedOn) {
    public CircuitState {
        faults = List.copyOf(faults);
    }

    boolean has(Fault fault) {
        return faults.contains(fault);
    }

    double driftKelvin() {
        return faults.stream()
                .mapToDouble(fault -> fault instanceof Fault.DriftedByKelvin drift ? drift.kelvin() : 0)
                .sum();
    }

    double driftShare() {
        return faults.stream()
                .mapToDouble(fault -> fault instanceof Fault.DriftedByShare drift ? drift.share() : 0)
                .sum();
    }
}
