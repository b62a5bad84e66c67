package telltally.decoder.capture;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import telltally.simulator.trace.Sound;

/** The strongest frequency of a sound where it is loudest. */
final class Pitch {
    private static final int STRETCHES = 16;
    private static final double STRETCH_SECONDS = 0.05;
    /** Below lies hum. */
    private static final double LEAST_HERTZ = 150;

    private Pitch() {}

    /** In hertz; 0 where the sound is shorter than a stretch of about 50 ms or silent. */
    static double of(Sound sound, SoundBlocks blocks) {
        int size = Integer.highestOneBit(Math.max(16, (int) (sound.sampleRateHz() * STRETCH_SECONDS)));
        Spectrum spectrum = new Spectrum(size);
        double[] sum = new double[size / 2 + 1];
        for (int stretch : loudest(sound.size() / size, size, blocks)) {
            double[] samples = new double[size];
            for (int i = 0; i < size; i++) {
                samples[i] = sound.sample(stretch * size + i);
            }
            double[] power = spectrum.power(samples);
            for (int bin = 0; bin < sum.length; bin++) {
                sum[bin] += power[bin];
            }
        }
        return peakBin(sum, LEAST_HERTZ * size / sound.sampleRateHz()) * sound.sampleRateHz() / size;
    }

    private static List<Integer> loudest(int stretches, int size, SoundBlocks blocks) {
        double[] power = new double[stretches];
        for (int block = 0; block < blocks.count(); block++) {
            int stretch = block * blocks.blockSamples / size;
            if (stretch < stretches) {
                power[stretch] += blocks.loudness[block] * blocks.loudness[block];
            }
        }
        return IntStream.range(0, stretches)
                .boxed()
                .sorted(Comparator.comparingDouble(stretch -> -power[stretch]))
                .limit(STRETCHES)
                .toList();
    }

    /** The greatest bin, refined by the parabola through the logarithms of its neighbours. */
    private static double peakBin(double[] power, double least) {
        int peak = 0;
        double most = 0;
        for (int bin = (int) Math.ceil(least); bin < power.length - 1; bin++) {
            if (bin > 0 && power[bin] > most) {
                peak = bin;
                most = power[bin];
            }
        }
        if (peak == 0 || power[peak - 1] <= 0 || power[peak + 1] <= 0) {
            return peak;
        }
        double before = StrictMath.log(power[peak - 1]);
        double at = StrictMath.log(power[peak]);
        double after = StrictMath.log(power[peak + 1]);
        double bend = before - 2 * at + after;
        return bend >= 0 ? peak : peak + Math.max(-0.5, Math.min(0.5, 0.5 * (before - after) / bend));
    }
}
