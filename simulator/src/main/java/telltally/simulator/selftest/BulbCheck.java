package telltally.simulator.selftest;

import telltally.simulator.selftest.BenchEvent.Kind;

/** The lamp is lit to show that it can be: no flash. Then, with the jumper in, the engine-off test begins. */
final class BulbCheck extends Stage {
    /** Common practice, no source. */
    private static final long LENGTH_NANOS = 2 * SECOND;

    private BulbCheck(long sinceNanos) {
        super(sinceNanos);
    }

    static BulbCheck begin(Controller controller) {
        controller.event(Kind.BULB_CHECK, "");
        return new BulbCheck(controller.nowNanos());
    }

    @Override
    long untilNanos() {
        return sinceNanos() + LENGTH_NANOS;
    }

    @Override
    void elapsed(Controller controller) {
        controller.enter(controller.jumper() ? EngineOffTest.begin(controller) : new Waiting(controller.nowNanos()));
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.light(true, untilNanos);
    }
}
