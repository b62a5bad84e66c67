package telltally.simulator.selftest;

/** The key is on, the engine off, and no test runs. */
final class Waiting extends Stage {
    Waiting(long sinceNanos) {
        super(sinceNanos);
    }

    @Override
    void jumperIn(Controller controller) {
        controller.enter(EngineOffTest.begin(controller));
    }
}
