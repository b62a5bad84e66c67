package telltally.trainer.mastery;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A skill's pass and the checks on it.
 *
 * @param at when it was passed, or the latest check was held
 * @param checksHeld how many checks were held
 * @param check the answers of the check that is going on
 */
public record Pass(Instant at, int checksHeld, Tally check) {
    static Pass at(Instant when) {
        return new Pass(when, 0, Tally.NONE);
    }

    /** When the next check may begin; empty once all are held. */
    public Optional<Instant> checkDue() {
        if (checksHeld >= MasteryRule.CHECKS.size()) {
            return Optional.empty();
        }
        Duration before = checksHeld == 0 ? Duration.ZERO : MasteryRule.CHECKS.get(checksHeld - 1);
        return Optional.of(at.plus(MasteryRule.CHECKS.get(checksHeld).minus(before)));
    }

    public boolean checkIsDue(Instant now) {
        return checkDue().filter(due -> !due.isAfter(now)).isPresent();
    }

    /** After an answer at full level; empty where a check was failed and the pass is taken back. */
    Optional<Pass> after(boolean right, Instant when) {
        if (!checkIsDue(when)) {
            return Optional.of(this);
        }
        Tally answered = check.plus(right);
        if (MasteryRule.checkFailed(answered)) {
            return Optional.empty();
        }
        return Optional.of(
                MasteryRule.checkHeld(answered)
                        ? new Pass(when, checksHeld + 1, Tally.NONE)
                        : new Pass(at, checksHeld, answered));
    }
}
