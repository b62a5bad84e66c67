package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * A relay that switches with the level: a fading ring at every edge, softer when it lets go. Rings add up; what goes
 * beyond 1 is cut off.
 *
 * @param hertz of the ring, 100 to 10 000
 * @param fadeNanos time in which it fades to 1/e
 * @param pullAmplitude when the level becomes lit, 0 to 1
 * @param releaseAmplitude when it becomes dark, 0 to 1
 */
public record RelayClick(double hertz, long fadeNanos, double pullAmplitude, double releaseAmplitude)
        implements Sounder {
    public RelayClick {
        Bounds.check("frequency of a click", hertz, 100, 10_000);
        Bounds.checkPositive("the fading of a click", fadeNanos);
        Bounds.check("amplitude", pullAmplitude, 0, 1);
        Bounds.check("amplitude", releaseAmplitude, 0, 1);
    }

    /** 1800 Hz, gone in a few milliseconds, half as loud when it lets go; no source. */
    public static RelayClick usual() {
        return new RelayClick(1800, 2_000_000, 0.8, 0.4);
    }

    @Override
    public SampledSignal sound(PulseTrain drive, double samplesPerSecond) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] values = new double[clock.count()];
        Pointer ring = new Pointer(0, 0);
        Pointer perSample = pointer(1e9 / samplesPerSecond);
        int edge = 0;
        for (int i = 0; i < values.length; i++) {
            ring = ring.times(perSample);
            for (; edge < drive.edgeCount() && drive.edgeNanos(edge) <= clock.atNanos(i); edge++) {
                boolean pulls = drive.litAtStart() ^ (edge % 2 == 0);
                Pointer struck = pointer((double) (clock.atNanos(i) - drive.edgeNanos(edge)));
                ring = ring.plus(struck, pulls ? pullAmplitude : releaseAmplitude);
            }
            values[i] = Math.max(-1, Math.min(1, ring.sin));
        }
        return SampledSignal.of(clock.all(), values);
    }

    /** A ring of amplitude 1 some time after its beginning. */
    private Pointer pointer(double nanos) {
        double size = StrictMath.exp(-nanos / fadeNanos);
        double angle = 2 * Math.PI * hertz * nanos / 1e9;
        return new Pointer(size * StrictMath.cos(angle), size * StrictMath.sin(angle));
    }

    private record Pointer(double cos, double sin) {
        Pointer times(Pointer turn) {
            return new Pointer(cos * turn.cos - sin * turn.sin, sin * turn.cos + cos * turn.sin);
        }

        Pointer plus(Pointer other, double share) {
            return new Pointer(cos + share * other.cos, sin + share * other.sin);
        }
    }
}
