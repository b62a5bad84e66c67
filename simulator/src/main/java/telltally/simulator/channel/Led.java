package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * A light-emitting diode with its resistor: at once at full light. The light grows evenly from a threshold voltage to
 * the rated one and on.
 *
 * @param supplyVolts what it is connected to while lit, 0 to 300
 * @param thresholdVolts below this it stays dark, 0 or more
 * @param ratedVolts full light, more than the threshold
 */
public record Led(double supplyVolts, double thresholdVolts, double ratedVolts) implements Lamp {
    public Led {
        Bounds.check("supply volts", supplyVolts, 0, 300);
        Bounds.check("threshold volts", thresholdVolts, 0, 300);
        if (!(ratedVolts > thresholdVolts && ratedVolts <= 300)) {
            throw new IllegalArgumentException("rated volts must be above " + thresholdVolts + ", not " + ratedVolts);
        }
    }

    /** A red one for 12 V, dark below 1.8 V. */
    public static Led at(double supplyVolts) {
        return new Led(supplyVolts, 1.8, 12);
    }

    public double steadyLight() {
        return Math.max(0, (supplyVolts - thresholdVolts) / (ratedVolts - thresholdVolts));
    }

    @Override
    public String kind() {
        return "led";
    }

    @Override
    public PulseTrain visible(PulseTrain drive) {
        boolean shines = steadyLight() >= FilamentLamp.FAINTEST_LIGHT;
        return shines ? drive : PulseTrain.of(false, drive.endNanos());
    }

    @Override
    public SampledSignal light(PulseTrain drive, double samplesPerSecond) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] levels = new double[clock.count()];
        boolean lit = drive.litAtStart();
        int edge = 0;
        for (int i = 0; i < levels.length; i++) {
            while (edge < drive.edgeCount() && drive.edgeNanos(edge) <= clock.atNanos(i)) {
                lit = !lit;
                edge++;
            }
            levels[i] = lit ? steadyLight() : 0;
        }
        return SampledSignal.of(clock.all(), levels);
    }
}
