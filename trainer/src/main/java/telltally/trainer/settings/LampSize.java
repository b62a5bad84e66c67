package telltally.trainer.settings;

/**
 * How large the signal is drawn.
 *
 * @see #LARGE the largest that a flashing thing may be
 */
public enum LampSize {
    SMALL(96),
    MEDIUM(132),
    /**
     * A circle of this width is a quarter of the block of 341 by 256 pixels that stands for ten degrees of sight (Web
     * Content Accessibility Guidelines, general flash threshold).
     */
    LARGE(166);

    private final int widthPx;

    LampSize(int widthPx) {
        this.widthPx = widthPx;
    }

    /** What changes with the light lies within a circle of this width. */
    public int widthPx() {
        return widthPx;
    }
}
