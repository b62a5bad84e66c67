package telltally.decoder.score;

import telltally.simulator.signal.PulseTrain;

/** Where a decoder listens. */
public enum Line {
    /** What was seen of the lamp. */
    LAMP("lamp"),
    /** What was measured at the self-test output. */
    PIN("pin");

    private final String key;

    Line(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }

    public PulseTrain train(SeedCase from) {
        return this == LAMP ? from.lamp() : from.pin();
    }
}
