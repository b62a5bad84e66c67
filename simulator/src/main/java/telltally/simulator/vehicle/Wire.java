package telltally.simulator.vehicle;

import java.util.List;
import java.util.Set;

/**
 * A wire from a far terminal (controller, fuse box, body) to a terminal of the part, with the contact at either end
 * and the lead inside the part.
 *
 * @param place which of the circuit's wires this is
 */
public record Wire(Place place, Terminal far, Terminal part) {
    /** Sound wires, contacts and leads, and a thorough short: common practice, no source. */
    private static final double WIRE_OHMS = 0.1;

    private static final double CONTACT_OHMS = 0.01;
    private static final double LEAD_OHMS = 0.01;
    private static final double SHORT_OHMS = 0.2;

    public Wire {
        if (place == Place.PART) {
            throw new IllegalArgumentException("a wire is not the part: " + far + " to " + part);
        }
    }

    /** Where the wire's current enters what the part is made of; no probe reaches it. */
    public Node inside() {
        return new Node(part + " inside the part");
    }

    /**
     * @param faults those at this wire and, if the part's faults sit on its lead, those at the part
     * @param unplugged names of connectors that are apart
     */
    void lay(ResistorNetwork network, List<Fault.Electrical> faults, Set<String> unplugged) {
        contact(network, far, unplugged);
        contact(network, part, unplugged);
        double wireOhms = WIRE_OHMS;
        double leadOhms = LEAD_OHMS;
        for (Fault.Electrical fault : faults) {
            boolean inPart = fault.place() == Place.PART;
            if (inPart) {
                leadOhms = fault.seriesOhms(leadOhms);
            } else {
                wireOhms = fault.seriesOhms(wireOhms);
            }
            Node touched = inPart ? inside() : part.harnessSide();
            fault.bridgedTo().ifPresent(node -> network.join(touched, node, SHORT_OHMS));
        }
        network.join(far.harnessSide(), part.harnessSide(), wireOhms);
        network.join(part.deviceSide(), inside(), leadOhms);
    }

    private static void contact(ResistorNetwork network, Terminal terminal, Set<String> unplugged) {
        boolean apart = unplugged.contains(terminal.connector());
        network.join(terminal.harnessSide(), terminal.deviceSide(), apart ? Double.POSITIVE_INFINITY : CONTACT_OHMS);
    }
}
