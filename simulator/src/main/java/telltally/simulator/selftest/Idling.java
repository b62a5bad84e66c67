package telltally.simulator.selftest;

/** The engine runs and no test does. Formats without segments have no running test. */
final class Idling extends Stage {
    Idling(long sinceNanos) {
        super(sinceNanos);
    }

    @Override
    void jumperIn(Controller controller) {
        if (controller.segmented()) {
            controller.enter(CylinderFlashes.begin(controller));
        }
    }
}
