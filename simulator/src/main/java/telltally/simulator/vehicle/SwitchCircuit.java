package telltally.simulator.vehicle;

import java.util.List;

/**
 * A contact that joins the controller's pin to ground or to the battery. Inside the controller a resistor draws the pin
 * the other way, so that an open contact and a broken wire look the same.
 *
 * @param biasOhms that resistor: up to the controller's supply for a contact to ground, down for one to the battery
 * @param other from the contact to the body, or from the fuse box to the contact
 */
public record SwitchCircuit(String name, Contact contact, Feed feed, double biasOhms, Wire signal, Wire other)
        implements Circuit {
    private static final double CONTACT_OHMS = 0.05;

    /** What closes a contact. */
    public enum Contact {
        /** Closed in neutral and in park. */
        NEUTRAL {
            @Override
            boolean closed(Conditions conditions) {
                return conditions.gear() != Gear.ENGAGED;
            }
        },
        /** Closed with the clutch pedal down. */
        CLUTCH {
            @Override
            boolean closed(Conditions conditions) {
                return conditions.clutchDown();
            }
        },
        /** Closed with the air conditioning on. */
        AIR_CONDITIONING {
            @Override
            boolean closed(Conditions conditions) {
                return conditions.airConditioningOn();
            }
        };

        abstract boolean closed(Conditions conditions);
    }

    /** What the closed contact joins the pin to. */
    public enum Feed {
        GROUND,
        BATTERY
    }

    public SwitchCircuit {
        Circuit.requireOhms(biasOhms);
        Circuit.require(signal, Place.SIGNAL_WIRE);
        Circuit.require(other, feed == Feed.GROUND ? Place.RETURN_WIRE : Place.SUPPLY_WIRE);
    }

    @Override
    public List<Wire> wires() {
        return List.of(signal, other);
    }

    @Override
    public Wire sensed() {
        return signal;
    }

    @Override
    public void connect(ResistorNetwork network, CircuitState state) {
        if (closed(state)) {
            network.join(signal.inside(), other.inside(), CONTACT_OHMS);
        }
        boolean toGround = feed == Feed.GROUND;
        network.join(signal.far().deviceSide(), toGround ? Node.CONTROLLER_SUPPLY : Node.GROUND, biasOhms);
        network.join(other.far().deviceSide(), toGround ? Node.GROUND : Node.BATTERY_POSITIVE, JOINT_OHMS);
    }

    private boolean closed(CircuitState state) {
        if (state.has(Fault.Stuck.OPEN)) {
            return false;
        }
        return state.has(Fault.Stuck.CLOSED) || contact.closed(state.conditions());
    }

    @Override
    public boolean admitsFunctional(Fault.Functional fault) {
        return fault instanceof Fault.Stuck;
    }
}
