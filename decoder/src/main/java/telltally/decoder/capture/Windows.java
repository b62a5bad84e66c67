package telltally.decoder.capture;

/** For every sample the samples near it in time. */
final class Windows {
    /**
     * Either side: together longer than the longest lit stretch and most pauses of any flash format, shorter than
     * daylight takes to change by much.
     */
    static final long HALF_NANOS = 3_000_000_000L;

    private final int[] from;
    private final int[] to;

    Windows(long[] atNanos) {
        from = new int[atNanos.length];
        to = new int[atNanos.length];
        int first = 0;
        int after = 0;
        for (int i = 0; i < atNanos.length; i++) {
            while (atNanos[i] - atNanos[first] > HALF_NANOS) {
                first++;
            }
            while (after < atNanos.length && atNanos[after] - atNanos[i] <= HALF_NANOS) {
                after++;
            }
            from[i] = first;
            to[i] = after;
        }
    }

    int size() {
        return from.length;
    }

    int from(int index) {
        return from[index];
    }

    /** The first one after. */
    int to(int index) {
        return to[index];
    }

    double[] lowest(double[] values) {
        double[] negative = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            negative[i] = -values[i];
        }
        double[] out = highest(negative);
        for (int i = 0; i < out.length; i++) {
            out[i] = -out[i];
        }
        return out;
    }

    /** The greatest value near each sample; a queue of falling values makes it one pass. */
    double[] highest(double[] values) {
        double[] out = new double[values.length];
        int[] queue = new int[values.length];
        int head = 0;
        int tail = 0;
        int next = 0;
        for (int i = 0; i < values.length; i++) {
            for (; next < to[i]; next++) {
                while (tail > head && values[queue[tail - 1]] <= values[next]) {
                    tail--;
                }
                queue[tail++] = next;
            }
            while (queue[head] < from[i]) {
                head++;
            }
            out[i] = values[queue[head]];
        }
        return out;
    }
}
