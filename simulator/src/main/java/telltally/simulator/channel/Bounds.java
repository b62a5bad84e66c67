package telltally.simulator.channel;

/** What a strength may be. A scenario's author never sees these texts: files are checked where they are read. */
final class Bounds {
    private Bounds() {}

    static void check(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " must be from " + least + " to " + most + ", not " + value);
        }
    }

    static void checkNotNegative(String what, long nanos) {
        if (nanos < 0) {
            throw new IllegalArgumentException(what + " cannot be " + nanos + " ns");
        }
    }

    static void checkPositive(String what, long nanos) {
        if (nanos <= 0) {
            throw new IllegalArgumentException(what + " must be longer than " + nanos + " ns");
        }
    }
}
