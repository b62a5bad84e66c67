package telltally.decoder.score.broken;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.decoder.score.broken.BrokenDecoder.Told;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Ways to tell wrongly what was heard rightly. */
final class TellingMistakes {
    private static final double FIXED_CLOCK = 0.08;

    private TellingMistakes() {}

    private static Reading with(Reading reading, Map<Segment, List<String>> codes) {
        return new Reading(reading.format(), codes, reading.groups(), reading.warnings());
    }

    private static Reading eachList(Reading reading, UnaryOperator<List<String>> mistake) {
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        reading.codes().forEach((segment, list) -> codes.put(segment, mistake.apply(list)));
        return with(reading, codes);
    }

    /** A loop that ends one too early: the greatest digit is never reached. */
    static Reading nineReadAsEight(Told told) {
        return eachList(
                told.reading(),
                list -> list.stream().map(code -> code.replace('9', '8')).toList());
    }

    /** Every sending of a code is told. */
    static Reading repeatsToldAgain(Told told) {
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        told.reading().codes().forEach((segment, list) -> codes.put(segment, new ArrayList<>()));
        for (Group group : told.reading().groups()) {
            if (group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE) {
                codes.computeIfAbsent(group.segment(), segment -> new ArrayList<>())
                        .add(group.digits());
            }
        }
        return with(told.reading(), codes);
    }

    static Reading separatorTakenAsCode(Told told) {
        return takenAsCode(told.reading(), group -> group.kind() == GroupKind.SEPARATOR);
    }

    static Reading cylindersTakenAsCode(Told told) {
        return takenAsCode(told.reading(), group -> group.kind() == GroupKind.CYLINDERS);
    }

    /** A bulb check, a lead-in or whatever else is lit steadily counts as a flash. */
    static Reading steadyLightTakenAsCode(Told told) {
        return takenAsCode(told.reading(), group -> group.kind() == GroupKind.STEADY);
    }

    private static Reading takenAsCode(Reading reading, Predicate<Group> which) {
        List<Group> groups = reading.groups().stream()
                .map(group -> which.test(group)
                        ? new Group(
                                GroupKind.CODE,
                                group.segment(),
                                group.digits().isEmpty() ? "1" : group.digits(),
                                group.probability(),
                                group.startNanos(),
                                group.endNanos(),
                                group.alternatives())
                        : group)
                .toList();
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        codes.putAll(reading.codes());
        codes.putAll(Reading.merged(groups));
        return new Reading(reading.format(), codes, groups, reading.warnings());
    }

    /** Nothing to report is told as nothing at all. */
    static Reading passCodeSwallowed(Told told) {
        Optional<String> pass = told.reading()
                .format()
                .flatMap(format -> told.candidates().stream()
                        .filter(each -> each.id().equals(format.id()))
                        .findFirst())
                .flatMap(FlashFormat::passCode);
        return eachList(
                told.reading(),
                list -> list.stream()
                        .filter(code -> pass.filter(code::equals).isEmpty())
                        .toList());
    }

    static Reading presentAndStoredSwapped(Told told) {
        EnumMap<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        told.reading().codes().forEach((segment, list) -> codes.put(swapped(segment), list));
        return with(told.reading(), codes);
    }

    private static Segment swapped(Segment segment) {
        return switch (segment) {
            case PRESENT -> Segment.STORED;
            case STORED -> Segment.PRESENT;
            case RUNNING, BALANCE, CODES -> segment;
        };
    }

    /** The end of the list is not seen as the end of its last code. */
    static Reading lastOfSeveralCodesDropped(Told told) {
        return eachList(told.reading(), list -> list.size() > 1 ? list.subList(0, list.size() - 1) : list);
    }

    /** Only a sender whose clock is nearly right is understood. */
    static Reading clockNotAdapted(Told told) {
        boolean offClock = told.reading()
                .format()
                .filter(format -> Math.abs(format.clockScale() - 1) > FIXED_CLOCK)
                .isPresent();
        return offClock
                ? Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "the clock is not right"))
                : told.reading();
    }
}
