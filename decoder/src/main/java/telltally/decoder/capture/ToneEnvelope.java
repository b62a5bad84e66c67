package telltally.decoder.capture;

import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

/**
 * How strong one frequency is over time, by quadrature: the sound times a cosine and a sine of that frequency, each
 * averaged over whole half periods, is half the amplitude in two parts.
 */
final class ToneEnvelope {
    private static final double LEAST_SECONDS = 0.002;

    private ToneEnvelope() {}

    /** The amplitude in blocks of whole half periods, 2 ms or a little longer. */
    static SampledSignal of(Sound sound, double hertz) {
        double halfPeriod = sound.sampleRateHz() / (2 * hertz);
        double halves = Math.ceil(LEAST_SECONDS * 2 * hertz);
        int block = Math.max(1, (int) Math.round(halves * halfPeriod));
        int blocks = sound.size() / block;
        long[] atNanos = new long[blocks];
        double[] amplitudes = new double[blocks];
        double turn = 2 * Math.PI * hertz / sound.sampleRateHz();
        double turnCos = StrictMath.cos(turn);
        double turnSin = StrictMath.sin(turn);
        for (int b = 0; b < blocks; b++) {
            // The amplitude does not depend on the phase with which a block begins.
            double cos = 1;
            double sin = 0;
            double re = 0;
            double im = 0;
            for (int i = b * block; i < (b + 1) * block; i++) {
                double value = sound.sample(i);
                re += value * cos;
                im += value * sin;
                double turned = cos * turnCos - sin * turnSin;
                sin = sin * turnCos + cos * turnSin;
                cos = turned;
            }
            // Of the first block the start, so that time counts from there.
            atNanos[b] = b == 0 ? 0 : sound.atNanos(b * block + block / 2);
            amplitudes[b] = 2 * Math.sqrt(re * re + im * im) / block;
        }
        return SampledSignal.of(atNanos, amplitudes);
    }
}
