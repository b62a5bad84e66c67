package telltally.trainer.command;

/** What Telltally's exit status says; scripts rely on it. */
final class ExitStatus {
    static final int DONE = 0;
    /** The thing checked fell short. */
    static final int FELL_SHORT = 1;
    /** Bad usage or bad input. */
    static final int BAD_INPUT = 2;
    /** A fault in Telltally itself. */
    static final int FAULT = 3;

    private ExitStatus() {}
}
