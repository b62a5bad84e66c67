package telltally.decoder.testkit.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.score.Line;
import telltally.decoder.testkit.DecoderAssertions;
import telltally.decoder.testkit.SeedSession;
import telltally.decoder.testkit.SeedSessions;
import telltally.decoder.testkit.Session;
import telltally.simulator.document.ProblemException;

class SeedSetsTest {
    @ParameterizedTest
    @SeedSets(value = "messages-clean", first = 20, lines = Line.LAMP)
    void a_recording_of_a_seed_set_is_read_when_the_format_is_told(Session session) {
        DecoderAssertions.assertReadsTold(new LatticeDecoder(), session);
    }

    @ParameterizedTest
    @SeedSets(in = "../seeds/messages-clean.json", first = 1)
    void a_set_may_be_read_from_a_file(Session session) {
        assertThat(session.toString()).startsWith("messages-clean seed 10000 ");
    }

    @Test
    void a_session_says_how_it_can_be_had_again() throws ProblemException {
        SeedSessions clean = SeedSessions.in(List.of(Path.of("..", "seeds")))
                .named(List.of("messages-clean"))
                .first(2);
        List<SeedSession> sessions = clean.stream().toList();
        assertThat(sessions)
                .hasSize(4)
                .extracting(SeedSession::toString)
                .allMatch(
                        text -> text.matches("messages-clean seed 1000[01] \\(random message\\), [a-z-]+, (lamp|pin)"));
    }

    @Test
    void a_set_that_is_not_there_is_told() throws ProblemException {
        SeedSessions all = SeedSessions.in(List.of(Path.of("..", "seeds")));
        assertThatThrownBy(() -> all.named(List.of("no-such-set")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no-such-set")
                .hasMessageContaining("messages-clean");
        assertThatThrownBy(() -> SeedSessions.in(List.of(Path.of("nowhere")))).isInstanceOf(ProblemException.class);
    }
}
