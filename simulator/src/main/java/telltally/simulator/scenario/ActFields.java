package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.document.Fields;
import telltally.simulator.selftest.OperatorAct;
import telltally.simulator.signal.Seconds;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Vehicle;

/** Reads what the operator does, in the order of time. */
final class ActFields {
    private static final long LONGEST_NANOS = 3_600_000_000_000L;
    private static final double HALF = 0.5;

    private ActFields() {}

    private enum ActWord {
        JUMPER_IN,
        JUMPER_OUT,
        KEY_ON,
        KEY_OFF,
        CRANK,
        THROTTLE,
        CLUTCH,
        GEAR,
        AIR_CONDITIONING,
        WIGGLE,
        BATTERY_OFF,
        WAIT
    }

    private enum ThrottleWord {
        CLOSED,
        HALF,
        FLOOR
    }

    static List<OperatorAct> acts(List<Fields> all, Vehicle vehicle) {
        List<OperatorAct> acts = new ArrayList<>();
        long before = 0;
        for (Fields each : all) {
            OperatorAct act = act(each, vehicle);
            if (act.atNanos() < before) {
                each.problem(
                        "at_s",
                        "is before the act above it at " + Seconds.text(before) + "; acts stand in the order of time");
            }
            if (!act.possibleWith(vehicle.transmission())) {
                each.problem("act", "this vehicle's transmission offers no such act");
            }
            before = Math.max(before, act.atNanos());
            each.close();
            acts.add(act);
        }
        return acts;
    }

    private static OperatorAct act(Fields fields, Vehicle vehicle) {
        long at = fields.nanos("at_s", 1, LONGEST_NANOS);
        ActWord word = fields.choice("act", List.of(ActWord.values()), VehicleFields::word);
        return switch (word) {
            case JUMPER_IN -> new OperatorAct.JumperIn(at);
            case JUMPER_OUT -> new OperatorAct.JumperOut(at);
            case KEY_ON -> new OperatorAct.KeyOn(at);
            case KEY_OFF -> new OperatorAct.KeyOff(at);
            case CRANK -> new OperatorAct.Crank(at);
            case THROTTLE -> new OperatorAct.Throttle(at, throttle(fields));
            case CLUTCH -> new OperatorAct.Clutch(at, fields.flag("down", true));
            case GEAR -> new OperatorAct.Shift(at, fields.choice("gear", List.of(Gear.values()), VehicleFields::word));
            case AIR_CONDITIONING -> new OperatorAct.AirConditioning(at, fields.flag("on", true));
            case WIGGLE ->
                new OperatorAct.Wiggle(
                        at, FaultFields.connector(fields, vehicle), fields.nanos("for_s", 1, LONGEST_NANOS));
            case BATTERY_OFF -> new OperatorAct.BatteryOff(at);
            case WAIT -> new OperatorAct.Wait(at);
        };
    }

    private static double throttle(Fields fields) {
        return switch (fields.choice("to", List.of(ThrottleWord.values()), VehicleFields::word)) {
            case CLOSED -> 0;
            case HALF -> HALF;
            case FLOOR -> 1;
        };
    }
}
