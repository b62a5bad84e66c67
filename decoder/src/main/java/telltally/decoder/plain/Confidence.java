package telltally.decoder.plain;

/**
 * How sure a row of runs was read right, roughly. An interval of length x that was taken for a class with nominal
 * length m has the likelihood {@code L(m) = exp(-(ln(x / m))^2 / (2 s^2))}, where s is how much the lengths of this
 * train stray, measured on the train itself. Its probability is {@code (1 - a) L(m) / sum L}, the sum over all classes
 * of the format that it could be in; a gap that hides an unseen flash is one of them, with weight u. Here a is the
 * probability of an accident that no length shows. A row's probability is the product over its intervals and the gaps
 * around it. a and u are guesses: no source.
 */
final class Confidence {
    static final double ACCIDENT = 0.0003;
    private static final double UNSEEN = 0.001;

    /** Where rules decided against the length, the length is not all that counts. */
    private static final double LEAST = 0.01;

    private final Lengths lengths;
    private final Parse parse;
    private final Runs runs;
    private final GapRule within;
    private final double[] gaps;
    private final double spread;

    Confidence(Lengths lengths, Parse parse) {
        this.lengths = lengths;
        this.parse = parse;
        this.runs = parse.runs();
        this.within = GapRule.near(lengths.within());
        this.gaps = lengths.dark();
        this.spread =
                Math.max(Residuals.LEAST_SPREAD, Residuals.of(lengths, parse).spread());
    }

    double of(int firstRun, int lastRun) {
        double probability = 1;
        for (int run = firstRun; run <= lastRun; run++) {
            probability *= ofGapBefore(run) * inside(run);
        }
        return lastRun + 1 < runs.size() ? probability * ofGapBefore(lastRun + 1) : probability;
    }

    /** How sure it is that the gap before a run is what it was taken for. */
    double ofGapBefore(int run) {
        int flash = runs.first(run);
        return run == 0 ? 1 : ofGap(flash, parse.gapBefore(run), runs.steady(run) ? 0 : runs.kind(run));
    }

    private double inside(int run) {
        double probability = 1;
        for (int flash = runs.first(run); flash <= runs.last(run); flash++) {
            probability *= runs.steady(run) ? 1 - ACCIDENT : ofFlash(flash);
            if (flash > runs.first(run)) {
                probability *= ofGap(flash, within, runs.kindOfFlash(flash));
            }
        }
        return probability;
    }

    private double ofGap(int flash, GapRule rule, int kind) {
        double gap = runs.gapBefore(flash);
        double taken = 0;
        double others = 0;
        for (double each : gaps) {
            double likelihood = likelihood(gap, each);
            if (rule.allows(each)) {
                taken += likelihood;
            } else {
                others += likelihood;
            }
        }
        double unseen = UNSEEN * likelihood(gap, lengths.unseen(kind));
        if (rule.allows(lengths.unseen(kind))) {
            taken += unseen;
        } else {
            others += unseen;
        }
        return share(taken, others, rule.open(gap));
    }

    private double ofFlash(int flash) {
        double taken = 0;
        double others = 0;
        for (int kind = 0; kind < lengths.kinds(); kind++) {
            double likelihood = likelihood(runs.lit(flash), lengths.flash(kind));
            if (kind == runs.kindOfFlash(flash)) {
                taken += likelihood;
            } else {
                others += likelihood;
            }
        }
        return share(taken, others, false);
    }

    private static double share(double taken, double others, boolean surely) {
        if (surely || taken + others < Double.MIN_NORMAL) {
            return surely ? 1 - ACCIDENT : LEAST;
        }
        return Math.max(LEAST, (1 - ACCIDENT) * taken / (taken + others));
    }

    private double likelihood(double length, double nominal) {
        double off = (length - nominal) / spread;
        return StrictMath.exp(-off * off / 2);
    }
}
