package telltally.simulator.channel;

import java.util.function.LongUnaryOperator;
import telltally.simulator.signal.PulseTrain;

/** A pulse train on another time scale. */
final class Warp {
    private Warp() {}

    /** Moves every edge and the end by a rising function; what rounding would let fall together stays 1 ns apart. */
    static PulseTrain of(PulseTrain train, LongUnaryOperator scale) {
        long[] edges = new long[train.edgeCount()];
        long before = 0;
        for (int i = 0; i < edges.length; i++) {
            before = Math.max(before + 1, scale.applyAsLong(train.edgeNanos(i)));
            edges[i] = before;
        }
        long end = Math.max(before + 1, scale.applyAsLong(train.endNanos()));
        return PulseTrain.of(train.litAtStart(), end, edges);
    }
}
