package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;

/** Says what was found, and what is odd about it. */
final class ReadingWriter {
    private static final double DOUBTFUL_FORMAT = 0.9;
    private static final String NO_WHOLE_CODE = "a group that is no whole code of the format";
    private static final long MILLISECOND = 1_000_000L;

    private final FormatTrial trial;
    private final double probability;
    private final Flashes flashes;
    private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
    private final List<Group> groups = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();

    ReadingWriter(FormatTrial trial, double probability) {
        this.trial = trial;
        this.probability = probability;
        this.flashes = trial.flashes;
    }

    Reading reading() {
        trial.settle();
        trial.regions.forEach(this::region);
        for (Found found : trial.finder().groups) {
            if (found.kind != GroupKind.CODE) {
                other(found);
            } else if (isBrokenOff(found)) {
                brokenOff(found);
            }
        }
        groups.sort(Comparator.comparingLong(Group::startNanos));
        noCodesWithinTheFrame();
        warnings();
        warnings.sort(Comparator.comparingLong(Warning::atNanos));
        double clock = trial.channel.scale();
        return new Reading(
                Optional.of(new FormatEstimate(trial.model.format.id(), probability, clock)), codes, groups, warnings);
    }

    /** A frame around no code at all is how some formats say that there is nothing to report. */
    private void noCodesWithinTheFrame() {
        Optional<String> framing = trial.model.format.framingCode();
        boolean framed = framing.isPresent()
                && groups.stream()
                        .anyMatch(group -> group.kind() == GroupKind.SEPARATOR
                                && group.digits().equals(framing.get()));
        if (framed) {
            codes.putIfAbsent(Segment.CODES, List.of());
        }
    }

    private void region(Region region) {
        if (!region.codes.isEmpty()) {
            codes.put(region.segment, region.codes);
        }
        for (Region.Reported each : region.reported) {
            groups.add(new Group(
                    each.kind(),
                    each.segment(),
                    each.digits(),
                    each.probability(),
                    flashes.startNanos[each.first()],
                    flashes.endNanos[each.last()],
                    each.alternatives()));
            if (each.kind() == GroupKind.UNREADABLE) {
                warn(each.first(), WarningKind.UNREADABLE_GROUP, NO_WHOLE_CODE);
            }
        }
        region.differing()
                .ifPresent(flash -> warn(
                        flash,
                        WarningKind.REPEATS_DIFFER,
                        "this sending reads otherwise than the others; all of them together were weighed"));
    }

    /** A code of which not one sign was sent to its end, though the recording went on. */
    private boolean isBrokenOff(Found found) {
        return found.signs.isEmpty() && !found.begunBefore && !trial.finder().stopsEarly;
    }

    private void brokenOff(Found found) {
        group(found, GroupKind.UNREADABLE, 1, List.of());
        warn(found.firstFlash, WarningKind.UNREADABLE_GROUP, NO_WHOLE_CODE);
    }

    /** Whatever is no code: separators, cylinder flashes, balance results, steady light. */
    private void other(Found found) {
        List<Reading.Alternative> alternatives = new ArrayList<>();
        double sure = 1;
        if (!found.signs.isEmpty()) {
            Guess guess = found.signs.get(0);
            sure = guess.probability(found.digits());
            for (String text : guess.ranked()) {
                if (!text.equals(found.digits()) && guess.probability(text) > 1e-6) {
                    alternatives.add(new Reading.Alternative(text, guess.probability(text)));
                }
            }
        }
        group(found, found.kind, sure, alternatives);
        if (found.kind == GroupKind.BALANCE && !found.digits().isEmpty()) {
            codes.put(Segment.BALANCE, List.of(found.digits()));
        } else if (found.kind == GroupKind.STEADY && found.firstPlace == FreeGrammar.BLINKING) {
            codes.put(Segment.CODES, List.of());
        } else if (found.kind == GroupKind.UNREADABLE) {
            warn(found.firstFlash, WarningKind.UNREADABLE_GROUP, "flashes that no rule of the format explains");
        }
    }

    private void group(Found found, GroupKind kind, double sure, List<Reading.Alternative> alternatives) {
        groups.add(new Group(
                kind,
                segment(found),
                found.digits(),
                sure,
                flashes.startNanos[found.firstFlash],
                flashes.endNanos[Math.max(found.firstFlash, found.lastFlash)],
                alternatives));
    }

    private Segment segment(Found found) {
        if (found.kind == GroupKind.BALANCE) {
            return Segment.BALANCE;
        }
        if (found.kind == GroupKind.CYLINDERS || found.kind == GroupKind.PROMPT) {
            return Segment.RUNNING;
        }
        return trial.regions.isEmpty() ? trial.model.format.segments().get(0) : trial.regions.get(0).segment;
    }

    private void warnings() {
        if (probability < DOUBTFUL_FORMAT) {
            warnings.add(new Warning(
                    0, WarningKind.FORMAT_DOUBTFUL, "another format explains the flashes about equally well"));
        }
        if (trial.finder().startsMidway) {
            warnings.add(new Warning(0, WarningKind.STARTS_MIDWAY, "the recording begins within a list"));
        }
        int last = flashes.count - 1;
        if (trial.finder().stopsEarly) {
            warnings.add(new Warning(
                    flashes.endNanos[last], WarningKind.STOPS_EARLY, "the recording ends before the list does"));
        }
        if (flashes.more) {
            warnings.add(new Warning(
                    flashes.endNanos[last],
                    WarningKind.STOPS_EARLY,
                    "only the first " + flashes.count + " flashes were read"));
        }
        if (flashes.dropped > 0) {
            warnings.add(new Warning(
                    flashes.firstDroppedNanos,
                    WarningKind.SHORT_PULSES,
                    flashes.dropped + " pulses or gaps far shorter than any of the format were left out"));
        }
        trial.finder().oddities.forEach(this::oddity);
    }

    private void oddity(GroupFinder.Oddity oddity) {
        boolean between = oddity.afterFlash() >= 0 && oddity.nextFlash() < flashes.count;
        if (oddity.missed() > 0 && between) {
            long gapNanos = flashes.startNanos[oddity.nextFlash()] - flashes.endNanos[oddity.afterFlash()];
            warnings.add(new Warning(
                    flashes.endNanos[oddity.afterFlash()],
                    WarningKind.MISSED_FLASH,
                    "a dark gap of " + seconds(gapNanos) + " s " + (oddity.withinSign() ? "inside" : "at the end of")
                            + " a digit: "
                            + (oddity.missed() == 1 ? "one flash was" : oddity.missed() + " flashes were")
                            + " probably not seen"));
        } else if (oddity.missed() == 0 && oddity.ghosts() == 0 && between) {
            long gapNanos = flashes.startNanos[oddity.nextFlash()] - flashes.endNanos[oddity.afterFlash()];
            warnings.add(new Warning(
                    flashes.endNanos[oddity.afterFlash()],
                    WarningKind.DOUBTFUL_GAP,
                    "a dark gap of " + seconds(gapNanos) + " s lies between two classes"));
        }
        for (int ghost = oddity.afterFlash() + 1; ghost < oddity.nextFlash(); ghost++) {
            long litNanos = flashes.endNanos[ghost] - flashes.startNanos[ghost];
            warn(
                    ghost,
                    WarningKind.EXTRA_FLASH,
                    "a flash of " + seconds(litNanos) + " s where none belongs was left out");
        }
    }

    /** To a millisecond, as nobody reads more. */
    private static String seconds(long nanos) {
        return Seconds.text((nanos + MILLISECOND / 2) / MILLISECOND * MILLISECOND);
    }

    private void warn(int flash, WarningKind kind, String text) {
        warnings.add(new Warning(flashes.startNanos[flash], kind, text));
    }
}
