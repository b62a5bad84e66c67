package telltally.decoder.plain;

/**
 * What it costs to explain something, in nats: the negative natural logarithm of how probable it is. Costs add up; the
 * cheapest explanation is the most probable one.
 */
final class Cost {
    /** How far a length strays from its nominal one, as a ratio: 8 %. Careful senders stray less, hands more. */
    static final double SPREAD = 0.08;

    /**
     * An interval of which nothing is known: evenly spread, as a ratio, over five powers of e (0.1 s to 15 s), compared
     * with the peak of a normal law of the usual spread: ln(5 / (0.08 sqrt(2 pi))).
     */
    static final double CHANCE = 3.2;

    /** The most that a single strange length may count; after that it is some accident and no length of that class. */
    static final double ACCIDENT = 12;

    /** A run of flashes that no rule explains. */
    static final double UNREADABLE = 14;

    /** A flash that was sent and not seen: about one in ten thousand. */
    static final double MISSED = 9;

    /** A rule of the format that was not kept: a list sent once that is sent twice, a frame that is not there. */
    static final double RULE_BROKEN = 7;

    private Cost() {}

    /** A length that should be another, both as logarithms. */
    static double of(double length, double nominal) {
        double off = (length - nominal) / SPREAD;
        return off * off / 2;
    }
}
