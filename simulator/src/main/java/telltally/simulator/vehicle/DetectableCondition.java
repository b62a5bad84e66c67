package telltally.simulator.vehicle;

import java.util.List;
import telltally.simulator.vehicle.VoltageWindow.Comparison;

/**
 * Something a controller can tell from its pins, under a name that a code list can refer to.
 *
 * @param phases those in which the controller looks for it
 * @param checks all of them must hold
 */
public record DetectableCondition(String name, List<Phase> phases, List<Check> checks) {
    /** What the controller does with the circuit's output before it looks. */
    public enum Output {
        AS_IT_IS,
        OFF,
        ON
    }

    /** One look at one pin. */
    public record Check(String circuit, Output output, Comparison comparison, VoltageWindow window) {
        public boolean holds(Harness harness) {
            Harness prepared = output == Output.AS_IT_IS ? harness : harness.switched(circuit, output == Output.ON);
            return window.holds(comparison, prepared.pinVolts(circuit));
        }
    }

    public DetectableCondition {
        phases = List.copyOf(phases);
        checks = List.copyOf(checks);
        if (phases.isEmpty() || checks.isEmpty()) {
            throw new IllegalArgumentException(name + " would never be looked for");
        }
    }

    /** Whether the controller would see it now; phases are the caller's business. */
    public boolean holds(Harness harness) {
        return checks.stream().allMatch(check -> check.holds(harness));
    }
}
