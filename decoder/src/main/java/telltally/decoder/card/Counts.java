package telltally.decoder.card;

import telltally.decoder.score.Score;

/**
 * What became of the sessions that a decoder was given. A session is one case on one line.
 *
 * @param sessionsRight those with nothing missing and nothing invented
 * @param lists the segments that were sent
 * @param listsRight those read with exactly their codes, in the order sent
 * @param codes the codes that were sent, each once per segment
 * @param codesRight those read in their segment
 * @param codesWrong those in whose place another was read
 * @param codesInvented codes read in nobody's place
 */
public record Counts(
        long sessions,
        long sessionsRight,
        long lists,
        long listsRight,
        long codes,
        long codesRight,
        long codesWrong,
        long codesInvented) {
    public static final Counts NOTHING = new Counts(0, 0, 0, 0, 0, 0, 0, 0);

    /** Codes that were sent, and nothing was read in their place. */
    public long codesLost() {
        return codes - codesRight - codesWrong;
    }

    public Counts plus(Counts other) {
        return new Counts(
                sessions + other.sessions,
                sessionsRight + other.sessionsRight,
                lists + other.lists,
                listsRight + other.listsRight,
                codes + other.codes,
                codesRight + other.codesRight,
                codesWrong + other.codesWrong,
                codesInvented + other.codesInvented);
    }

    /** As floors see it: to them a code read in place of another is invented. */
    public Score score() {
        return new Score(
                Math.toIntExact(lists),
                Math.toIntExact(listsRight),
                Math.toIntExact(codes),
                Math.toIntExact(codesRight),
                Math.toIntExact(codesWrong + codesInvented));
    }
}
