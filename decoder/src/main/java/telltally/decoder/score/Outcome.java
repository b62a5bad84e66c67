package telltally.decoder.score;

import telltally.decoder.reading.Reading;

/** What became of one session that a decoder was given. */
public sealed interface Outcome {
    /** It answered. */
    record Read(Reading reading) implements Outcome {}

    /** It did not, or not so that it could be understood; the session counts as read wrong. */
    record Failed(Failure failure, String detail) implements Outcome {}

    /** How a decoder can fail to answer. */
    enum Failure {
        THREW,
        HUNG,
        DIED,
        FLOODED,
        OUT_OF_ORDER,
        RUBBISH
    }
}
