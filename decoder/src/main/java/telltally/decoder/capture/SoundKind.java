package telltally.decoder.capture;

/** What a sound recording holds. */
public enum SoundKind {
    /** Found out from the data. */
    AUTO,
    /** A tone or buzz while lit. */
    TONE,
    /** A relay that clicks at every change. */
    CLICKS,
    /** The wire's voltage on a sound input, which may let no steady voltage through. */
    VOLTAGE
}
