package telltally.simulator.selftest;

/** The key is on, and the supply too low for the controller to do anything. */
final class NoSupply extends Stage {
    NoSupply(long sinceNanos) {
        super(sinceNanos);
    }
}
