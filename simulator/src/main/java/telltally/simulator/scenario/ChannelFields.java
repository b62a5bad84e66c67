package telltally.simulator.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.CameraFrames;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.channel.ChannelRecipe.Step;
import telltally.simulator.channel.ClockDrift;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.EarlyStop;
import telltally.simulator.channel.FilamentLamp;
import telltally.simulator.channel.Finger;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Glare;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.LateStart;
import telltally.simulator.channel.Led;
import telltally.simulator.channel.LooseContact;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.channel.MissedFlashes;
import telltally.simulator.channel.ShortTaps;
import telltally.simulator.channel.Strength;
import telltally.simulator.channel.StrengthDraw;
import telltally.simulator.channel.TapAlong;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;

/**
 * Reads a channel: an array of impairments, each an object with its {@code kind} and its strengths, units in the keys. A
 * strength is a number, or {@code {"from": 0.85, "to": 1.18}} for a range from which each seed draws.
 */
public final class ChannelFields {
    private static final long HOUR_NANOS = 3_600_000_000_000L;
    private static final long SECOND_NANOS = 1_000_000_000L;
    private static final double MIN_LAMP_VOLTS = 1;
    private static final double MOST_LAMP_VOLTS = 16;

    /** A kind of impairment and how its strengths are read. */
    private record Kind(String name, Function<Fields, Step> reading) {}

    private static final List<Kind> KINDS = List.of(
            new Kind("clock-scale", ChannelFields::clockScale),
            new Kind("jitter", ChannelFields::jitter),
            new Kind("contact-bounce", ChannelFields::contactBounce),
            new Kind("clock-drift", ChannelFields::clockDrift),
            new Kind("missed-flashes", ChannelFields::missedFlashes),
            new Kind("ghost-flashes", ChannelFields::ghostFlashes),
            new Kind("late-start", fields -> lost(fields, "late-start", LateStart::new)),
            new Kind("early-stop", fields -> lost(fields, "early-stop", EarlyStop::new)),
            new Kind("loose-contact", ChannelFields::looseContact),
            new Kind("glare", ChannelFields::glare),
            new Kind("camera-frames", ChannelFields::cameraFrames),
            new Kind("tap-along", ChannelFields::tapAlong),
            new Kind("short-taps", ChannelFields::shortTaps),
            new Kind("filament-lamp", ChannelFields::filamentLamp),
            new Kind("led", ChannelFields::led),
            new Kind("meter-needle", fields -> new Step("meter-needle", draw -> MeterNeedle.standard())));

    private ChannelFields() {}

    /** The names of all kinds of impairment that a file can name. */
    public static List<String> kinds() {
        return KINDS.stream().map(Kind::name).toList();
    }

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
        Strength factor = StrengthFields.number(fields, "factor", 0.1, 10);
        return new Step("clock-scale", draw -> new ClockScale(draw.of("factor", factor)));
    }

    private static Step jitter(Fields fields) {
        Strength share = StrengthFields.number(fields, "share", 0, 1);
        return new Step("jitter", draw -> new Jitter(draw.of("share", share)));
    }

    private static Step contactBounce(Fields fields) {
        Strength longestNanos = StrengthFields.nanos(fields, "longest_s", 0, HOUR_NANOS);
        int mostContacts = fields.whole("most_contacts", 0, 50);
        return new Step(
                "contact-bounce",
                draw -> new ContactBounce(StrictMath.round(draw.of("longest", longestNanos)), mostContacts));
    }

    private static Step clockDrift(Fields fields) {
        Strength share = StrengthFields.number(fields, "share_per_minute", -1, 1);
        return new Step("clock-drift", draw -> new ClockDrift(draw.of("share", share)));
    }

    private static Step missedFlashes(Fields fields) {
        Strength probability = StrengthFields.number(fields, "probability", 0, 1);
        return new Step("missed-flashes", draw -> new MissedFlashes(draw.of("probability", probability)));
    }

    private static Step ghostFlashes(Fields fields) {
        Strength probability = StrengthFields.number(fields, "probability", 0, 1);
        return new Step("ghost-flashes", draw -> GhostFlashes.ofReflections(draw.of("probability", probability)));
    }

    private static Step lost(Fields fields, String kind, LongFunction<Impairment> made) {
        Strength lost = StrengthFields.nanos(fields, "lost_s", 0, HOUR_NANOS);
        return new Step(kind, draw -> made.apply(StrictMath.round(draw.of("lost", lost))));
    }

    private static Step looseContact(Fields fields) {
        Strength perSecond = StrengthFields.number(fields, "per_second", 0, 100);
        Strength mean = StrengthFields.nanos(fields, "mean_s", 0, HOUR_NANOS);
        return new Step(
                "loose-contact",
                draw -> new LooseContact(draw.of("rate", perSecond), StrictMath.round(draw.of("mean", mean))));
    }

    private static Step glare(Fields fields) {
        Strength length = StrengthFields.nanos(fields, "length_s", 0, HOUR_NANOS);
        return new Step("glare", draw -> new Glare(StrictMath.round(draw.of("length", length))));
    }

    /** A frame is exposed for half its time and shows what was lit for half of that. Common practice, no source. */
    private static Step cameraFrames(Fields fields) {
        Strength rate = StrengthFields.number(fields, "frames_per_second", 1, 1000);
        return new Step("camera-frames", draw -> {
            double framesPerSecond = draw.of("rate", rate);
            return new CameraFrames(framesPerSecond, (long) (0.5e9 / framesPerSecond), 0.5);
        });
    }

    private static Step tapAlong(Fields fields) {
        Fingers finger = finger(fields);
        return new Step("tap-along", draw -> new TapAlong(finger.drawn(draw)));
    }

    private static Step shortTaps(Fields fields) {
        Fingers finger = finger(fields);
        return new Step("short-taps", draw -> ShortTaps.of(finger.drawn(draw)));
    }

    /** A person's finger with strengths that are still to be drawn. */
    private record Fingers(Strength lag, Strength spread, Strength missed, Strength doubled) {
        Finger drawn(StrengthDraw draw) {
            return new Finger(
                    StrictMath.round(draw.of("lag", lag)),
                    StrictMath.round(draw.of("spread", spread)),
                    draw.of("missed", missed),
                    draw.of("doubled", doubled));
        }
    }

    private static Fingers finger(Fields fields) {
        return new Fingers(
                StrengthFields.nanos(fields, "lag_s", 0, SECOND_NANOS),
                StrengthFields.nanos(fields, "spread_s", 0, SECOND_NANOS),
                StrengthFields.number(fields, "missed", 0, 1),
                StrengthFields.number(fields, "doubled", 0, 1));
    }

    private static Step filamentLamp(Fields fields) {
        Strength volts = StrengthFields.number(fields, "supply_v", MIN_LAMP_VOLTS, MOST_LAMP_VOLTS);
        if (volts.from() == volts.to()) {
            // How a bulb warms and cools costs more to work out than all the rest of a recording.
            FilamentLamp lamp = FilamentLamp.of(Bulb.panel(), volts.from());
            return new Step("filament-lamp", draw -> lamp);
        }
        return new Step("filament-lamp", draw -> FilamentLamp.of(Bulb.panel(), draw.of("volts", volts)));
    }

    private static Step led(Fields fields) {
        Strength volts = StrengthFields.number(fields, "supply_v", MIN_LAMP_VOLTS, MOST_LAMP_VOLTS);
        return new Step("led", draw -> Led.at(draw.of("volts", volts)));
    }
}
