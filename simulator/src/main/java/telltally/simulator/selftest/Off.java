package telltally.simulator.selftest;

/** The key is off. */
final class Off extends Stage {
    Off(long sinceNanos) {
        super(sinceNanos);
    }

    @Override
    boolean keyIsOn() {
        return false;
    }
}
