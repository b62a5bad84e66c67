package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A taste; DEVELOPERS.md has the command for a thousand. */
class KillTrialTest {
    @Test
    void killing_the_program_at_any_moment_loses_no_answer_that_was_said_to_be_saved() throws Exception {
        KillTrial.Findings findings = new KillTrial(7).kill(6);

        assertThat(findings.kills()).isEqualTo(6);
        assertThat(findings.announced()).isPositive();
        assertThat(findings.lost()).isZero();
        assertThat(findings.unsound()).isEmpty();
    }
}
