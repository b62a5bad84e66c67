package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** Reads codes with probabilities: every format, clock and list weighed against all others. */
public final class LatticeDecoder implements Decoder {
    private static final int MOST_FLASHES = 20_000;
    private static final double COARSE_CUT = 30;

    private volatile IdentityHashMap<FlashFormat, FormatModel> models = new IdentityHashMap<>();

    @Override
    public String id() {
        return "lattice";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        List<FormatTrial> trials = trials(train, candidates);
        if (trials.isEmpty()) {
            return Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "no flash in the whole recording"));
        }
        trials.sort(Comparator.comparingDouble((FormatTrial trial) -> -trial.logEvidence));
        if (Boolean.getBoolean("debug")) {
            for (FormatTrial trial : trials) {
                System.out.println("   T " + trial.model.format.id() + " " + trial.logEvidence + " lists "
                        + trial.regions.stream()
                                .map(r -> r.structure.logEvidence)
                                .toList() + " " + trial.channel
                        + " junk " + trial.unexplainedShare());
            }
        }
        FormatTrial best = trials.get(0);
        double sum = 0;
        for (FormatTrial trial : trials) {
            sum += Math.exp(trial.logEvidence - best.logEvidence);
        }
        if (best.unexplainedShare() > 0.3) {
            return Reading.nothing(new Warning(
                    best.flashes.startNanos[0], WarningKind.NO_FORMAT, "the flashes fit none of the formats"));
        }
        return reading(best, 1 / sum);
    }

    private List<FormatTrial> trials(PulseTrain train, List<FlashFormat> candidates) {
        List<FormatModel> all = new ArrayList<>();
        List<Flashes> flashes = new ArrayList<>();
        List<CoarseClock.Fit[]> clocks = new ArrayList<>();
        double top = Double.NEGATIVE_INFINITY;
        for (FlashFormat format : candidates) {
            FormatModel model = model(format);
            Flashes seen =
                    Flashes.of(train, !format.restsLit(), model.leastLitNanos, model.leastDarkNanos, MOST_FLASHES);
            if (seen.count > 0) {
                all.add(model);
                flashes.add(seen);
                CoarseClock.Fit[] fits = model.clock.fits(CoarseClock.litBins(seen), CoarseClock.darkBins(seen));
                clocks.add(fits);
                top = Math.max(top, fits[0].score());
            }
        }
        List<FormatTrial> trials = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            double allowance = COARSE_CUT + 0.6 * flashes.get(i).count;
            if (clocks.get(i)[0].score() > top - allowance) {
                trials.add(new FormatTrial(all.get(i), flashes.get(i), clocks.get(i)));
            }
        }
        return trials;
    }

    private FormatModel model(FlashFormat format) {
        FormatModel known = models.get(format);
        if (known != null) {
            return known;
        }
        FormatModel made = new FormatModel(format);
        IdentityHashMap<FlashFormat, FormatModel> more =
                models.size() > 64 ? new IdentityHashMap<>() : new IdentityHashMap<>(models);
        more.put(format, made);
        models = more;
        return made;
    }

    private Reading reading(FormatTrial trial, double probability) {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        List<Group> groups = new ArrayList<>();
        List<Warning> warnings = new ArrayList<>();
        trial.settle();
        for (Region region : trial.regions) {
            if (!region.codes.isEmpty()) {
                codes.put(region.segment, region.codes);
            }
            for (Region.Reported each : region.reported) {
                groups.add(new Group(
                        each.kind(),
                        each.segment(),
                        each.digits(),
                        each.probability(),
                        trial.flashes.startNanos[each.first()],
                        trial.flashes.endNanos[each.last()],
                        each.alternatives()));
            }
        }
        for (Found found : trial.finder.groups) {
            if (found.kind == GroupKind.CODE) {
                continue;
            }
            groups.add(group(trial, found, found.kind, segment(trial, found), found.digits(), 1));
            if (found.kind == GroupKind.BALANCE) {
                codes.put(Segment.BALANCE, List.of(found.digits()));
            } else if (found.kind == GroupKind.STEADY && found.firstPlace == 1) {
                codes.put(Segment.CODES, List.of());
            }
        }
        groups.sort(Comparator.comparingLong(Group::startNanos));
        return new Reading(
                Optional.of(new FormatEstimate(trial.model.format.id(), probability, trial.channel.scale())),
                codes,
                groups,
                warnings);
    }

    private static Segment segment(FormatTrial trial, Found found) {
        if (found.kind == GroupKind.BALANCE) {
            return Segment.BALANCE;
        }
        if (found.kind == GroupKind.CYLINDERS || found.kind == GroupKind.PROMPT) {
            return Segment.RUNNING;
        }
        return trial.regions.isEmpty() ? trial.model.format.segments().get(0) : trial.regions.get(0).segment;
    }

    private static Group group(
            FormatTrial trial, Found found, GroupKind kind, Segment segment, String digits, double probability) {
        return new Group(
                kind,
                segment,
                digits,
                probability,
                trial.flashes.startNanos[found.firstFlash],
                trial.flashes.endNanos[Math.max(found.firstFlash, found.lastFlash)],
                List.of());
    }
}
