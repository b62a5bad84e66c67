package telltally.simulator.signal;

/** One flash or one gap. Instants from the start of the recording; the end is not part of it. */
public record Interval(boolean lit, long startNanos, long endNanos) {
    public Interval {
        if (endNanos <= startNanos) {
            throw new IllegalArgumentException("an interval needs a length: " + startNanos + " to " + endNanos + " ns");
        }
    }

    public long lengthNanos() {
        return endNanos - startNanos;
    }
}
