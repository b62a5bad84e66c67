package telltally.simulator.selftest;

import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** A fault of one circuit, and when it is there. */
public record FaultCase(String circuit, Fault fault, Presence presence) {
    CircuitFault circuitFault() {
        return new CircuitFault(circuit, fault);
    }
}
