package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.List;

/**
 * One reading that confirms a finding before a part is replaced: which connectors to take apart, where the probes go.
 *
 * @param name tells one measurement of a circuit from another, such as {@code part-ohms}
 * @param unplugged names of connectors to take apart first
 */
public record Measurement(String name, Quantity quantity, Node red, Node black, List<String> unplugged) {
    /** What the meter is set to. */
    public enum Quantity {
        /** Key on. */
        VOLTS {
            @Override
            double read(Harness harness, Node red, Node black) {
                return harness.meterVolts(red, black);
            }
        },
        /** Key off and the battery's lead off. */
        OHMS {
            @Override
            double read(Harness harness, Node red, Node black) {
                return harness.meterOhms(red, black);
            }
        };

        abstract double read(Harness harness, Node red, Node black);
    }

    public Measurement {
        unplugged = List.copyOf(unplugged);
    }

    /** In volts or ohms; infinite ohms are a meter over its range. */
    public double reading(Harness harness) {
        Harness prepared = harness;
        for (String connector : unplugged) {
            prepared = prepared.unplugged(connector);
        }
        return quantity.read(prepared, red, black);
    }

    /**
     * What one would measure at this circuit, in the order of the trade: volts before anything is taken apart, volts at
     * the open connector, ohms of the part, then each wire from end to end and against ground and battery. A switch is
     * to be measured in both of its positions: conditions move it, not the meter.
     */
    public static List<Measurement> confirming(Circuit circuit) {
        List<Measurement> all = new ArrayList<>();
        Node signal = circuit.sensed().part().harnessSide();
        all.add(new Measurement("volts-connected", Quantity.VOLTS, signal, Node.GROUND, List.of()));
        circuit.wires().forEach(wire -> addOpenConnector(all, wire));
        addPart(all, circuit);
        circuit.wires().forEach(wire -> addWire(all, wire));
        return List.copyOf(all);
    }

    private static void addOpenConnector(List<Measurement> all, Wire wire) {
        if (wire.place() != Place.RETURN_WIRE) {
            all.add(new Measurement(
                    wire.place().label() + "-volts-unplugged",
                    Quantity.VOLTS,
                    wire.part().harnessSide(),
                    Node.GROUND,
                    List.of(wire.part().connector())));
        }
    }

    /** Ohms have no meaning across a battery, so there it is volts. */
    private static void addPart(List<Measurement> all, Circuit circuit) {
        Terminal start = circuit.sensed().part();
        List<String> apart = List.of(start.connector());
        boolean battery = circuit instanceof SupplyCircuit;
        String name = battery ? "part-volts" : "part-ohms";
        Quantity quantity = battery ? Quantity.VOLTS : Quantity.OHMS;
        for (Wire wire : circuit.wires()) {
            if (!wire.equals(circuit.sensed())) {
                String which = circuit.wires().size() == 2
                        ? name
                        : name + "-to-" + wire.place().label();
                all.add(new Measurement(
                        which, quantity, start.deviceSide(), wire.part().deviceSide(), apart));
            }
        }
        if (!battery) {
            all.add(new Measurement("part-to-ground-ohms", quantity, start.deviceSide(), Node.GROUND, apart));
            all.add(new Measurement(
                    "part-to-battery-ohms", quantity, start.deviceSide(), Node.BATTERY_POSITIVE, apart));
        }
    }

    private static void addWire(List<Measurement> all, Wire wire) {
        List<String> apart = List.of(wire.far().connector(), wire.part().connector());
        Node near = wire.part().harnessSide();
        String label = wire.place().label();
        all.add(new Measurement(label + "-ohms", Quantity.OHMS, wire.far().harnessSide(), near, apart));
        all.add(new Measurement(label + "-to-ground-ohms", Quantity.OHMS, near, Node.GROUND, apart));
        all.add(new Measurement(label + "-to-battery-ohms", Quantity.OHMS, near, Node.BATTERY_POSITIVE, apart));
    }
}
