package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.selftest.FaultCase;
import telltally.simulator.selftest.Presence;
import telltally.simulator.vehicle.Circuit;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Vehicle;

/** Reads what is wrong with the circuits of a vehicle, and when. */
final class FaultFields {
    private static final long SHORTEST_NANOS = 100_000_000L;
    private static final long LONGEST_NANOS = 3_600_000_000_000L;
    private static final double GREATEST_OHMS = 1e7;
    private static final double GREATEST_DRIFT_KELVIN = 150;

    private FaultFields() {}

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
        if (circuit.isEmpty() && !name.isBlank()) {
            fields.problem(
                    "circuit", "no circuit is called " + Problem.quoted(name) + "; expected one of " + names(vehicle));
        }
        if (circuit.isEmpty() || fields.problems().count() > before) {
            return Optional.empty();
        }
        if (!circuit.get().admits(fault)) {
            fields.problem("fault", "the circuit " + name + " cannot have this fault at this place");
            return Optional.empty();
        }
        return Optional.of(new FaultCase(name, fault, presence));
    }

    private static String names(Vehicle vehicle) {
        return String.join(", ", vehicle.circuits().stream().map(Circuit::name).toList());
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
        Place place = fields.choice("place", List.of(Place.values()), Place::label, Place.PART);
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
        PresenceWord word =
                fields.choice("when", List.of(PresenceWord.values()), VehicleFields::word, PresenceWord.ALWAYS);
        return switch (word) {
            case ALWAYS -> new Presence.Hard();
            case REMEMBERED -> new Presence.Remembered();
            case WIGGLED -> new Presence.Wiggled(connector(fields, vehicle), fields.flag("remembered", false));
            case RECURRING -> {
                long period = fields.nanos("period_s", 2 * SHORTEST_NANOS, LONGEST_NANOS);
                long length = fields.nanos("length_s", SHORTEST_NANOS, LONGEST_NANOS);
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
}
