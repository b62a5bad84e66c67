package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * A steady tone while the level is lit. It grows and fades evenly within 5 ms, so that the ear hears no click; a flash
 * shorter than that does not reach full loudness.
 *
 * @param hertz 20 to 20 000
 * @param amplitude 0 to 1
 */
public record Tone(double hertz, double amplitude) implements Sounder {
    private static final double RAMP_SECONDS = 0.005;

    public Tone {
        Bounds.check("frequency of a tone", hertz, 20, 20_000);
        Bounds.check("amplitude", amplitude, 0, 1);
    }

    @Override
    public SampledSignal sound(PulseTrain drive, double samplesPerSecond) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] values = new double[clock.count()];
        double ramp = 1 / (RAMP_SECONDS * samplesPerSecond);
        // A turning pointer gives the sine without computing one for every sample; over hours it stays within 1e-7.
        double turn = 2 * Math.PI * hertz / samplesPerSecond;
        double turnCos = StrictMath.cos(turn);
        double turnSin = StrictMath.sin(turn);
        double cos = 1;
        double sin = 0;
        double loudness = drive.litAtStart() ? 1 : 0;
        boolean lit = drive.litAtStart();
        int edge = 0;
        for (int i = 0; i < values.length; i++) {
            while (edge < drive.edgeCount() && drive.edgeNanos(edge) <= clock.atNanos(i)) {
                lit = !lit;
                edge++;
            }
            loudness = Math.max(0, Math.min(1, loudness + (lit ? ramp : -ramp)));
            values[i] = amplitude * loudness * sin;
            double turned = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = turned;
        }
        return SampledSignal.of(clock.all(), values);
    }
}
