package telltally.simulator.vehicle;

import java.util.List;

/**
 * The controller's own feed: from the battery to its supply pin and back from its ground pin. The wires' part end is
 * the battery. Shorts are refused: one to ground blows the fuse, which is an open wire; one to the battery changes nothing.
 *
 * @param controllerOhms what the controller draws its current through
 */
public record SupplyCircuit(String name, double controllerOhms, Wire supply, Wire back) implements Circuit {
    public SupplyCircuit {
        Circuit.requireOhms(controllerOhms);
        Circuit.require(supply, Place.SUPPLY_WIRE);
        Circuit.require(back, Place.RETURN_WIRE);
    }

    @Override
    public List<Wire> wires() {
        return List.of(supply, back);
    }

    @Override
    public Wire sensed() {
        return supply;
    }

    @Override
    public Node judgedFrom() {
        return back.far().deviceSide();
    }

    @Override
    public void connect(ResistorNetwork network, CircuitState state) {
        network.join(Node.BATTERY_POSITIVE, supply.inside(), JOINT_OHMS);
        network.join(Node.GROUND, back.inside(), JOINT_OHMS);
        network.join(supply.far().deviceSide(), Node.CONTROLLER_SUPPLY, JOINT_OHMS);
        network.join(Node.CONTROLLER_SUPPLY, back.far().deviceSide(), controllerOhms);
    }

    @Override
    public boolean admits(Fault fault) {
        boolean shorted = fault instanceof Fault.ShortToGround || fault instanceof Fault.ShortToSupply;
        return !shorted && Circuit.super.admits(fault);
    }

    @Override
    public boolean admitsFunctional(Fault.Functional fault) {
        return false;
    }
}
