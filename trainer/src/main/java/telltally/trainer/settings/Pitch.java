package telltally.trainer.settings;

/** How high the sounder beeps; where hearing has gone, it has mostly gone at the top. */
public enum Pitch {
    LOW(440),
    MIDDLE(660),
    HIGH(990);

    private final int hertz;

    Pitch(int hertz) {
        this.hertz = hertz;
    }

    public int hertz() {
        return hertz;
    }
}
