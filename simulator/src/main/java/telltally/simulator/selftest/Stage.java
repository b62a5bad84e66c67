package telltally.simulator.selftest;

/**
 * What the controller is doing. A stage says what the output shows, when it ends by itself and what it makes of the
 * operator's acts; everything it does not answer changes nothing.
 */
abstract class Stage {
    static final long NEVER = Long.MAX_VALUE;

    private final long sinceNanos;

    Stage(long sinceNanos) {
        this.sinceNanos = sinceNanos;
    }

    final long sinceNanos() {
        return sinceNanos;
    }

    /** When {@link #elapsed} is to be called; never by default. */
    long untilNanos() {
        return NEVER;
    }

    /** The end that was asked for has come. */
    void elapsed(Controller controller) {}

    /** Writes the output from where it is to an instant. */
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.hold(controller.intermittentShows(), untilNanos);
    }

    /** The jumper was put in. */
    void jumperIn(Controller controller) {}

    /** The jumper was pulled. */
    void jumperOut(Controller controller) {}

    /** The throttle moved. */
    void throttle(Controller controller, double fromShare, double toShare) {}

    /** This stage is left because of the operator: key off, jumper out, stall. */
    void interrupted(Controller controller) {}

    /** Whether an open circuit lights the lamp at once, as in the wiggle check. */
    boolean wiggleCheck() {
        return false;
    }
}
