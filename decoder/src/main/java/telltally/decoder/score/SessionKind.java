package telltally.decoder.score;

/** What a recording in a format with segments is of. */
public enum SessionKind {
    KEY_ON("key-on"),
    RUNNING("running"),
    BALANCE("balance");

    private final String key;

    SessionKind(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }
}
