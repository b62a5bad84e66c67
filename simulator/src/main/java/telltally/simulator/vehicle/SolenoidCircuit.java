package telltally.simulator.vehicle;

import java.util.List;

/**
 * A coil fed from the fuse box and switched to ground by the controller, which reads the same pin back. Off, the pin
 * stands at battery voltage through the coil, or at 0 V when the coil has no feed; on, it lies near ground.
 *
 * @param senseOhms the resistor to ground through which the controller reads the pin
 * @param pullInAmpere the current from which the solenoid moves, and is heard to click
 */
public record SolenoidCircuit(
        String name, double coilOhms, double senseOhms, double pullInAmpere, Wire supply, Wire signal)
        implements Circuit {
    /** A transistor that is fully on. */
    private static final double DRIVER_OHMS = 0.3;

    public SolenoidCircuit {
        Circuit.requireOhms(coilOhms);
        Circuit.requireOhms(senseOhms);
        if (!(pullInAmpere > 0)) {
            throw new IllegalArgumentException(name + " would move at " + pullInAmpere + " A");
        }
        Circuit.require(supply, Place.SUPPLY_WIRE);
        Circuit.require(signal, Place.SIGNAL_WIRE);
    }

    @Override
    public List<Wire> wires() {
        return List.of(supply, signal);
    }

    @Override
    public Wire sensed() {
        return signal;
    }

    @Override
    public void connect(ResistorNetwork network, CircuitState state) {
        network.join(Node.BATTERY_POSITIVE, supply.far().deviceSide(), JOINT_OHMS);
        network.join(supply.inside(), signal.inside(), coilOhms);
        network.join(signal.far().deviceSide(), Node.GROUND, senseOhms);
        if (state.switchedOn() && !state.has(Fault.DeadOutput.DEAD_OUTPUT)) {
            network.join(signal.far().deviceSide(), Node.GROUND, DRIVER_OHMS);
        }
    }

    @Override
    public boolean admitsFunctional(Fault.Functional fault) {
        return fault == Fault.DeadOutput.DEAD_OUTPUT;
    }
}
