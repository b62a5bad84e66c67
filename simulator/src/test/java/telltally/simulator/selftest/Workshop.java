package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.SentGroup;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;
import telltally.simulator.vehicle.Vehicle;

/** Sets up a bench for a test and works on it, instants in seconds. */
final class Workshop {
    static final long SECOND = 1_000_000_000L;
    static final FormatCatalog FORMATS = FormatCatalog.shipped();
    static final CodeListCatalog LISTS = CodeListCatalog.shipped();

    static final Fault OPEN_SIGNAL = new Fault.Open(Place.SIGNAL_WIRE);
    static final Fault GROUNDED_SIGNAL = new Fault.ShortToGround(Place.SIGNAL_WIRE);

    private Vehicle vehicle = UsualVehicle.of(4, Transmission.MANUAL);
    private Conditions conditions = Conditions.warm();
    private final List<FaultCase> faults = new ArrayList<>();
    private boolean visible = true;
    private String format = "pair-even";
    private String list = "plank";
    private boolean prompt;
    private long seed = 42;
    private Bench bench;

    static Workshop sound() {
        return new Workshop();
    }

    static FlashFormat formatCalled(String id) {
        return FORMATS.find(id).orElseThrow();
    }

    Workshop vehicle(int cylinders, Transmission transmission) {
        vehicle = UsualVehicle.of(cylinders, transmission);
        return this;
    }

    Workshop weak(int cylinder, double strength) {
        vehicle = vehicle.with(vehicle.cylinders().with(cylinder, new Cylinder(strength, Weakness.FUEL)));
        return this;
    }

    Workshop conditions(Conditions changed) {
        conditions = changed;
        return this;
    }

    Workshop fault(String circuit, Fault fault) {
        return fault(circuit, fault, new Presence.Hard());
    }

    Workshop fault(String circuit, Fault fault, Presence presence) {
        faults.add(new FaultCase(circuit, fault, presence));
        return this;
    }

    Workshop darkLamp() {
        visible = false;
        return this;
    }

    Workshop format(String formatId, String listId) {
        format = formatId;
        list = listId;
        return this;
    }

    Workshop prompting() {
        prompt = true;
        return this;
    }

    Workshop seed(long changed) {
        seed = changed;
        return this;
    }

    BenchSetup setup() {
        return new BenchSetup(
                vehicle,
                conditions,
                faults,
                visible,
                formatCalled(format),
                LISTS.find(list).orElseThrow(),
                prompt);
    }

    Bench bench() {
        if (bench == null) {
            bench = new Bench(setup(), Chance.of(seed));
        }
        return bench;
    }

    Workshop jumperIn(double at) {
        return act(new OperatorAct.JumperIn(nanos(at)));
    }

    Workshop jumperOut(double at) {
        return act(new OperatorAct.JumperOut(nanos(at)));
    }

    Workshop keyOn(double at) {
        return act(new OperatorAct.KeyOn(nanos(at)));
    }

    Workshop keyOff(double at) {
        return act(new OperatorAct.KeyOff(nanos(at)));
    }

    Workshop crank(double at) {
        return act(new OperatorAct.Crank(nanos(at)));
    }

    Workshop throttle(double at, double share) {
        return act(new OperatorAct.Throttle(nanos(at), share));
    }

    /** Presses and lets go half a second later. */
    Workshop press(double at, double share) {
        return throttle(at, share).throttle(at + 0.5, 0);
    }

    Workshop wiggle(double at, String connector, double seconds) {
        return act(new OperatorAct.Wiggle(nanos(at), connector, nanos(seconds)));
    }

    Workshop until(double at) {
        return act(new OperatorAct.Wait(nanos(at)));
    }

    Workshop act(OperatorAct act) {
        bench().act(act);
        return this;
    }

    static long nanos(double seconds) {
        return Math.round(seconds * SECOND);
    }

    /** Details of the events of one kind, in order. */
    List<String> details(Kind kind) {
        return events(kind).stream().map(BenchEvent::detail).toList();
    }

    List<BenchEvent> events(Kind kind) {
        return bench().events().stream().filter(event -> event.kind() == kind).toList();
    }

    double secondsOf(Kind kind) {
        return events(kind).get(0).atNanos() / 1e9;
    }

    List<SentGroup> groups(GroupKind kind) {
        return bench().groups().stream().filter(group -> group.kind() == kind).toList();
    }
}
