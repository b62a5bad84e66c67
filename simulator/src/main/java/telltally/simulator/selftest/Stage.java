package telltally.simulator.selftest;

/**
 * What the controller is doing. A stage says what the output shows, when it ends by itself and what it makes of what
 * happens; everything it does not answer changes nothing.
 */
abstract class Stage {
    static final long NEVER = Long.MAX_VALUE;
    static final long SECOND = 1_000_000_000L;

    private final long sinceNanos;

    Stage(long sinceNanos) {
        this.sinceNanos = sinceNanos;
    }

    final long sinceNanos() {
        return sinceNanos;
    }

    /** Whether the key is on, as far as this stage goes. */
    boolean keyIsOn() {
        return true;
    }

    /** When {@link #elapsed} is to be called; never by default. */
    long untilNanos() {
        return NEVER;
    }

    /** The end that was asked for has come. */
    void elapsed(Controller controller) {}

    /** Writes the output from where it is to an instant. */
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.light(false, untilNanos);
    }

    /** The jumper was put in. */
    void jumperIn(Controller controller) {}

    /** The jumper was pulled. */
    void jumperOut(Controller controller) {}

    /** The pedal moved, whether the controller can see it or not. */
    void pedal(Controller controller, double share) {}

    /** The throttle moved, as far as the controller can see: shares of its way, 0 closed, 1 to the floor. */
    void throttle(Controller controller, double fromShare, double toShare) {}

    /** A fault came or went. */
    void circuitsChanged(Controller controller) {}

    /** This stage is left before its end: key off, jumper out, starter, stall, supply lost. */
    void interrupted(Controller controller) {}
}
