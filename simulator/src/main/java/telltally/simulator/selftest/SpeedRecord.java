package telltally.simulator.selftest;

import java.util.Arrays;
import java.util.Optional;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.vehicle.SpeedTrace;

/** Mean crankshaft speed of each cycle, over every run of the engine, at instants of the recording. */
final class SpeedRecord {
    private long[] atNanos = new long[0];
    private double[] rpm = new double[0];

    /** The engine begins to turn: speed 0 until the first cycle has ended. */
    void begin(long nanos) {
        add(nanos, 0);
    }

    void take(SpeedTrace trace, long startNanos) {
        int size = rpm.length;
        atNanos = Arrays.copyOf(atNanos, size + trace.size());
        rpm = Arrays.copyOf(rpm, size + trace.size());
        int kept = size;
        for (int i = 0; i < trace.size(); i++) {
            long at = startNanos + trace.atNanos(i);
            if (kept == 0 || at > atNanos[kept - 1]) {
                atNanos[kept] = at;
                rpm[kept++] = trace.rpm(i);
            }
        }
        atNanos = Arrays.copyOf(atNanos, kept);
        rpm = Arrays.copyOf(rpm, kept);
    }

    SpeedRecord copy() {
        SpeedRecord copy = new SpeedRecord();
        copy.atNanos = atNanos.clone();
        copy.rpm = rpm.clone();
        return copy;
    }

    /** Empty where no engine ran. */
    Optional<SampledSignal> signal() {
        return rpm.length == 0 ? Optional.empty() : Optional.of(SampledSignal.of(atNanos, rpm));
    }

    private void add(long nanos, double value) {
        int size = rpm.length;
        if (size > 0 && nanos <= atNanos[size - 1]) {
            return;
        }
        atNanos = Arrays.copyOf(atNanos, size + 1);
        rpm = Arrays.copyOf(rpm, size + 1);
        atNanos[size] = nanos;
        rpm[size] = value;
    }
}
