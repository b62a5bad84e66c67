package telltally.decoder.reading;

/** The closed list of what a decoder may warn of; score cards count them. */
public enum WarningKind {
    /** No flash at all. */
    NO_FLASHES("no-flashes"),
    /** Flashes, but no format of the candidates explains them. */
    NO_FORMAT("no-format"),
    /** More than one format explains the flashes about equally well. */
    FORMAT_DOUBTFUL("format-doubtful"),
    /** A dark gap inside a digit that is as long as an unseen flash would make it. */
    MISSED_FLASH("missed-flash"),
    /** A flash too short, or at a place where none belongs. */
    EXTRA_FLASH("extra-flash"),
    /** A gap between two classes. */
    DOUBTFUL_GAP("doubtful-gap"),
    /** A group that is no code of the format. */
    UNREADABLE_GROUP("unreadable-group"),
    /** The sendings of one list differ. */
    REPEATS_DIFFER("repeats-differ"),
    /** The recording begins within a list. */
    STARTS_MIDWAY("starts-midway"),
    /** The recording ends before the list does. */
    STOPS_EARLY("stops-early"),
    /** Short pulses that were left out: bounce, or a fast list for instruments. */
    SHORT_PULSES("short-pulses");

    private final String key;

    WarningKind(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }
}
