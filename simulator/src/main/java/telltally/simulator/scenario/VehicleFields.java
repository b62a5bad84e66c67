package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.selftest.FaultCase;
import telltally.simulator.selftest.Presence;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Circuit;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Cylinders;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;
import telltally.simulator.vehicle.Vehicle;

/** Reads the vehicle of a lesson, its conditions and its faults. */
final class VehicleFields {
    private static final long LONGEST_NANOS = 3_600_000_000_000L;
    private static final double GREATEST_OHMS = 1e7;
    private static final double GREATEST_DRIFT_KELVIN = 150;

    private VehicleFields() {}

    /** A vehicle whose circuits are all sound. */
    static Vehicle vehicle(Fields fields) {
        int count = fields.whole("cylinders", Cylinders.FEWEST, Cylinders.MOST);
        Transmission transmission = fields.choice("transmission", List.of(Transmission.values()), VehicleFields::word);
        Cylinders cylinders = Cylinders.sound(count);
        if (fields.has("firing_order")) {
            List<Integer> order = fields.numbers("firing_order", 1, count).stream()
                    .map(Double::intValue)
                    .toList();
            if (order.stream()
                    .sorted()
                    .toList()
                    .equals(cylinders.firingOrder().stream().sorted().toList())) {
                cylinders = new Cylinders(cylinders.byNumber(), order);
            } else {
                fields.problem("firing_order", "expected each cylinder from 1 to " + count + " once");
            }
        }
        for (Fields weak : fields.optionalObjects("weak")) {
            int number = weak.whole("cylinder", 1, count);
            double strength = weak.number("strength", 0, 0.99);
            Weakness cause = weak.choice(
                    "cause", List.of(Weakness.SPARK, Weakness.FUEL, Weakness.COMPRESSION), VehicleFields::word);
            weak.close();
            cylinders = cylinders.with(number, new Cylinder(strength, cause));
        }
        fields.close();
        return UsualVehicle.of(count, transmission).with(cylinders);
    }

    static Conditions conditions(Fields fields, Transmission transmission) {
        Conditions usual = Conditions.warm();
        Battery charged = Battery.charged();
        Battery battery = new Battery(
                fields.number("battery_v", 0, 16, charged.volts()),
                charged.internalOhms(),
                fields.flag("battery_disconnected", false));
        Gear gear =
                fields.has("gear") ? fields.choice("gear", List.of(Gear.values()), VehicleFields::word) : Gear.NEUTRAL;
        Conditions conditions = new Conditions(
                fields.number("coolant_c", -40, 130, usual.coolantCelsius()),
                fields.number("air_c", -40, 100, usual.airCelsius()),
                battery,
                gear,
                fields.flag("clutch_down", false),
                fields.flag("air_conditioning", false),
                fields.number("throttle", 0, 1, 0));
        if (!transmission.admits(conditions)) {
            fields.problem(
                    transmission == Transmission.MANUAL
                            ? "a manual gearbox has no park; expected gear \"neutral\" or \"engaged\""
                            : "an automatic gearbox has no clutch pedal to hold down");
        }
        fields.close();
        return conditions;
    }

    static List<FaultCase> faults(List<Fields> all, Vehicle vehicle) {
        List<FaultCase> faults = new ArrayList<>();
        for (Fields each : all) {
            fault(each, vehicle).ifPresent(faults::add);
            each.close();
        }
        return faults;
    }

    private static Optional<FaultCase> fault(Fields fields, Vehicle vehicle) {
        String name = fields.text("circuit");
        int before = fields.problems().count();
        Fault fault = kind(fields);
        Presence presence = presence(fields, vehicle);
        Optional<Circuit> circuit = vehicle.circuits().stream()
                .filter(each -> each.name().equals(name))
                .findFirst();
        if (circuit.isEmpty()) {
            fields.problem(
                    "circuit",
                    "no circuit is called " + Problem.quoted(name) + "; expected one of "
                            + String.join(
                                    ", ",
                                    vehicle.circuits().stream()
                                            .map(Circuit::name)
                                            .toList()));
            return Optional.empty();
        }
        if (fields.problems().count() > before) {
            return Optional.empty();
        }
        if (!circuit.get().admits(fault)) {
            fields.problem("fault", "the circuit " + name + " cannot have this fault at this place");
            return Optional.empty();
        }
        return Optional.of(new FaultCase(name, fault, presence));
    }

    /** The kinds of fault, by the words of a file. */
    private enum FaultWord {
        OPEN,
        SHORT_TO_GROUND,
        SHORT_TO_SUPPLY,
        HIGH_RESISTANCE,
        DRIFTED,
        STUCK_OPEN,
        STUCK_CLOSED,
        DEAD_OUTPUT
    }

    private static Fault kind(Fields fields) {
        FaultWord word = fields.choice("fault", List.of(FaultWord.values()), VehicleFields::word);
        Place place = fields.has("place") ? fields.choice("place", List.of(Place.values()), Place::label) : Place.PART;
        return switch (word) {
            case OPEN -> new Fault.Open(place);
            case SHORT_TO_GROUND -> new Fault.ShortToGround(place);
            case SHORT_TO_SUPPLY -> new Fault.ShortToSupply(place);
            case HIGH_RESISTANCE -> new Fault.HighResistance(place, fields.number("ohms", 0.1, GREATEST_OHMS));
            case DRIFTED ->
                fields.has("share")
                        ? new Fault.DriftedByShare(fields.number("share", -1, 1))
                        : new Fault.DriftedByKelvin(
                                fields.number("kelvin", -GREATEST_DRIFT_KELVIN, GREATEST_DRIFT_KELVIN));
            case STUCK_OPEN -> Fault.Stuck.OPEN;
            case STUCK_CLOSED -> Fault.Stuck.CLOSED;
            case DEAD_OUTPUT -> Fault.DeadOutput.DEAD_OUTPUT;
        };
    }

    /** When a fault is there, by the words of a file. */
    private enum PresenceWord {
        ALWAYS,
        REMEMBERED,
        WIGGLED,
        RECURRING
    }

    private static Presence presence(Fields fields, Vehicle vehicle) {
        PresenceWord word = fields.has("when")
                ? fields.choice("when", List.of(PresenceWord.values()), VehicleFields::word)
                : PresenceWord.ALWAYS;
        return switch (word) {
            case ALWAYS -> new Presence.Hard();
            case REMEMBERED -> new Presence.Remembered();
            case WIGGLED -> new Presence.Wiggled(connector(fields, vehicle), fields.flag("remembered", false));
            case RECURRING -> {
                long period = fields.nanos("period_s", 2, LONGEST_NANOS);
                long length = fields.nanos("length_s", 1, LONGEST_NANOS);
                if (length >= period) {
                    fields.problem("length_s", "is not shorter than \"period_s\"; the fault would never go");
                    yield new Presence.Hard();
                }
                yield new Presence.Recurring(period, length, fields.flag("remembered", true));
            }
        };
    }

    /** A connector that some circuit has. */
    static String connector(Fields fields, Vehicle vehicle) {
        String named = fields.text("connector");
        List<String> known = vehicle.circuits().stream()
                .flatMap(circuit -> circuit.wires().stream())
                .map(wire -> wire.part().connector())
                .distinct()
                .toList();
        if (!named.isBlank() && !known.contains(named)) {
            fields.problem(
                    "connector",
                    "no connector is called " + Problem.quoted(named) + "; expected one of "
                            + String.join(", ", known));
        }
        return named;
    }

    /** An enum constant as files write it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
