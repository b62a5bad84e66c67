package telltally.simulator.trace;

import java.util.Arrays;
import telltally.simulator.signal.PulseTrain;

/** What is known of the level of a one-bit wire, change by change. */
final class VcdChanges {
    private long[] atNanos = new long[16];
    private boolean[] lit = new boolean[16];
    private int size;

    /** Times must not fall. Of several levels within one nanosecond the last one stays. */
    void add(long nanos, boolean level) {
        if (size > 0 && atNanos[size - 1] == nanos) {
            lit[size - 1] = level;
            return;
        }
        if (size == lit.length) {
            atNanos = Arrays.copyOf(atNanos, 2 * size);
            lit = Arrays.copyOf(lit, 2 * size);
        }
        atNanos[size] = nanos;
        lit[size++] = level;
    }

    /**
     * The train from a start to an end, dark until the first known level.
     *
     * @param lastNanos by how much the train is longer if it changes at the very end, so that the change is in it
     */
    PulseTrain train(long startNanos, long endNanos, long lastNanos) {
        PulseTrain.Builder train = PulseTrain.builder();
        long now = startNanos;
        boolean level = false;
        for (int i = 0; i < size; i++) {
            // Values may stand before the first time: they hold from the start.
            long at = Math.max(startNanos, atNanos[i]);
            train.stay(level, at - now);
            now = at;
            if (now == endNanos && lit[i] != level) {
                return train.stay(lit[i], lastNanos).build();
            }
            level = lit[i];
        }
        return train.stay(level, endNanos - now).build();
    }
}
