package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * The self-test output as a voltage: a driver pulls it low while the level is lit, a resistor pulls it up to a supply
 * while it is dark. The fall is immediate; the rise is exponential, since the resistor charges the wire. The wire is
 * taken to follow a changing supply at once.
 *
 * @param pullUp what the resistor hangs on
 * @param saturationVolts what is left at the driver when it is on, 0 to 5
 * @param riseNanos resistance times capacitance: the time to 63 % of the rise
 * @param noiseVolts standard deviation of normal noise on every sample, 0 to 10
 */
public record Wire(Supply pullUp, double saturationVolts, long riseNanos, double noiseVolts) {
    public Wire {
        Bounds.check("saturation volts", saturationVolts, 0, 5);
        Bounds.checkNotNegative("rise time", riseNanos);
        Bounds.check("noise volts", noiseVolts, 0, 10);
    }

    /**
     * The voltage from the start, evenly spaced.
     *
     * @param samplesPerSecond from 0.001 to ten million
     * @param chance a stream of this wire's own, for the noise
     */
    public SampledSignal volts(PulseTrain drive, double samplesPerSecond, Chance chance) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] values = new double[clock.count()];
        double fadePerSample = fade(1e9 / samplesPerSecond);
        double missing = 0; // share of the rise that is still to come
        boolean low = drive.litAtStart();
        int edge = 0;
        for (int i = 0; i < values.length; i++) {
            long at = clock.atNanos(i);
            missing *= fadePerSample;
            for (; edge < drive.edgeCount() && drive.edgeNanos(edge) <= at; edge++) {
                low = !low;
                missing = fade((double) (at - drive.edgeNanos(edge)));
            }
            double rise = low ? 0 : 1 - missing;
            double noise = noiseVolts == 0 ? 0 : noiseVolts * chance.nextNormal();
            values[i] = saturationVolts + rise * (pullUp.voltsAt(at) - saturationVolts) + noise;
        }
        return SampledSignal.of(clock.all(), values);
    }

    /**
     * What a logic input makes of the wire.
     *
     * @param marks in volts: lit below the lower, dark from the upper
     * @param samplesPerSecond how often it looks; crossings lie on straight lines between
     * @param chance a stream of this wire's own, for the noise
     */
    public PulseTrain logic(PulseTrain drive, Hysteresis marks, double samplesPerSecond, Chance chance) {
        return marks.edges(volts(drive, samplesPerSecond, chance), drive.endNanos())
                .inverted();
    }

    private double fade(double nanos) {
        return riseNanos == 0 ? 0 : StrictMath.exp(-nanos / riseNanos);
    }
}
