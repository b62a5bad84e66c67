package telltally.simulator.signal;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;

/**
 * Alternating levels with the instants at which they change. Immutable; a level at 0, strictly increasing edges after
 * 0, and an end that is later than the last edge.
 */
public final class PulseTrain {
    private final boolean litAtStart;
    private final long[] edgesNanos;
    private final long endNanos;

    private PulseTrain(boolean litAtStart, long[] edgesNanos, long endNanos) {
        this.litAtStart = litAtStart;
        this.edgesNanos = edgesNanos;
        this.endNanos = endNanos;
    }

    /**
     * @param litAtStart the level at instant 0
     * @param endNanos the end of the recording, after the last edge
     * @param edgesNanos the instants of change, each in (0, endNanos), strictly increasing
     * @throws IllegalArgumentException if the instants are not so ordered
     */
    public static PulseTrain of(boolean litAtStart, long endNanos, long... edgesNanos) {
        long before = 0;
        for (long edgeNanos : edgesNanos) {
            if (edgeNanos <= before) {
                throw new IllegalArgumentException(
                        "edges must increase from 0: " + edgeNanos + " ns after " + before + " ns");
            }
            before = edgeNanos;
        }
        if (endNanos <= before) {
            throw new IllegalArgumentException("the end at " + endNanos + " ns is not after " + before + " ns");
        }
        return new PulseTrain(litAtStart, edgesNanos.clone(), endNanos);
    }

    /** A train that grows by stretches of one level; neighbouring stretches of the same level become one. */
    public static Builder builder() {
        return new Builder();
    }

    public boolean litAtStart() {
        return litAtStart;
    }

    public boolean litAtEnd() {
        return litAtStart ^ (edgesNanos.length % 2 == 1);
    }

    public int edgeCount() {
        return edgesNanos.length;
    }

    /** The instant of an edge, counted from 0. */
    public long edgeNanos(int index) {
        return edgesNanos[index];
    }

    public long endNanos() {
        return endNanos;
    }

    /**
     * The level at an instant; an edge belongs to the level that begins with it. Before 0 the level of the start holds,
     * at and after the end the last one.
     */
    public boolean litAt(long atNanos) {
        int found = Arrays.binarySearch(edgesNanos, atNanos);
        int edgesBy = found >= 0 ? found + 1 : -found - 1;
        return litAtStart ^ (edgesBy % 2 == 1);
    }

    /** The first edge after an instant; {@code Long.MAX_VALUE} where there is none. */
    public long nextEdgeAfter(long atNanos) {
        int found = Arrays.binarySearch(edgesNanos, atNanos);
        int next = found >= 0 ? found + 1 : -found - 1;
        return next < edgesNanos.length ? edgesNanos[next] : Long.MAX_VALUE;
    }

    /** How long the level was lit within a window, which may reach beyond the train: levels there count as dark. */
    public long litNanosBetween(long fromNanos, long toNanos) {
        long from = Math.max(0, fromNanos);
        long to = Math.min(endNanos, toNanos);
        if (to <= from) {
            return 0;
        }
        int found = Arrays.binarySearch(edgesNanos, from);
        int edge = found >= 0 ? found + 1 : -found - 1;
        boolean lit = litAtStart ^ (edge % 2 == 1);
        long litNanos = 0;
        long at = from;
        while (at < to) {
            long next = edge < edgesNanos.length ? Math.min(edgesNanos[edge], to) : to;
            if (lit) {
                litNanos += next - at;
            }
            at = next;
            lit = !lit;
            edge++;
        }
        return litNanos;
    }

    /** Every flash and gap in order, from 0 to the end; a view that costs nothing. */
    public List<Interval> intervals() {
        return new AbstractList<>() {
            @Override
            public Interval get(int index) {
                long start = index == 0 ? 0 : edgesNanos[index - 1];
                long end = index == edgesNanos.length ? endNanos : edgesNanos[index];
                return new Interval(litAtStart ^ (index % 2 == 1), start, end);
            }

            @Override
            public int size() {
                return edgesNanos.length + 1;
            }
        };
    }

    /** The same instants with lit and dark exchanged. */
    public PulseTrain inverted() {
        return new PulseTrain(!litAtStart, edgesNanos, endNanos);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PulseTrain that
                && litAtStart == that.litAtStart
                && endNanos == that.endNanos
                && Arrays.equals(edgesNanos, that.edgesNanos);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(edgesNanos) + Long.hashCode(endNanos)) + Boolean.hashCode(litAtStart);
    }

    /** Readable in a failing test: level, then the instants in seconds. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(litAtStart ? "lit" : "dark");
        for (long edgeNanos : edgesNanos) {
            text.append(' ').append(Seconds.text(edgeNanos));
        }
        return text.append(" end ").append(Seconds.text(endNanos)).toString();
    }

    /** Grows a train stretch by stretch. Not for sharing between threads. */
    public static final class Builder {
        private long[] edgesNanos = new long[64];
        private int edges;
        private long nowNanos;
        private boolean litAtStart;
        private boolean lit;

        private Builder() {}

        /** Where the next stretch begins, in nanoseconds from the start. */
        public long nowNanos() {
            return nowNanos;
        }

        /**
         * Adds a stretch of one level.
         *
         * @throws IllegalArgumentException if the length is negative; a length of 0 adds nothing
         */
        public Builder stay(boolean level, long lengthNanos) {
            if (lengthNanos < 0) {
                throw new IllegalArgumentException("a stretch cannot last " + lengthNanos + " ns");
            }
            if (lengthNanos == 0) {
                return this;
            }
            if (nowNanos == 0) {
                litAtStart = level;
            } else if (level != lit) {
                if (edges == edgesNanos.length) {
                    edgesNanos = Arrays.copyOf(edgesNanos, 2 * edges);
                }
                edgesNanos[edges++] = nowNanos;
            }
            lit = level;
            nowNanos = Math.addExact(nowNanos, lengthNanos);
            return this;
        }

        public Builder lit(long lengthNanos) {
            return stay(true, lengthNanos);
        }

        public Builder dark(long lengthNanos) {
            return stay(false, lengthNanos);
        }

        /** @throws IllegalStateException if nothing was added */
        public PulseTrain build() {
            if (nowNanos == 0) {
                throw new IllegalStateException("a pulse train needs a length");
            }
            return new PulseTrain(litAtStart, Arrays.copyOf(edgesNanos, edges), nowNanos);
        }
    }
}
