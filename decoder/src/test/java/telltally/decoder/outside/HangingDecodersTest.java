package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failed;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.Outcome.Read;

/** Hostile programs that have to be waited for. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the programs are scripts for sh")
@Timeout(120)
class HangingDecodersTest {
    private static final Limits IMPATIENT =
            HostileDecodersTest.PATIENT.withTimes(Duration.ofSeconds(30), Duration.ofSeconds(3));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            hangs           | no answer within 3000 ms
            hangs-in-a-line | no answer within 3000 ms; 16 bytes of a line that does not end
            """)
    void what_hangs_costs_its_time_and_no_more(String name, String detail) {
        List<Outcome> outcomes =
                HostileDecodersTest.sessions(HostileDecodersTest.hostile(name).within(IMPATIENT), 2);
        assertThat(outcomes.get(1)).isEqualTo(new Failed(Failure.HUNG, detail));
    }

    @Test
    void answers_before_the_questions_are_no_way_to_do_without_reading_them() {
        List<Outcome> outcomes = HostileDecodersTest.sessions(
                HostileDecodersTest.hostile("answers-ahead").within(IMPATIENT), 4);
        assertThat(outcomes).hasAtLeastOneElementOfType(Failed.class);
    }

    @Test
    void who_hangs_twice_is_given_up_even_with_good_answers_between() {
        Failed hung = new Failed(Failure.HUNG, "no answer within 3000 ms");
        Failed givenUp = new Failed(Failure.HUNG, "not started again after 2 failures; the last: " + hung.detail());
        List<Outcome> outcomes = HostileDecodersTest.sessions(
                HostileDecodersTest.hostile("hangs").within(IMPATIENT), 6);
        assertThat(outcomes.get(0)).isInstanceOf(Read.class);
        assertThat(outcomes.get(2)).isInstanceOf(Read.class);
        assertThat(outcomes.get(3)).isEqualTo(hung);
        assertThat(outcomes.subList(4, 6)).containsExactly(givenUp, givenUp);
    }
}
