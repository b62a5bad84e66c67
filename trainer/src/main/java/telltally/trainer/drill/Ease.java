package telltally.trainer.drill;

/**
 * What a level makes of a task. One table for all skills, so that a nine counted at some level is the same task wherever
 * it stands. All of it is a choice, no source; only the direction is given: the full level is what a vehicle does, and
 * pauses are widened more than flashes are slowed, since slow flashes hardly help (telegraphy is taught so: Bloom,
 * "Standard for Morse Timing Using the Farnsworth Technique", QEX 1990).
 */
record Ease(Level level) {
    private static final int[] MOST_FLASHES = {3, 4, 5, 6, 6, 7, 7, 8, 9, 9};
    private static final double SLOWEST = 1.2;
    private static final double WIDEST = 1.8;

    /** The largest digit. */
    int mostFlashes() {
        return MOST_FLASHES[level.value() - 1];
    }

    /** How much longer than nominal everything lasts. */
    double clock() {
        return between(SLOWEST, 1);
    }

    /** How much longer than nominal the gaps last that have to be told from the next shorter kind. */
    double gapStretch() {
        return between(WIDEST, 1);
    }

    /** A number that changes evenly from the easiest to the full level. */
    double between(double easiest, double full) {
        return easiest + (full - easiest) * level.share();
    }

    int count(int easiest, int full) {
        return (int) Math.round(between(easiest, full));
    }
}
