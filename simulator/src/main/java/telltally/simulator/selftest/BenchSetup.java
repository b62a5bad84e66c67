package telltally.simulator.selftest;

import java.util.List;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Vehicle;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/**
 * Everything that stands on the bench before the operator touches it.
 *
 * @param vehicle without the faults of circuits; those come by case
 * @param conditions at the start
 * @param lampVisible whether whoever watches sees the output at all; false where the dash lamp is dead and nothing else
 *     was connected
 * @param asksForThrottle whether the running test prompts for a short press of the throttle
 */
public record BenchSetup(
        Vehicle vehicle,
        Conditions conditions,
        List<FaultCase> faults,
        boolean lampVisible,
        FlashFormat format,
        CodeList codeList,
        boolean asksForThrottle) {
    public BenchSetup {
        faults = List.copyOf(faults);
        for (FaultCase each : faults) {
            if (!vehicle.circuit(each.circuit()).admits(each.fault())) {
                throw new IllegalArgumentException(each.circuit() + " cannot have the fault " + each.fault());
            }
        }
        boolean segmented = format.sessions().isPresent();
        if (segmented && vehicle.cylinders().count() % 2 != 0) {
            throw new IllegalArgumentException(
                    vehicle.cylinders().count() + " cylinders have no whole half to open the running test with");
        }
    }

    /** The faults that are there at every instant. */
    List<CircuitFault> lastingFaults() {
        return faults.stream()
                .filter(each -> each.presence() instanceof Presence.Hard)
                .map(FaultCase::circuitFault)
                .toList();
    }
}
