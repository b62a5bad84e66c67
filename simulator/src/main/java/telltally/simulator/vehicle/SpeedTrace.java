package telltally.simulator.vehicle;

import java.util.Arrays;

/** The mean speed of each whole cycle (720 degrees), at the instant the cycle ended. Grows as its engine runs. */
public final class SpeedTrace {
    private long[] atNanos = new long[64];
    private double[] rpm = new double[64];
    private int size;

    SpeedTrace() {}

    public int size() {
        return size;
    }

    public long atNanos(int index) {
        return atNanos[within(index)];
    }

    public double rpm(int index) {
        return rpm[within(index)];
    }

    void add(long endNanos, double meanRpm) {
        if (size == rpm.length) {
            atNanos = Arrays.copyOf(atNanos, 2 * size);
            rpm = Arrays.copyOf(rpm, 2 * size);
        }
        atNanos[size] = endNanos;
        rpm[size++] = meanRpm;
    }

    private int within(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException("cycle " + index + " of " + size);
        }
        return index;
    }
}
