package telltally.simulator.recording;

import telltally.simulator.selftest.FaultCase;
import telltally.simulator.selftest.Presence;
import telltally.simulator.vehicle.Fault;
import tools.jackson.core.JsonGenerator;

/** A fault in the words in which a lesson gives it. */
final class FaultJson {
    private FaultJson() {}

    static void write(JsonGenerator json, FaultCase told) {
        json.writeStringProperty("circuit", told.circuit());
        json.writeStringProperty("fault", kind(told.fault()));
        if (told.fault() instanceof Fault.Electrical electrical) {
            json.writeStringProperty("place", electrical.place().label());
        }
        json.writeStringProperty("when", when(told.presence()));
    }

    private static String kind(Fault fault) {
        if (fault instanceof Fault.Open) {
            return "open";
        } else if (fault instanceof Fault.ShortToGround) {
            return "short-to-ground";
        } else if (fault instanceof Fault.ShortToSupply) {
            return "short-to-supply";
        } else if (fault instanceof Fault.HighResistance) {
            return "high-resistance";
        } else if (fault instanceof Fault.Stuck stuck) {
            return stuck == Fault.Stuck.OPEN ? "stuck-open" : "stuck-closed";
        } else if (fault instanceof Fault.DeadOutput) {
            return "dead-output";
        }
        return "drifted";
    }

    private static String when(Presence presence) {
        if (presence instanceof Presence.Hard) {
            return "always";
        } else if (presence instanceof Presence.Remembered) {
            return "remembered";
        }
        return presence instanceof Presence.Wiggled ? "wiggled" : "recurring";
    }
}
