package telltally.simulator.channel;

import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** One needle following one train, stretch by stretch, each in closed form. */
final class NeedleSwing {
    /** Looks per natural period for a crossing; the curve between two looks is a cubic to within 1e-5 of a deflection. */
    private static final int LOOKS = 32;

    private static final double STILL = 1e-7;

    private final MeterNeedle needle;
    private final PulseTrain drive;
    private double deflection;
    private double speed;

    NeedleSwing(MeterNeedle needle, PulseTrain drive) {
        this.needle = needle;
        this.drive = drive;
        this.deflection = drive.litAtStart() ? 1 : 0;
    }

    SampledSignal sampled(double samplesPerSecond) {
        SampleClock clock = new SampleClock(samplesPerSecond, drive.endNanos());
        double[] values = new double[clock.count()];
        NeedleStep period = step(1e9 / samplesPerSecond);
        int sample = 0;
        for (Interval stretch : drive.intervals()) {
            double target = stretch.lit() ? 1 : 0;
            long now = stretch.startNanos();
            for (boolean first = true;
                    sample < values.length && clock.atNanos(sample) < stretch.endNanos();
                    sample++, first = false) {
                move(first ? step((double) (clock.atNanos(sample) - now)) : period, target);
                now = clock.atNanos(sample);
                values[sample] = deflection;
            }
            move(step((double) (stretch.endNanos() - now)), target);
        }
        return SampledSignal.of(clock.all(), values);
    }

    PulseTrain counted() {
        PulseTrain.Builder train = PulseTrain.builder();
        double lookNanos = 1e9 / (LOOKS * needle.naturalHertz());
        NeedleStep look = step(lookNanos);
        boolean up = drive.litAtStart();
        for (Interval stretch : drive.intervals()) {
            double target = stretch.lit() ? 1 : 0;
            double left = stretch.lengthNanos();
            while (left > 0 && !still(target)) {
                double span = Math.min(left, lookNanos);
                double before = deflection;
                double speedBefore = speed;
                move(span == lookNanos ? look : step(span), target);
                if (needle.marks().high(deflection, up) != up) {
                    double mark = up ? needle.marks().low() : needle.marks().high();
                    double share = crossing(before, speedBefore * span / 1e9, deflection, speed * span / 1e9, mark);
                    long at = stretch.endNanos() - (long) (left - share * span);
                    train.stay(up, Math.max(0, at - train.nowNanos()));
                    up = !up;
                }
                left -= span;
            }
        }
        return train.stay(up, drive.endNanos() - train.nowNanos()).build();
    }

    private boolean still(double target) {
        boolean still = Math.abs(deflection - target) < STILL && Math.abs(speed) < STILL;
        if (still) {
            deflection = target;
            speed = 0;
        }
        return still;
    }

    private NeedleStep step(double nanos) {
        return NeedleStep.of(needle.naturalHertz(), needle.damping(), nanos / 1e9);
    }

    private void move(NeedleStep step, double target) {
        double distance = deflection - target;
        deflection = target + step.distance(distance, speed);
        speed = step.speed(distance, speed);
    }

    /** Where, in 0 to 1, the cubic with these values and slopes at its ends meets a mark between them. */
    private static double crossing(double from, double slopeFrom, double to, double slopeTo, double mark) {
        double below = 0;
        double above = 1;
        boolean rising = to > from;
        for (int halving = 0; halving < 30; halving++) {
            double u = (below + above) / 2;
            double v = 1 - u;
            double value = v * v * ((1 + 2 * u) * from + u * slopeFrom) + u * u * ((1 + 2 * v) * to - v * slopeTo);
            if (value < mark == rising) {
                below = u;
            } else {
                above = u;
            }
        }
        return (below + above) / 2;
    }
}
