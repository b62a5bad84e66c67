package telltally.trainer.playback;

import telltally.simulator.signal.SampledSignal;

/**
 * A signal known by evenly spaced samples, each of which holds until the next, so that nothing shows before its time. The
 * running integral is kept, so that a mean costs the same for any stretch.
 */
final class SampledDisplay implements DisplaySignal {
    static final double SAMPLES_PER_SECOND = 500;

    private static final double LEAST = 1e-6;
    private static final double STEP_NANOS = 1e9 / SAMPLES_PER_SECOND;

    private final float[] values;

    /** The integral up to each sample, in steps. */
    private final double[] before;

    /**
     * @param samples from 0 on, {@value #SAMPLES_PER_SECOND} a second
     * @param whole the value that is shown as 1
     */
    SampledDisplay(SampledSignal samples, double whole) {
        values = new float[samples.size()];
        before = new double[samples.size() + 1];
        for (int i = 0; i < values.length; i++) {
            double value = samples.value(i) / whole;
            // A cold filament sends a little light too, in the books.
            values[i] = value < LEAST ? 0 : (float) value;
            before[i + 1] = before[i] + values[i];
        }
    }

    @Override
    public double mean(long fromNanos, long toNanos) {
        double from = fromNanos / STEP_NANOS;
        double to = toNanos / STEP_NANOS;
        return (until(to) - until(from)) / (to - from);
    }

    private double until(double step) {
        int whole = (int) Math.min(step, values.length);
        double rest = step - whole;
        if (whole == 0) {
            return values.length == 0 ? 0 : values[0] * rest;
        }
        return before[whole] + rest * values[Math.min(whole, values.length - 1)];
    }
}
