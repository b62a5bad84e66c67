package telltally.simulator.trace;

import java.util.Arrays;

/** One channel of sound at a steady rate, values from -1 to 1 (floating-point files may go beyond). Immutable. */
public final class Sound {
    /** The highest sampling rate that makes sense here, far above any sound card's. */
    public static final int MOST_HZ = 10_000_000;

    private final int sampleRateHz;
    private final float[] samples;

    private Sound(int sampleRateHz, float[] samples) {
        this.sampleRateHz = sampleRateHz;
        this.samples = samples;
    }

    /**
     * @throws IllegalArgumentException if there is no sample, one is not finite, or the rate is not from 1 to
     *     {@link #MOST_HZ}
     */
    public static Sound of(int sampleRateHz, float... samples) {
        if (sampleRateHz < 1 || sampleRateHz > MOST_HZ) {
            throw new IllegalArgumentException("a rate of " + sampleRateHz + " Hz");
        }
        if (samples.length == 0) {
            throw new IllegalArgumentException("a sound needs a sample");
        }
        for (float sample : samples) {
            if (!Float.isFinite(sample)) {
                throw new IllegalArgumentException("a sample is " + sample);
            }
        }
        return new Sound(sampleRateHz, samples.clone());
    }

    public int sampleRateHz() {
        return sampleRateHz;
    }

    public int size() {
        return samples.length;
    }

    public float sample(int index) {
        return samples[index];
    }

    /** When a sample was taken, rounded down to a nanosecond; that of {@link #size} is the end. */
    public long atNanos(int index) {
        // Whole seconds apart, so that the product stays within 63 bits.
        long seconds = index / sampleRateHz;
        return seconds * 1_000_000_000L + index % sampleRateHz * 1_000_000_000L / sampleRateHz;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sound that && sampleRateHz == that.sampleRateHz && Arrays.equals(samples, that.samples);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(samples) + sampleRateHz;
    }

    @Override
    public String toString() {
        return size() + " samples at " + sampleRateHz + " Hz";
    }
}
