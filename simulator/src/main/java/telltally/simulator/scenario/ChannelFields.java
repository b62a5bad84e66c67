package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.channel.ChannelRecipe.Step;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.Strength;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;

/**
 * Reads a channel: an array of impairments, each an object with its {@code kind} and its strengths, units in the keys. A
 * strength is a number, or {@code {"from": 0.85, "to": 1.18}} for a range from which each seed draws.
 */
public final class ChannelFields {
    private static final long HOUR_NANOS = 3_600_000_000_000L;

    /** A kind of impairment and how its strengths are read. */
    private record Kind(String name, Function<Fields, Step> reading) {}

    private static final List<Kind> KINDS = List.of(
            new Kind("clock-scale", ChannelFields::clockScale),
            new Kind("jitter", ChannelFields::jitter),
            new Kind("contact-bounce", ChannelFields::contactBounce));

    private ChannelFields() {}

    /** What is wrong is told in the problems of the file, and left out. */
    public static ChannelRecipe read(List<Fields> impairments) {
        List<Step> steps = new ArrayList<>();
        for (Fields each : impairments) {
            kind(each).ifPresent(kind -> {
                steps.add(kind.reading().apply(each));
                each.close();
            });
        }
        return new ChannelRecipe(steps);
    }

    private static Optional<Kind> kind(Fields impairment) {
        String named = impairment.text("kind");
        Optional<Kind> found =
                KINDS.stream().filter(each -> each.name().equals(named)).findFirst();
        if (found.isEmpty() && !named.isBlank()) {
            String expected =
                    KINDS.stream().map(each -> "\"" + each.name() + "\"").collect(Collectors.joining(" or "));
            impairment.problem("kind", "is " + Problem.quoted(named) + "; expected " + expected);
        }
        return found;
    }

    private static Step clockScale(Fields fields) {
        Strength factor = number(fields, "factor", 0.1, 10);
        return new Step("clock-scale", draw -> new ClockScale(draw.of("factor", factor)));
    }

    private static Step jitter(Fields fields) {
        Strength share = number(fields, "share", 0, 1);
        return new Step("jitter", draw -> new Jitter(draw.of("share", share)));
    }

    private static Step contactBounce(Fields fields) {
        Strength longestNanos = nanos(fields, "longest_s", 0, HOUR_NANOS);
        int mostContacts = fields.whole("most_contacts", 0, 50);
        return new Step(
                "contact-bounce",
                draw -> new ContactBounce(StrictMath.round(draw.of("longest", longestNanos)), mostContacts));
    }

    private static Strength number(Fields fields, String name, double least, double most) {
        return strength(fields, name, (each, key) -> each.number(key, least, most));
    }

    /** Nanoseconds; every number of them within an hour is a double exactly. */
    private static Strength nanos(Fields fields, String name, long leastNanos, long mostNanos) {
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
