package telltally.simulator.selftest;

import java.util.Arrays;
import java.util.Optional;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.vehicle.SpeedTrace;

/** Mean crankshaft speed of each cycle, over every run of the engine, at instants of the recording. */
final class SpeedRecord {
    private long[] atNanos = new long[0];
    private double[] rpm = new double[0];

    /** The crankshaft stands at this instant: an engine is about to start, or was stopped. */
    void stands(long nanos) {
        int size = rpm.length;
        if (size > 0 && nanos <= atNanos[size - 1]) {
            return;
        }
        atNanos = Arrays.copyOf(atNanos, size + 1);
        rpm = Arrays.copyOf(rpm, size + 1);
        atNanos[size] = nanos;
    }

    /** @param startNanos of the engine's own time */
    void take(SpeedTrace trace, long startNanos) {
        int size = rpm.length;
        atNanos = Arrays.copyOf(atNanos, size + trace.size());
        rpm = Arrays.copyOf(rpm, size + trace.size());
        for (int i = 0; i < trace.size(); i++) {
            atNanos[size + i] = startNanos + trace.atNanos(i);
            rpm[size + i] = trace.rpm(i);
        }
    }

    /** The same and another run. */
    SpeedRecord with(SpeedTrace trace, long startNanos) {
        SpeedRecord more = new SpeedRecord();
        more.atNanos = atNanos;
        more.rpm = rpm;
        more.take(trace, startNanos);
        return more;
    }

    /** Empty where no engine ran. */
    Optional<SampledSignal> signal() {
        return rpm.length == 0 ? Optional.empty() : Optional.of(SampledSignal.of(atNanos, rpm));
    }
}
