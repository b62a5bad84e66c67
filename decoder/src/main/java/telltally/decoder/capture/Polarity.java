package telltally.decoder.capture;

import telltally.simulator.signal.PulseTrain;

/** Which of two levels is lit. */
public enum Polarity {
    /**
     * The higher level, as with light, unless the lengths say otherwise: pauses are the longest stretches and the lamp
     * rests dark (common practice, no source). On a wire that is pulled low while the lamp is lit, both are higher.
     */
    AUTO,
    /** Light: the brighter level is lit. */
    HIGH_IS_LIT,
    /** The self-test output: the driver pulls the wire low while the lamp is lit. */
    LOW_IS_LIT;

    /** @param high lit where the value was high */
    boolean highIsLit(PulseTrain high) {
        return this == HIGH_IS_LIT || (this == AUTO && !looksInverted(high));
    }

    /** Whether the stretches that a train calls lit rather look like pauses. */
    static boolean looksInverted(PulseTrain train) {
        return new PauseEvidence(train).forLit() >= 2;
    }
}
