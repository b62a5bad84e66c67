package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.vehicle.SwitchCircuit.Contact;
import telltally.simulator.vehicle.SwitchCircuit.Feed;
import telltally.simulator.vehicle.ThermistorCircuit.Medium;

/** An invented vehicle with the circuits most lessons need. Its resistances are typical, from memory. */
public final class UsualVehicle {
    private static final String CONTROLLER = "controller";
    private static final String FUSE_BOX = "fuse-box";
    private static final String BODY = "body-ground";

    private final List<Circuit> circuits = new ArrayList<>();
    private int controllerPin;
    private int fuse;
    private int stud;

    private UsualVehicle() {}

    /** All sound: every cylinder, every circuit. */
    public static Vehicle of(int cylinders, Transmission transmission) {
        UsualVehicle usual = new UsualVehicle();
        usual.addSupply();
        usual.addSensors();
        usual.addSwitches(transmission);
        usual.addSolenoids(transmission);
        return new Vehicle(
                Cylinders.sound(cylinders), EngineMake.usual(cylinders), transmission, usual.circuits, List.of());
    }

    private void addSupply() {
        Wire supply = new Wire(Place.SUPPLY_WIRE, controller(), new Terminal("battery-lead", "1"));
        Wire back = new Wire(Place.RETURN_WIRE, controller(), new Terminal("battery-lead", "2"));
        circuits.add(new SupplyCircuit("supply", 15, supply, back));
    }

    private void addSensors() {
        addThermistor("coolant", Medium.COOLANT);
        addThermistor("air", Medium.AIR);
        Wire reference = new Wire(Place.REFERENCE_WIRE, controller(), new Terminal("throttle-sensor", "1"));
        Wire signal = new Wire(Place.SIGNAL_WIRE, controller(), new Terminal("throttle-sensor", "2"));
        Wire back = new Wire(Place.RETURN_WIRE, controller(), new Terminal("throttle-sensor", "3"));
        circuits.add(new PotentiometerCircuit("throttle", 4_000, 0.18, 0.92, 220_000, reference, signal, back));
    }

    private void addThermistor(String name, Medium medium) {
        Wire signal = new Wire(Place.SIGNAL_WIRE, controller(), new Terminal(name + "-sensor", "1"));
        Wire back = new Wire(Place.RETURN_WIRE, controller(), new Terminal(name + "-sensor", "2"));
        circuits.add(new ThermistorCircuit(name, medium, Thermistor.TEN_KILOHM, 10_000, signal, back));
    }

    private void addSwitches(Transmission transmission) {
        addGroundSwitch("neutral-switch", Contact.NEUTRAL);
        if (transmission == Transmission.MANUAL) {
            addGroundSwitch("clutch-switch", Contact.CLUTCH);
        }
        Wire signal = new Wire(Place.SIGNAL_WIRE, controller(), new Terminal("air-conditioning-switch", "1"));
        Wire feed = new Wire(Place.SUPPLY_WIRE, fuse(), new Terminal("air-conditioning-switch", "2"));
        circuits.add(
                new SwitchCircuit("air-conditioning", Contact.AIR_CONDITIONING, Feed.BATTERY, 10_000, signal, feed));
    }

    private void addGroundSwitch(String name, Contact contact) {
        Wire signal = new Wire(Place.SIGNAL_WIRE, controller(), new Terminal(name, "1"));
        Wire ground = new Wire(Place.RETURN_WIRE, new Terminal(BODY, "" + ++stud), new Terminal(name, "2"));
        circuits.add(new SwitchCircuit(name, contact, Feed.GROUND, 1_000, signal, ground));
    }

    private void addSolenoids(Transmission transmission) {
        addSolenoid("recirculation-solenoid", 35);
        addSolenoid("purge-solenoid", 45);
        addSolenoid("air-diverter-solenoid", 60);
        addSolenoid("idle-air-solenoid", 10);
        if (transmission == Transmission.AUTOMATIC) {
            addSolenoid("lock-up-solenoid", 25);
        }
    }

    /** A solenoid that moves from a little over half its current at 12 V. */
    private void addSolenoid(String name, double coilOhms) {
        Wire supply = new Wire(Place.SUPPLY_WIRE, fuse(), new Terminal(name, "1"));
        Wire signal = new Wire(Place.SIGNAL_WIRE, controller(), new Terminal(name, "2"));
        circuits.add(new SolenoidCircuit(name, coilOhms, 47_000, 7 / coilOhms, supply, signal));
    }

    private Terminal controller() {
        return new Terminal(CONTROLLER, "" + ++controllerPin);
    }

    private Terminal fuse() {
        return new Terminal(FUSE_BOX, "" + ++fuse);
    }
}
