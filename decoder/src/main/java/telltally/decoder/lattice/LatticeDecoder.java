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
    private static final int SOME_FLASHES = 20;
    private static final double LEAST_GAIN_OF_SOME = 1.9;
    private static final int MANY_FLASHES = 40;
    private static final double LEAST_GAIN_OF_MANY = 2.5;

    /** For whoever decodes next; who finds none makes one. */
    private final AtomicReference<@Nullable LatticeStock> idle = new AtomicReference<>();

    private volatile IdentityHashMap<FlashFormat, FormatModel> models = new IdentityHashMap<>();

    @Override
    public String id() {
        return "lattice";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        return decode(train, candidates, KnownNoise.NOTHING);
    }

    /** Decodes with some of the noise known, as nobody knows it outside a simulation: the most that can be hoped for. */
    public Reading decode(PulseTrain train, List<FlashFormat> candidates, KnownNoise noise) {
        LatticeStock stock = Objects.requireNonNullElseGet(idle.getAndSet(null), LatticeStock::new);
        Reading reading = decode(train, candidates, noise, stock);
        idle.set(stock);
        return reading;
    }

    private Reading decode(PulseTrain train, List<FlashFormat> candidates, KnownNoise noise, LatticeStock stock) {
        List<FirstSight> sights = sights(train, candidates);
        if (sights.isEmpty()) {
            return Reading.nothing(new Warning(0, WarningKind.NO_FLASHES, "no flash in the whole recording"));
        }
        List<FormatTrial> trials = survivors(trials(sights, noise, stock));
        trials.sort(Comparator.comparingDouble((FormatTrial trial) -> -trial.logEvidence));
        if (trials.isEmpty() || fitsNone(trials.get(0))) {
            return Reading.nothing(new Warning(
                    sights.get(0).flashes().startNanos[0],
                    WarningKind.NO_FORMAT,
                    "no format of the candidates explains these flashes"));
        }
        FormatTrial best = trials.get(0);
        double sum = 0;
        for (FormatTrial trial : trials) {
            sum += StrictMath.exp(trial.logEvidence - best.logEvidence);
        }
        return new ReadingWriter(best, 1 / sum).reading();
    }

    /** Whether too little is explained, or so many flashes would, in a format that sent them, speak for it more clearly. */
    private static boolean fitsNone(FormatTrial best) {
        if (best.unexplainedShare() > MOST_UNEXPLAINED) {
            return true;
        }
        int flashes = best.flashes.count;
        return flashes >= MANY_FLASHES
                ? best.gainAFlash() < LEAST_GAIN_OF_MANY
                : flashes >= SOME_FLASHES && best.gainAFlash() < LEAST_GAIN_OF_SOME;
    }

    /** Those in which there is a flash at all. */
    private List<FirstSight> sights(PulseTrain train, List<FlashFormat> candidates) {
        List<FirstSight> sights = new ArrayList<>();
        for (FlashFormat format : candidates) {
            FirstSight sight = sight(train, model(format), sights);
            if (sight.flashes().count > 0) {
                sights.add(sight);
            }
        }
        return sights;
    }

    private static List<FormatTrial> trials(List<FirstSight> sights, KnownNoise noise, LatticeStock stock) {
        double top = sights.stream().mapToDouble(FirstSight::score).max().orElse(0);
        List<FormatTrial> trials = new ArrayList<>();
        for (FirstSight sight : sights) {
            double allowance = COARSE_CUT + 0.5 * sight.flashes().count;
            if (noise.clockScale().isPresent() || sight.score() > top - allowance) {
                trials.add(new FormatTrial(sight.model(), sight.flashes(), sight.clocks(), noise, stock));
            }
        }
        return trials;
    }

    /** One recording, cleaned as one format asks, and the clocks that its lengths speak for. */
    private record FirstSight(FormatModel model, Flashes flashes, Lengths lengths, List<CoarseClock.Fit> clocks) {
        double score() {
            return clocks.get(0).score();
        }
    }

    private static FirstSight sight(PulseTrain train, FormatModel model, List<FirstSight> others) {
        boolean lit = !model.format.restsLit();
        for (FirstSight other : others) {
            if (other.flashes().sameFor(lit, model.leastLitNanos, model.leastDarkNanos)) {
                return new FirstSight(model, other.flashes(), other.lengths(), model.clock.fits(other.lengths()));
            }
        }
        Flashes flashes = Flashes.of(train, lit, model.leastLitNanos, model.leastDarkNanos, MOST_FLASHES);
        Lengths lengths = new Lengths(flashes);
        return new FirstSight(model, flashes, lengths, model.clock.fits(lengths));
    }

    /** Those that may still win, read whole. */
    private static List<FormatTrial> survivors(List<FormatTrial> trials) {
        List<FormatTrial> hopeful = new ArrayList<>(trials);
        keepNear(hopeful, FIRST_LOOK_CUT, FIRST_LOOK_CUT_A_FLASH);
        hopeful.forEach(FormatTrial::run);
        keepNear(hopeful, SECOND_LOOK_CUT, 0);
        hopeful.forEach(FormatTrial::read);
        return hopeful;
    }

    /** Lets go of what lies far behind the best. */
    private static void keepNear(List<FormatTrial> trials, double allowance, double allowanceAFlash) {
        double top = top(trials);
        trials.removeIf(trial -> {
            double least = top - allowance - allowanceAFlash * trial.lookedAt();
            boolean hopeless = !trial.isPossible() || trial.logEvidence < least;
            if (hopeless) {
                trial.dismiss();
            }
            return hopeless;
        });
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
