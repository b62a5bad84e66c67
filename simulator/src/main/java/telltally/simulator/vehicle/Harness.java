package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A vehicle's wiring at one moment with the key on: its conditions, the outputs that are switched on and the connectors
 * that are apart. Immutable; each change gives another. All circuits are solved as one network, so a short that pulls
 * the sensors' reference down is seen at every sensor.
 */
public final class Harness {
    /** Below this a 12 V controller is not promised to work: ISO 16750-2:2010 table 1, code A. */
    public static final double AWAKE_FROM_VOLTS = 6;

    /** A digital meter's own resistance, and where its ohms end. Common practice, no source. */
    private static final double METER_OHMS = 10e6;

    private static final double METER_RANGE_OHMS = 40e6;

    private static final Node CELLS = new Node("battery:cells");
    private static final Node REGULATOR = new Node("controller:regulator");

    /** What the reference needs above itself, and how stiff it is; typical figures, from memory. */
    private static final double REGULATOR_DROP_VOLTS = 0.5;

    private static final double REGULATOR_OHMS = 0.5;

    private final Vehicle vehicle;
    private final Conditions conditions;
    private final Set<String> unplugged;
    private final Set<String> switchedOn;
    private @Nullable Map<Node, Double> solved;

    private Harness(Vehicle vehicle, Conditions conditions, Set<String> unplugged, Set<String> switchedOn) {
        this.vehicle = vehicle;
        this.conditions = conditions;
        this.unplugged = unplugged;
        this.switchedOn = switchedOn;
    }

    /**
     * All connectors together, all outputs off.
     *
     * @throws IllegalArgumentException if the transmission cannot be in these conditions
     */
    public static Harness of(Vehicle vehicle, Conditions conditions) {
        if (!vehicle.transmission().admits(conditions)) {
            throw new IllegalArgumentException(
                    "no " + vehicle.transmission() + " vehicle stands like this: " + conditions);
        }
        return new Harness(vehicle, conditions, Set.of(), Set.of());
    }

    public Vehicle vehicle() {
        return vehicle;
    }

    public Conditions conditions() {
        return conditions;
    }

    /** The same moment in the same vehicle with sound circuits. */
    public Harness sound() {
        return new Harness(vehicle.withSoundCircuits(), conditions, unplugged, switchedOn);
    }

    /** @throws IllegalArgumentException if no circuit has such a connector */
    public Harness unplugged(String connector) {
        boolean known = vehicle.circuits().stream()
                .flatMap(circuit -> circuit.wires().stream())
                .anyMatch(wire -> wire.far().connector().equals(connector)
                        || wire.part().connector().equals(connector));
        if (!known) {
            throw new IllegalArgumentException("no connector is called " + connector);
        }
        Set<String> more = new LinkedHashSet<>(unplugged);
        more.add(connector);
        return new Harness(vehicle, conditions, more, switchedOn);
    }

    /** @throws IllegalArgumentException if the circuit has no output */
    public Harness switched(String output, boolean on) {
        if (!(vehicle.circuit(output) instanceof SolenoidCircuit)) {
            throw new IllegalArgumentException(output + " has nothing to switch");
        }
        Set<String> changed = new LinkedHashSet<>(switchedOn);
        if (on) {
            changed.add(output);
        } else {
            changed.remove(output);
        }
        return new Harness(vehicle, conditions, unplugged, changed);
    }

    public Harness allSwitched(boolean on) {
        return new Harness(vehicle, conditions, unplugged, on ? new LinkedHashSet<>(vehicle.outputs()) : Set.of());
    }

    /** What the controller measures at the pin of this circuit. */
    public double pinVolts(String circuit) {
        Circuit judged = vehicle.circuit(circuit);
        return judged.seen(volts(judged.sensed().far().deviceSide(), judged.judgedFrom()));
    }

    /** Whether the controller has supply enough to do anything at all. */
    public boolean controllerAwake() {
        return supplyVolts(volts()) >= AWAKE_FROM_VOLTS;
    }

    /** Whether the coil's current holds the solenoid: when this turns true, it clicks. */
    public boolean pulledIn(String output) {
        if (vehicle.circuit(output) instanceof SolenoidCircuit coil) {
            double volts = volts(coil.supply().inside(), coil.signal().inside());
            return Math.abs(volts) / coil.coilOhms() >= coil.pullInAmpere();
        }
        throw new IllegalArgumentException(output + " is no solenoid");
    }

    /** What a meter shows between two points with the key on. The meter's own resistance is part of the answer. */
    public double meterVolts(Node red, Node black) {
        require(red);
        require(black);
        Map<Node, Double> volts = solve(true, METER_OHMS, red, black);
        return between(volts, red, black);
    }

    /**
     * What a meter shows between two points with the battery's lead off. Connectors that are together leave other ways
     * around; unplug first. Infinite when the meter shows that it is over its range.
     */
    public double meterOhms(Node red, Node black) {
        double ohms = network(false, false).ohms(red, black);
        return ohms > METER_RANGE_OHMS ? Double.POSITIVE_INFINITY : ohms;
    }

    private double volts(Node red, Node black) {
        return between(volts(), red, black);
    }

    private Map<Node, Double> volts() {
        if (solved == null) {
            solved = solve(true, Double.POSITIVE_INFINITY, Node.BATTERY_POSITIVE, Node.GROUND);
        }
        return solved;
    }

    /** The reference sinks with the supply, and a controller without supply switches nothing: then once more. */
    private Map<Node, Double> solve(boolean powered, double meterOhms, Node red, Node black) {
        ResistorNetwork network = network(powered, true);
        network.join(red, black, meterOhms);
        Map<Node, Double> first = network.volts(sources(Circuit.REFERENCE_VOLTS));
        double supply = supplyVolts(first);
        double reference = Math.max(0, Math.min(Circuit.REFERENCE_VOLTS, supply - REGULATOR_DROP_VOLTS));
        if (reference == Circuit.REFERENCE_VOLTS) {
            return first;
        }
        ResistorNetwork again = network(powered, supply >= AWAKE_FROM_VOLTS);
        again.join(red, black, meterOhms);
        return again.volts(sources(reference));
    }

    private Map<Node, Double> sources(double referenceVolts) {
        Map<Node, Double> sources = new LinkedHashMap<>();
        sources.put(Node.GROUND, 0.0);
        sources.put(CELLS, conditions.battery().volts());
        sources.put(REGULATOR, referenceVolts);
        return sources;
    }

    private double supplyVolts(Map<Node, Double> volts) {
        Circuit supply = vehicle.circuits().stream()
                .filter(SupplyCircuit.class::isInstance)
                .findFirst()
                .orElseThrow();
        return between(volts, Node.CONTROLLER_SUPPLY, supply.judgedFrom());
    }

    private ResistorNetwork network(boolean powered, boolean awake) {
        ResistorNetwork network = new ResistorNetwork();
        if (powered) {
            network.join(CELLS, Node.BATTERY_POSITIVE, conditions.battery().internalOhms());
            network.join(REGULATOR, Node.REFERENCE, REGULATOR_OHMS);
        }
        for (Circuit circuit : vehicle.circuits()) {
            List<Fault> faults = vehicle.faultsOf(circuit.name());
            for (Wire wire : circuit.wires()) {
                wire.lay(network, atWire(circuit, wire, faults), unplugged);
            }
            boolean on = awake && switchedOn.contains(circuit.name());
            circuit.connect(network, new CircuitState(conditions, faults, on));
        }
        return network;
    }

    private static List<Fault.Electrical> atWire(Circuit circuit, Wire wire, List<Fault> faults) {
        List<Fault.Electrical> here = new ArrayList<>();
        for (Fault fault : faults) {
            if (fault instanceof Fault.Electrical electrical) {
                boolean onLead = electrical.place() == Place.PART && wire.equals(circuit.sensed());
                if (onLead || electrical.place() == wire.place()) {
                    here.add(electrical);
                }
            }
        }
        return here;
    }

    private void require(Node node) {
        if (!volts().containsKey(node)) {
            throw new IllegalArgumentException("nothing here is called " + node.name());
        }
    }

    private static double between(Map<Node, Double> volts, Node red, Node black) {
        return volts.getOrDefault(red, 0.0) - volts.getOrDefault(black, 0.0);
    }
}
