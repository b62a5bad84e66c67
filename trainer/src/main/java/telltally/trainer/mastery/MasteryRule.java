package telltally.trainer.mastery;

import java.time.Duration;
import java.util.List;

/**
 * When a skill counts as mastered, the same for every order of practice.
 *
 * <p>Counting and facts: for some run of the latest answers at full level, of at most 30, the lower bound of Wilson's 95 %
 * interval is at least 0.80. That is 16 right of 16, 24 of 25 or 29 of 30. Looking after every answer, and at every run,
 * passes more than a single look would: the trial counts how many pass who are not there yet. Rules: the chance that the
 * rule is known is at least 0.95, the usual criterion of knowledge tracing (Corbett and Anderson 1995), and the last three
 * answers at full level followed it.
 *
 * <p>A pass is checked after 1, 7 and 30 days by five answers at full level, of which one may be wrong; if the first three
 * are right, that is enough (somebody at 0.95 holds it 98 times of 100 either way). A failed check takes the pass back. The days and the five are common practice, no source.
 */
public final class MasteryRule {
    /** What a passed skill claims: that at least this share of answers at full level would be right. */
    public static final double STANDARD = 0.80;

    /** The chance at which a rule counts as known. */
    public static final double KNOWN = 0.95;

    /** When a pass is checked, from the day of the pass on. */
    public static final List<Duration> CHECKS = List.of(Duration.ofDays(1), Duration.ofDays(7), Duration.ofDays(30));

    /** How many answers a check has. */
    public static final int CHECK_ANSWERS = 5;

    private static final int CHECK_EARLIEST = 3;
    private static final int CHECK_MOST_WRONG = 1;

    /** The shortest run without a mistake whose lower bound is high enough. */
    private static final int FEWEST = 16;

    private static final int RULE_ANSWERS = 3;

    private MasteryRule() {}

    /** Whether the latest answers at full level show that the standard is reached. */
    public static boolean shown(Window atFullLevel) {
        for (int count = FEWEST; count <= atFullLevel.length(); count++) {
            if (atFullLevel.latest(count).bounds().low() >= STANDARD) {
                return true;
            }
        }
        return false;
    }

    /** Whether a rule that is known was also followed at full level. */
    static boolean followed(Window atFullLevel) {
        return atFullLevel.latest(RULE_ANSWERS).right() == RULE_ANSWERS;
    }

    static boolean checkHeld(Tally check) {
        return (check.wrong() == 0 && check.asked() >= CHECK_EARLIEST)
                || (check.wrong() <= CHECK_MOST_WRONG && check.asked() >= CHECK_ANSWERS);
    }

    static boolean checkFailed(Tally check) {
        return check.wrong() > CHECK_MOST_WRONG;
    }
}
