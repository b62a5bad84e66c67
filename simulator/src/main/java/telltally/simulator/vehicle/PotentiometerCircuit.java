package telltally.simulator.vehicle;

import java.util.List;

/**
 * A position sensor: a track between reference and return, and a wiper that follows the throttle. A resistor inside
 * the controller pulls the signal to ground, so that a broken wire reads 0 V and not anything.
 *
 * @param closedShare where on the track the wiper rests with the throttle closed, 0 at the return end
 * @param openShare where it rests with the throttle wide open
 */
public record PotentiometerCircuit(
        String name,
        double trackOhms,
        double closedShare,
        double openShare,
        double pullDownOhms,
        Wire reference,
        Wire signal,
        Wire back)
        implements Circuit {
    /** The wiper never quite reaches the end of the track. */
    private static final double END_SHARE = 0.001;

    public PotentiometerCircuit {
        Circuit.requireOhms(trackOhms);
        Circuit.requireOhms(pullDownOhms);
        if (!(closedShare > 0 && closedShare < openShare && openShare < 1)) {
            throw new IllegalArgumentException(
                    "the wiper must move up a track from 0 to 1: " + closedShare + " to " + openShare);
        }
        Circuit.require(reference, Place.REFERENCE_WIRE);
        Circuit.require(signal, Place.SIGNAL_WIRE);
        Circuit.require(back, Place.RETURN_WIRE);
    }

    @Override
    public List<Wire> wires() {
        return List.of(reference, signal, back);
    }

    @Override
    public Wire sensed() {
        return signal;
    }

    @Override
    public void connect(ResistorNetwork network, CircuitState state) {
        double wiper = wiperShare(state.conditions().throttleShare()) + state.driftShare();
        double lower = Math.max(END_SHARE, Math.min(1 - END_SHARE, wiper));
        network.join(back.inside(), signal.inside(), lower * trackOhms);
        network.join(signal.inside(), reference.inside(), (1 - lower) * trackOhms);
        network.join(Node.REFERENCE, reference.far().deviceSide(), JOINT_OHMS);
        network.join(signal.far().deviceSide(), Node.GROUND, pullDownOhms);
        network.join(back.far().deviceSide(), Node.GROUND, JOINT_OHMS);
    }

    private double wiperShare(double throttleShare) {
        return closedShare + throttleShare * (openShare - closedShare);
    }

    @Override
    public boolean admitsFunctional(Fault.Functional fault) {
        return fault instanceof Fault.DriftedByShare;
    }

    @Override
    public double seen(double volts) {
        return Math.min(volts, REFERENCE_VOLTS);
    }
}
