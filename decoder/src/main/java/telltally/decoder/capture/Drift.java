package telltally.decoder.capture;

/** Takes out what moves both levels slowly, once it is known which samples are high. */
final class Drift {
    private final double[] sums;
    private final double[] highSums;
    private final int[] highs;

    private Drift(double[] values, boolean[] high) {
        sums = new double[values.length + 1];
        highSums = new double[values.length + 1];
        highs = new int[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
            highSums[i + 1] = highSums[i] + (high[i] ? values[i] : 0);
            highs[i + 1] = highs[i] + (high[i] ? 1 : 0);
        }
    }

    /** @return the values with the low level moved to 0 throughout; the values as they are if never both are nearby */
    static double[] removed(double[] values, boolean[] high, Windows windows) {
        Drift drift = new Drift(values, high);
        double swing = drift.swing(windows);
        if (Double.isNaN(swing)) {
            return values;
        }
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            int from = windows.from(i);
            int to = windows.to(i);
            double low = drift.sums[to] - drift.sums[from] - swing * (drift.highs[to] - drift.highs[from]);
            out[i] = values[i] - low / (to - from);
        }
        return out;
    }

    /** The median distance of the mean of the high samples nearby from that of the low ones; NaN if there is none. */
    private double swing(Windows windows) {
        double[] swings = new double[windows.size()];
        int count = 0;
        for (int i = 0; i < windows.size(); i++) {
            int from = windows.from(i);
            int to = windows.to(i);
            int high = highs[to] - highs[from];
            int low = to - from - high;
            if (high > 0 && low > 0) {
                double highSum = highSums[to] - highSums[from];
                swings[count++] = highSum / high - (sums[to] - sums[from] - highSum) / low;
            }
        }
        return count == 0 ? Double.NaN : new Quantiles(swings, count).median();
    }
}
