package telltally.simulator.selftest;

/** The starter turns and the engine comes up, the lamp lit as at key-on. */
final class Starting extends Stage {
    /** Common practice, no source. */
    private static final long LENGTH_NANOS = 2 * SECOND;

    private Starting(long sinceNanos) {
        super(sinceNanos);
    }

    static Starting begin(Controller controller) {
        return new Starting(controller.nowNanos());
    }

    @Override
    long untilNanos() {
        return sinceNanos() + LENGTH_NANOS;
    }

    @Override
    void elapsed(Controller controller) {
        controller.enter(
                controller.jumper() && controller.segmented()
                        ? CylinderFlashes.begin(controller)
                        : new Idling(controller.nowNanos()));
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.light(true, untilNanos);
    }
}
