package telltally.decoder.card.statistics;

/**
 * Whether a change between two runs over the same cases is more than chance: McNemar 1947, Psychometrika 12:153-157, in its
 * exact form. Cases that came out alike say nothing; of the others, were there no difference, as many would be gained as
 * lost, which makes the number gained binomial with one half.
 */
public final class McNemar {
    private McNemar() {}

    /**
     * The probability of a split at least as uneven, either way, were there no difference.
     *
     * @param gained cases that were wrong before and are right now
     * @param lost cases that were right before and are wrong now
     * @return 0 to 1, correct to about 12 figures; 1 where nothing changed
     */
    public static double pValue(long gained, long lost) {
        if (gained < 0 || lost < 0) {
            throw new IllegalArgumentException(gained + " gained, " + lost + " lost");
        }
        long changed = gained + lost;
        long fewer = Math.min(gained, lost);
        if (gained == lost) {
            return 1;
        }
        // Probabilities relative to that of the middle, so that none needs a factorial; far from it they are 0.
        long middle = changed / 2;
        double weight = 1;
        double below = middle <= fewer ? weight : 0;
        double lower = changed % 2 == 0 ? weight / 2 : weight;
        for (long k = middle; k > 0 && weight > 0; k--) {
            weight *= (double) k / (changed - k + 1);
            lower += weight;
            if (k - 1 <= fewer) {
                below += weight;
            }
        }
        // The lower half holds one half of the whole, whichever way; so twice the tail is the tail's share of that
        // half.
        return Math.min(1, below / lower);
    }
}
