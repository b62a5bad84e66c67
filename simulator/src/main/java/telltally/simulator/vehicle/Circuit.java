package telltally.simulator.vehicle;

import java.util.List;

/** A part, its wires, and what the controller has at the other end of them. */
public sealed interface Circuit
        permits ThermistorCircuit, PotentiometerCircuit, SwitchCircuit, SolenoidCircuit, SupplyCircuit {
    /** What the controller feeds its sensors with, volts. Common practice, no source. */
    double REFERENCE_VOLTS = 5.0;

    /** A joint inside a device, ohms. */
    double JOINT_OHMS = 0.01;

    String name();

    List<Wire> wires();

    /** Where the controller's own zero is when it judges this circuit's volts. */
    default Node judgedFrom() {
        return Node.GROUND;
    }

    /** The wire whose volts, at its far end, the controller judges. Faults of the part sit on its lead. */
    Wire sensed();

    /** Joins what is inside the part and inside the controller; the wires between are laid by the harness. */
    void connect(ResistorNetwork network, CircuitState state);

    boolean admitsFunctional(Fault.Functional fault);

    /** Whether this circuit can have this fault: it has the place, or it is the kind of part that can fail so. */
    default boolean admits(Fault fault) {
        if (fault instanceof Fault.Electrical electrical) {
            return electrical.place() == Place.PART
                    || wires().stream().anyMatch(wire -> wire.place() == electrical.place());
        }
        return fault instanceof Fault.Functional functional && admitsFunctional(functional);
    }

    /** What the controller makes of these volts at its pin; a sensor's input cannot see beyond its reference. */
    default double seen(double volts) {
        return volts;
    }

    /**
     * @throws IllegalArgumentException if the circuit has no such wire
     */
    default Wire wire(Place place) {
        return wires().stream()
                .filter(wire -> wire.place() == place)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name() + " has no " + place));
    }

    /** @throws IllegalArgumentException if the wire is another of the circuit's wires than the one expected here */
    static void require(Wire wire, Place place) {
        if (wire.place() != place) {
            throw new IllegalArgumentException("a " + wire.place() + " where a " + place + " belongs: " + wire);
        }
    }

    /** @throws IllegalArgumentException if the resistance is not a positive number */
    static void requireOhms(double ohms) {
        if (!(ohms > 0 && Double.isFinite(ohms))) {
            throw new IllegalArgumentException("a resistance of " + ohms + " ohms");
        }
    }
}
