package telltally.decoder.capture;

import java.util.Arrays;

/**
 * Takes out what moves both levels slowly, or them apart and together again as a camera that adapts to the light does,
 * once it is known which samples are high. Near each sample the values are {@code low + slope (t - t0) + swing high},
 * fitted by least squares.
 */
final class Drift {
    /** How much a camera may make of the same lamp at another time. */
    private static final double MOST_GAIN = 2.5;
    /** Samples of either level from which the distance of the levels is fitted. */
    private static final int FEWEST = 3;
    /** A slope must be told from a step: the share of the high samples' scatter that time does not explain. */
    private static final double LEAST_APART = 0.3;

    private final double[] seconds;
    private final double[] values;
    private final boolean[] high;
    private final Windows windows;

    private Drift(Series series, boolean[] high, Windows windows) {
        this.values = series.values;
        this.seconds =
                Arrays.stream(series.atNanos).mapToDouble(nanos -> nanos * 1e-9).toArray();
        this.high = high;
        this.windows = windows;
    }

    /**
     * @return the values with the low level moved to 0 and the high one to the usual swing throughout; the values as
     *     they are if never both are nearby
     */
    static double[] removed(Series series, boolean[] high, Windows windows) {
        return new Drift(series, high, windows).removed();
    }

    private double[] removed() {
        Moments moments = new Moments(seconds, values, high);
        double[] swings = new double[values.length];
        for (int i = 0; i < swings.length; i++) {
            swings[i] = moments.at(windows.from(i), windows.to(i), seconds[i]).swing();
        }
        double[] known =
                Arrays.stream(swings).filter(swing -> !Double.isNaN(swing)).toArray();
        if (known.length == 0) {
            return values;
        }
        double usual = new Quantiles(known).median();
        double swing = usual;
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            // Where only one level is nearby, the last swing stands.
            swing = Double.isNaN(swings[i])
                    ? swing
                    : Math.max(usual / MOST_GAIN, Math.min(usual * MOST_GAIN, swings[i]));
            double low = moments.at(windows.from(i), windows.to(i), seconds[i]).low(swing, !Double.isNaN(swings[i]));
            out[i] = (values[i] - low) * (usual / swing);
        }
        return out;
    }

    /** Running sums of time, value and level, and of their products. */
    private static final class Moments {
        private final double[] t;
        private final double[] tt;
        private final double[] v;
        private final double[] tv;
        private final double[] h;
        private final double[] th;
        private final double[] hv;

        Moments(double[] seconds, double[] values, boolean[] high) {
            int room = values.length + 1;
            t = new double[room];
            tt = new double[room];
            v = new double[room];
            tv = new double[room];
            h = new double[room];
            th = new double[room];
            hv = new double[room];
            for (int i = 0; i < values.length; i++) {
                double up = high[i] ? 1 : 0;
                t[i + 1] = t[i] + seconds[i];
                tt[i + 1] = tt[i] + seconds[i] * seconds[i];
                v[i + 1] = v[i] + values[i];
                tv[i + 1] = tv[i] + seconds[i] * values[i];
                h[i + 1] = h[i] + up;
                th[i + 1] = th[i] + up * seconds[i];
                hv[i + 1] = hv[i] + up * values[i];
            }
        }

        Local at(int from, int to, double second) {
            double n = to - from;
            double meanT = (t[to] - t[from]) / n;
            double meanV = (v[to] - v[from]) / n;
            double meanH = (h[to] - h[from]) / n;
            return new Local(
                    to - from,
                    second - meanT,
                    meanV,
                    meanH,
                    (tt[to] - tt[from]) / n - meanT * meanT,
                    (tv[to] - tv[from]) / n - meanT * meanV,
                    (th[to] - th[from]) / n - meanT * meanH,
                    (hv[to] - hv[from]) / n - meanH * meanV);
        }
    }

    /**
     * Means, variances and covariances near one sample.
     *
     * @param sinceMean how much later than the mean of the times the sample is, in seconds
     */
    private record Local(
            int count,
            double sinceMean,
            double meanV,
            double meanH,
            double varT,
            double covTV,
            double covTH,
            double covHV) {
        /** NaN where one level is too rare; without a slope where that cannot be told from a step. */
        double swing() {
            double varH = meanH * (1 - meanH);
            if (Math.min(meanH, 1 - meanH) * count < FEWEST - 0.5) {
                return Double.NaN;
            }
            double apart = varT > 0 ? 1 - covTH * covTH / (varT * varH) : 0;
            return apart < LEAST_APART ? covHV / varH : (covHV - covTH * covTV / varT) / (varH * apart);
        }

        /** @param sloped whether both levels are nearby, so that what rises is not the lamp itself */
        double low(double swing, boolean sloped) {
            double slope = sloped && varT > 0 ? (covTV - swing * covTH) / varT : 0;
            return meanV - swing * meanH + slope * sinceMean;
        }
    }
}
