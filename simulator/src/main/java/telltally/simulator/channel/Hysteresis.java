package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * Two marks between which the last answer stands: high from the upper mark up, low from the lower mark down.
 *
 * @param low the lower mark
 * @param high the upper mark, not below the lower
 */
public record Hysteresis(double low, double high) {
    public Hysteresis {
        if (!(low <= high)) {
            throw new IllegalArgumentException("the lower mark " + low + " lies above the upper mark " + high);
        }
    }

    /** Whether a value counts as high, if the one before did or did not. */
    public boolean high(double value, boolean before) {
        return before ? value > low : value >= high;
    }

    /**
     * The instants at which a signal crosses the marks, on straight lines between samples; the first sample is high
     * from the middle of the marks up.
     *
     * @param endNanos the end of the recording, after the last sample
     * @return lit where the signal is high
     */
    public PulseTrain edges(SampledSignal signal, long endNanos) {
        boolean high = signal.size() > 0 && signal.value(0) >= (low + this.high) / 2;
        PulseTrain.Builder train = PulseTrain.builder();
        for (int i = 1; i < signal.size(); i++) {
            if (high(signal.value(i), high) != high) {
                train.stay(high, Math.max(0, crossingNanos(signal, i, high ? low : this.high) - train.nowNanos()));
                high = !high;
            }
        }
        return train.stay(high, endNanos - train.nowNanos()).build();
    }

    private static long crossingNanos(SampledSignal signal, int index, double mark) {
        double before = signal.value(index - 1);
        double share = (mark - before) / (signal.value(index) - before);
        long from = signal.atNanos(index - 1);
        // A noisy sample may jump over both marks at once; the place stays between the two samples.
        return from + (long) ((signal.atNanos(index) - from) * Math.min(1, Math.max(0, share)));
    }
}
