package telltally.simulator.scenario;

import telltally.simulator.channel.Strength;
import telltally.simulator.document.Fields;

/** Reads strengths: each a number, or a range {@code {"from": 0.85, "to": 1.18}} from which each seed draws. */
public final class StrengthFields {
    private StrengthFields() {}

    public static Strength number(Fields fields, String name, double least, double most) {
        return strength(fields, name, (each, key) -> each.number(key, least, most));
    }

    /** Nanoseconds; every number of them within an hour is a double exactly. */
    public static Strength nanos(Fields fields, String name, long leastNanos, long mostNanos) {
        return strength(fields, name, (each, key) -> each.nanos(key, leastNanos, mostNanos));
    }

    private interface Reading {
        double read(Fields fields, String key);
    }

    private static Strength strength(Fields fields, String name, Reading reading) {
        if (!fields.isObject(name)) {
            return Strength.of(reading.read(fields, name));
        }
        Fields range = fields.object(name).orElseThrow();
        int before = fields.problems().count();
        double from = reading.read(range, "from");
        double to = reading.read(range, "to");
        range.close();
        if (to >= from) {
            return new Strength(from, to);
        }
        if (fields.problems().count() == before) {
            range.problem("to", "is smaller than \"from\"; a range was expected, its smaller end first");
        }
        return Strength.of(from);
    }
}
