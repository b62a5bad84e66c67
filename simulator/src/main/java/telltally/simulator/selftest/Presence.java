package telltally.simulator.selftest;

/** When a fault is there. */
public sealed interface Presence {
    /** Whether the circuit is faulty at this instant. */
    boolean activeAt(long nanos);

    /** Whether the controller has seen it on an earlier drive. */
    boolean remembered();

    /** Always. */
    record Hard() implements Presence {
        @Override
        public boolean activeAt(long nanos) {
            return true;
        }

        @Override
        public boolean remembered() {
            return true;
        }
    }

    /** Not any more. */
    record Remembered() implements Presence {
        @Override
        public boolean activeAt(long nanos) {
            return false;
        }

        @Override
        public boolean remembered() {
            return true;
        }
    }

    /** Only while somebody moves the named connector, and then by fits and starts: the bench says when. */
    record Wiggled(String connector, boolean remembered) implements Presence {
        @Override
        public boolean activeAt(long nanos) {
            return false;
        }
    }

    /** Comes and goes: there from the start of each period for a time. */
    record Recurring(long periodNanos, long lengthNanos, boolean remembered) implements Presence {
        public Recurring {
            if (lengthNanos <= 0 || periodNanos <= lengthNanos) {
                throw new IllegalArgumentException(
                        "a recurring fault is there for a part of its period: " + lengthNanos + " of " + periodNanos);
            }
        }

        @Override
        public boolean activeAt(long nanos) {
            return Math.floorMod(nanos, periodNanos) < lengthNanos;
        }

        /** The next instant after this one at which it comes or goes. */
        long changeAfter(long nanos) {
            long start = nanos - Math.floorMod(nanos, periodNanos);
            return nanos - start < lengthNanos ? start + lengthNanos : start + periodNanos;
        }
    }
}
