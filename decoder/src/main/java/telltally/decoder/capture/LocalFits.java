package telltally.decoder.capture;

/**
 * What lies near each sample of a series, fitted by least squares once it is known which samples are high: the values are
 * {@code low + slope (t - t0) + swing high}. Running sums make each fit a few operations.
 */
final class LocalFits {
    /** How much a camera may make of the same lamp at another time. */
    static final double MOST_GAIN = 2.5;

    /** Samples of either level from which the distance of the levels is fitted. */
    private static final int FEWEST = 3;
    /** A slope must be told from a step: the share of the high samples' scatter that time does not explain. */
    private static final double LEAST_UNEXPLAINED = 0.3;
    /**
     * In standard deviations of what a fit leaves. The halves of a normal law, parted at its mean, have means
     * {@code 2 sqrt(2 / pi)} apart and standard deviations of {@code sqrt(1 - 2 / pi)} (the half-normal law: N. L. Johnson,
     * S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1, 2nd ed. 1994, ch. 13), which makes 2.65; those of a
     * sine, 4.1.
     */
    private static final double LEAST_CONTRAST = 2.7;
    /** As much more as a level of a single sample needs: some of noise lie far out by chance. */
    private static final double MORE_WHERE_RARE = 12;

    private final Windows windows;
    private final double[] seconds;
    private final double[] t;
    private final double[] tt;
    private final double[] v;
    private final double[] vv;
    private final double[] tv;
    private final double[] h;
    private final double[] th;
    private final double[] hv;

    LocalFits(Series series, boolean[] high, Windows windows) {
        this.windows = windows;
        int size = series.size();
        seconds = new double[size];
        int room = size + 1;
        t = new double[room];
        tt = new double[room];
        v = new double[room];
        vv = new double[room];
        tv = new double[room];
        h = new double[room];
        th = new double[room];
        hv = new double[room];
        for (int i = 0; i < size; i++) {
            double second = series.atNanos[i] * 1e-9;
            double value = series.values[i];
            double up = high[i] ? 1 : 0;
            seconds[i] = second;
            t[i + 1] = t[i] + second;
            tt[i + 1] = tt[i] + second * second;
            v[i + 1] = v[i] + value;
            vv[i + 1] = vv[i] + value * value;
            tv[i + 1] = tv[i] + second * value;
            h[i + 1] = h[i] + up;
            th[i + 1] = th[i] + up * second;
            hv[i + 1] = hv[i] + up * value;
        }
    }

    Fit near(int index) {
        int from = windows.from(index);
        int to = windows.to(index);
        double n = to - from;
        double meanT = (t[to] - t[from]) / n;
        double meanV = (v[to] - v[from]) / n;
        double meanH = (h[to] - h[from]) / n;
        return new Fit(
                to - from,
                seconds[index] - meanT,
                meanV,
                meanH,
                (tt[to] - tt[from]) / n - meanT * meanT,
                (vv[to] - vv[from]) / n - meanV * meanV,
                (tv[to] - tv[from]) / n - meanT * meanV,
                (th[to] - th[from]) / n - meanT * meanH,
                (hv[to] - hv[from]) / n - meanH * meanV);
    }

    /** The median distance of the levels; NaN where never both are nearby. */
    double usualSwing() {
        double[] known = new double[seconds.length];
        int count = 0;
        for (int i = 0; i < seconds.length; i++) {
            double swing = near(i).swing();
            if (!Double.isNaN(swing)) {
                known[count++] = swing;
            }
        }
        return count == 0 ? Double.NaN : new Quantiles(known, count).median();
    }

    /**
     * Means, variances and covariances near one sample.
     *
     * @param sinceMean how much later than the mean of the times the sample is, in seconds
     */
    record Fit(
            int count,
            double sinceMean,
            double meanV,
            double meanH,
            double varT,
            double varV,
            double covTV,
            double covTH,
            double covHV) {
        /** The distance of the levels; NaN where one is too rare; without a slope where that cannot be told from a step. */
        double swing() {
            if (rarer() < FEWEST - 0.5) {
                return Double.NaN;
            }
            return sloped() ? (covHV - covTH * covTV / varT) / (varH() * unexplained()) : covHV / varH();
        }

        /** The distance of the levels in standard deviations of what the fit leaves; NaN where one level is too rare. */
        private double contrast() {
            double swing = swing();
            double slope = sloped() ? (covTV - swing * covTH) / varT : 0;
            double left = varV - swing * covHV - slope * covTV;
            return swing / Math.sqrt(Math.max(0, left));
        }

        /** Whether both levels are nearby. */
        boolean hasBoth(double usualSwing) {
            return !Double.isNaN(swing()) && !isNoise(usualSwing);
        }

        /**
         * Whether this is noise of one level, parted in two: they are closer than a camera would make them, and no further
         * apart than noise parts by itself.
         */
        boolean isNoise(double usualSwing) {
            return swing() < usualSwing / MOST_GAIN && contrast() < LEAST_CONTRAST + MORE_WHERE_RARE / rarer();
        }

        /** How many samples the rarer level has. */
        private double rarer() {
            return Math.min(meanH, 1 - meanH) * count;
        }

        private double varH() {
            return meanH * (1 - meanH);
        }

        private boolean sloped() {
            return unexplained() >= LEAST_UNEXPLAINED;
        }

        private double unexplained() {
            return varT > 0 ? 1 - covTH * covTH / (varT * varH()) : 0;
        }

        /**
         * Where the low level lies at the sample.
         *
         * @param sloped whether both levels are nearby, so that what rises is not the lamp itself
         */
        double low(double swing, boolean sloped) {
            double slope = sloped && varT > 0 ? (covTV - swing * covTH) / varT : 0;
            return meanV - swing * meanH + slope * sinceMean;
        }
    }
}
