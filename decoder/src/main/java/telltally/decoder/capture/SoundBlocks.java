package telltally.decoder.capture;

import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

/**
 * A sound in blocks of a millisecond: what is slow (below about 150 Hz, where voltages live) and how strong the rest is
 * (where tones and clicks live). One pass over the samples.
 */
final class SoundBlocks {
    private static final double PARTING_HERTZ = 150;

    final int blockSamples;
    /** Mean of the slow part by block. */
    final double[] slow;
    /** Root mean square of the rest by block. */
    final double[] loudness;

    private final Sound sound;

    SoundBlocks(Sound sound) {
        this.sound = sound;
        blockSamples = Math.max(1, (int) Math.round(sound.sampleRateHz() / 1000.0));
        int blocks = sound.size() / blockSamples;
        slow = new double[blocks];
        loudness = new double[blocks];
        // One pole, from the first sample, so that a steady voltage does not look like a jump at the start.
        double keep = StrictMath.exp(-2 * Math.PI * PARTING_HERTZ / sound.sampleRateHz());
        double low = sound.sample(0);
        for (int block = 0; block < blocks; block++) {
            double sum = 0;
            double power = 0;
            int end = (block + 1) * blockSamples;
            for (int i = block * blockSamples; i < end; i++) {
                double value = sound.sample(i);
                low = value + keep * (low - value);
                double rest = value - low;
                sum += low;
                power += rest * rest;
            }
            slow[block] = sum / blockSamples;
            loudness[block] = Math.sqrt(power / blockSamples);
        }
    }

    int count() {
        return slow.length;
    }

    /** The middle of a block; of the first one the start, so that time counts from there. */
    long atNanos(int block) {
        return block == 0 ? 0 : sound.atNanos(block * blockSamples + blockSamples / 2);
    }

    SampledSignal signal(double[] byBlock) {
        long[] atNanos = new long[byBlock.length];
        for (int block = 0; block < atNanos.length; block++) {
            atNanos[block] = atNanos(block);
        }
        return SampledSignal.of(atNanos, byBlock);
    }

    /** Share of the power that is slow, where it is loudest: pauses, however long, say nothing. */
    double slowShareWhereLoud() {
        double rest = new Quantiles(slow).median();
        double most = 0;
        for (int block = 0; block < count(); block++) {
            most = Math.max(most, power(block, rest));
        }
        double slowSum = 0;
        double sum = 0;
        for (int block = 0; block < count(); block++) {
            if (power(block, rest) >= most / 10) {
                double off = slow[block] - rest;
                slowSum += off * off;
                sum += power(block, rest);
            }
        }
        return sum == 0 ? 0 : slowSum / sum;
    }

    private double power(int block, double rest) {
        double off = slow[block] - rest;
        return off * off + loudness[block] * loudness[block];
    }
}
