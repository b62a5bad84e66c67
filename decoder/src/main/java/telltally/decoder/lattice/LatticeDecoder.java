package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/** Reads codes with probabilities: every format, clock and list weighed against all others. */
public final class LatticeDecoder implements Decoder {
    private static final int MOST_FLASHES = 20_000;
    private static final double COARSE_CUT = 60;
    private static final double FIRST_LOOK_CUT = 16;
    private static final double FIRST_LOOK_CUT_A_FLASH = 0.7;
    private static final double SECOND_LOOK_CUT = 40;
    private static final double MOST_UNEXPLAINED = 0.3;

    /** For whoever decodes next; who finds none makes one. */
    private final AtomicReference<@Nullable LatticeStock> idle = new AtomicReference<>();

    private volatile IdentityHashMap<FlashFormat, FormatModel> models = new IdentityHashMap<>();

    @Override
    public String id() {
        return "lattice";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        LatticeStock stock = Objects.requireNonNullElseGet(idle.getAndSet(null), LatticeStock::new);
        Reading reading = decode(train, candidates, stock);
        idle.set(stock);
        return reading;
    }

    private Reading decode(PulseTrain train, List<FlashFormat> candidates, LatticeStock stock) {
        List<FormatTrial> trials = trials(train, candidates, stock);
        if (trials.isEmpty()) {
            return Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "no flash in the whole recording"));
        }
        trials = survivors(trials);
        trials.sort(Comparator.comparingDouble((FormatTrial trial) -> -trial.logEvidence));
        FormatTrial best = trials.get(0);
        if (best.unexplainedShare() > MOST_UNEXPLAINED) {
            return Reading.nothing(new Warning(
                    best.flashes.startNanos[0],
                    WarningKind.NO_FORMAT,
                    "no format of the candidates explains these flashes"));
        }
        double sum = 0;
        for (FormatTrial trial : trials) {
            sum += StrictMath.exp(trial.logEvidence - best.logEvidence);
        }
        return new ReadingWriter(best, 1 / sum).reading();
    }

    private List<FormatTrial> trials(PulseTrain train, List<FlashFormat> candidates, LatticeStock stock) {
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
            double allowance = COARSE_CUT + 0.5 * flashes.get(i).count;
            if (clocks.get(i)[0].score() > top - allowance) {
                trials.add(new FormatTrial(all.get(i), flashes.get(i), clocks.get(i), stock));
            }
        }
        return trials;
    }

    /** Those that may still win, read whole. */
    private static List<FormatTrial> survivors(List<FormatTrial> trials) {
        double top = top(trials);
        List<FormatTrial> hopeful = new ArrayList<>();
        for (FormatTrial trial : trials) {
            if (trial.logEvidence >= top - FIRST_LOOK_CUT - FIRST_LOOK_CUT_A_FLASH * trial.lookedAt()) {
                trial.run();
                hopeful.add(trial);
            } else {
                trial.dismiss();
            }
        }
        double better = top(hopeful);
        hopeful.removeIf(trial -> trial.logEvidence < better - SECOND_LOOK_CUT);
        hopeful.forEach(FormatTrial::read);
        return hopeful;
    }

    private static double top(List<FormatTrial> trials) {
        return trials.stream().mapToDouble(trial -> trial.logEvidence).max().orElse(0);
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
}
