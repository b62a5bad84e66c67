package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One vehicle and what is wrong with it. Conditions, and what the controller switches, come to it from outside. */
public record Vehicle(
        Cylinders cylinders,
        EngineMake engine,
        Transmission transmission,
        List<Circuit> circuits,
        List<CircuitFault> faults) {
    /** A fault and the name of the circuit that has it. */
    public record CircuitFault(String circuit, Fault fault) {}

    public Vehicle {
        circuits = List.copyOf(circuits);
        faults = List.copyOf(faults);
        requireCircuits(circuits);
        for (CircuitFault told : faults) {
            if (!circuit(circuits, told.circuit).admits(told.fault)) {
                throw new IllegalArgumentException(told.circuit + " cannot have the fault " + told.fault);
            }
        }
    }

    private static void requireCircuits(List<Circuit> circuits) {
        Set<String> names = new LinkedHashSet<>();
        for (Circuit circuit : circuits) {
            if (!names.add(circuit.name())) {
                throw new IllegalArgumentException("two circuits are called " + circuit.name());
            }
        }
        long supplies =
                circuits.stream().filter(SupplyCircuit.class::isInstance).count();
        if (supplies != 1) {
            throw new IllegalArgumentException("a vehicle has one supply circuit, not " + supplies);
        }
    }

    /** @throws IllegalArgumentException if there is no such circuit */
    public Circuit circuit(String name) {
        return circuit(circuits, name);
    }

    private static Circuit circuit(List<Circuit> circuits, String name) {
        return circuits.stream()
                .filter(circuit -> circuit.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no circuit is called " + name + ", there are "
                        + circuits.stream().map(Circuit::name).toList()));
    }

    /** The names of all circuits with an output that the controller can switch, in their order. */
    public List<String> outputs() {
        return circuits.stream()
                .filter(SolenoidCircuit.class::isInstance)
                .map(Circuit::name)
                .toList();
    }

    public List<Fault> faultsOf(String circuit) {
        return faults.stream()
                .filter(told -> told.circuit.equals(circuit))
                .map(CircuitFault::fault)
                .toList();
    }

    public Vehicle with(String circuit, Fault fault) {
        List<CircuitFault> more = new ArrayList<>(faults);
        more.add(new CircuitFault(circuit, fault));
        return new Vehicle(cylinders, engine, transmission, circuits, more);
    }

    public Vehicle with(Cylinders changed) {
        return new Vehicle(changed, engine, transmission, circuits, faults);
    }

    /** The same vehicle with all its circuits sound: what a meter should have read. */
    public Vehicle withSoundCircuits() {
        return new Vehicle(cylinders, engine, transmission, circuits, List.of());
    }

    /** What the crankshaft has to turn besides the engine itself. */
    public double loadNewtonMetres(Conditions conditions) {
        double compressor = conditions.airConditioningOn() ? engine.compressorNewtonMetres() : 0;
        return compressor + transmission.loadNewtonMetres(conditions);
    }
}
