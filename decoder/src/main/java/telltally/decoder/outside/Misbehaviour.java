package telltally.decoder.outside;

import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failure;

/** A program did not do what the protocol asks; it must be started anew before it is asked again. */
final class Misbehaviour extends Exception {
    private static final int SHOWN_AT_MOST = 300;

    private final Failure failure;
    private final String detail;

    /** @param detail one line; cut where it is very long */
    Misbehaviour(Failure failure, String detail) {
        super(detail);
        this.failure = failure;
        this.detail = detail.length() > SHOWN_AT_MOST ? detail.substring(0, SHOWN_AT_MOST) + "..." : detail;
    }

    Outcome.Failed outcome() {
        return new Outcome.Failed(failure, detail);
    }
}
