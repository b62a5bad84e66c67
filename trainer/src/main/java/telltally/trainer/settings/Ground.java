package telltally.trainer.settings;

/** What the signal is seen against. */
public enum Ground {
    /** The plate of the theme. */
    PLATE,
    /** A cabin by night. */
    BLACK,
    GREY,
    /** A dash in sunlight, on which a lamp is hard to see. */
    PALE
}
