package telltally.decoder.plain;

/** How far the lengths of a train are off the nominal ones that they were taken for: the mean, and the spread. */
final class Residuals {
    /** Lengths further off (as a logarithm) are accidents. */
    private static final double FAR = 0.3;

    /** Bounce, and the steps in which a capture measures, stray this much. */
    static final double LEAST_SPREAD = 0.02;

    private double sum;
    private double squares;
    private int count;

    static Residuals of(Lengths lengths, Parse parse) {
        Residuals all = new Residuals();
        Runs runs = parse.runs();
        for (int run = 0; run < runs.size(); run++) {
            if (run > 0) {
                all.add(parse.gapBefore(run).off(runs.gapBefore(runs.first(run))));
            }
            for (int flash = runs.first(run); flash <= runs.last(run) && !runs.steady(run); flash++) {
                all.add(runs.lit(flash) - lengths.flash(runs.kindOfFlash(flash)));
                if (flash > runs.first(run)) {
                    all.add(runs.gapBefore(flash) - lengths.within());
                }
            }
        }
        return all;
    }

    /** Not a number counts for nothing: a length that was taken for none. */
    void add(double off) {
        if (Math.abs(off) <= FAR) {
            sum += off;
            squares += off * off;
            count++;
        }
    }

    int count() {
        return count;
    }

    double mean() {
        return count == 0 ? 0 : sum / count;
    }

    double spread() {
        return count < 2 ? Cost.SPREAD : Math.sqrt(Math.max(0, squares / count - mean() * mean()));
    }

    /**
     * By how many nats the lengths are more probable once it is known how much this train strays, rather than what is
     * usual: the profile likelihood of a normal law over that of the usual spread. The mean took one length to measure.
     */
    double gain() {
        if (count < 2) {
            return 0;
        }
        double square = squares / count;
        double own = Math.max(LEAST_SPREAD, Math.sqrt(square));
        double usual = square / (2 * Cost.SPREAD * Cost.SPREAD);
        return (count - 1) * (usual - square / (2 * own * own) - StrictMath.log(own / Cost.SPREAD));
    }
}
