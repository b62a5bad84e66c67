package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Outcome.Failed;
import telltally.decoder.score.Outcome.Failure;
import telltally.decoder.score.Outcome.Read;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** Programs that do everything but what was asked of them. Each of them is a script of a few lines. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the programs are scripts for sh")
@Timeout(120)
class HostileDecodersTest {
    /** Long enough for a good answer on a busy machine. */
    static final Limits PATIENT = new Limits(Duration.ofSeconds(30), Duration.ofSeconds(30), 1 << 16, 1 << 16, 3, 2);

    private static final PulseTrain TRAIN = PulseTrain.of(false, 9_000_000_000L, 3_000_000_000L, 3_500_000_000L);
    private static final List<FlashFormat> FORMATS = FormatCatalog.shipped().all();

    static OutsideDecoder hostile(String name) {
        try {
            Path script = Path.of(
                    Objects.requireNonNull(HostileDecodersTest.class.getResource("/hostile/" + name + ".sh"), name)
                            .toURI());
            return OutsideDecoder.program(List.of("sh", script.toString())).within(PATIENT);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<Outcome> sessions(OutsideDecoder decoder, int count) {
        List<Outcome> outcomes = new ArrayList<>();
        try (Entrant.Reader reader = decoder.open()) {
            for (int i = 0; i < count; i++) {
                outcomes.add(reader.read(TRAIN, FORMATS));
            }
        }
        return outcomes;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            dies            | DIED         | ended with status 3; its last words: out of flashes
            dies-in-a-line  | DIED         | ended in the middle of a line with status 0
            closes-output   | DIED         | closed its standard output
            endless-line    | FLOODED      | wrote a line of more than 65536 bytes
            garbage         | RUBBISH      | answer:1:1: is not UTF-8 text
            no-json         | RUBBISH      | answer:1:1: is not JSON: Unrecognized token 'codes': was expecting (JSON String, Number, Array, Object or token 'null', 'true' or 'false')
            empty-line      | RUBBISH      | answer: is empty
            wrong-keys      | RUBBISH      | answer:1:30: /codes/yesterday: is no segment; expected present, stored, running, balance or codes
            answers-twice   | OUT_OF_ORDER | wrote a line that nobody had asked for
            answers-another | OUT_OF_ORDER | answered the request 3 when asked the request 2
            """)
    void what_fails_every_second_session_is_started_again_and_keeps_its_good_ones(
            String name, Failure failure, String detail) {
        List<Outcome> outcomes = sessions(hostile(name), 4);
        assertThat(outcomes.get(0)).isInstanceOf(Read.class);
        assertThat(outcomes.get(1)).isEqualTo(new Failed(failure, detail));
        assertThat(outcomes.get(2)).isInstanceOf(Read.class);
        assertThat(outcomes.get(3)).isEqualTo(new Failed(failure, detail));
    }

    @Test
    void an_endless_row_of_answers_leaves_the_first_one_and_fails_the_next() {
        List<Outcome> outcomes = sessions(hostile("endless-lines"), 4);
        Failed unasked = new Failed(Failure.OUT_OF_ORDER, "wrote a line that nobody had asked for");
        assertThat(outcomes.get(0)).isInstanceOf(Read.class);
        assertThat(outcomes.get(1)).isEqualTo(unasked);
        assertThat(outcomes.get(2)).isInstanceOf(Read.class);
        assertThat(outcomes.get(3)).isEqualTo(unasked);
    }

    @Test
    void whoever_talks_without_end_to_its_standard_error_is_heard_no_worse() {
        List<Outcome> outcomes = sessions(hostile("endless-errors"), 3);
        assertThat(outcomes).hasOnlyElementsOfType(Read.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            dies-at-once | DIED    | ended with status 1; its last words: cannot open display
            greets-wrong | RUBBISH | capabilities:1:11: /schema: is "telltally/capabilities/99"; expected "telltally/capabilities/1"
            """)
    void what_cannot_be_spoken_to_at_all_is_not_started_again(String name, Failure failure, String detail) {
        OutsideDecoder decoder = hostile(name);
        assertThat(decoder.refusal()).contains(new Failed(failure, detail));
        assertThat(decoder.id()).isEqualTo("outside");
        Failed refused = new Failed(failure, detail);
        assertThat(sessions(decoder, 3)).containsExactly(refused, refused, refused);
    }

    @Test
    void what_never_greets_is_not_waited_for() {
        OutsideDecoder decoder =
                hostile("never-greets").within(PATIENT.withTimes(Duration.ofMillis(300), Duration.ofMillis(300)));
        assertThat(sessions(decoder, 1)).containsExactly(new Failed(Failure.HUNG, "no answer within 300 ms"));
    }

    @Test
    void a_program_that_is_not_there_is_told_as_such() {
        OutsideDecoder decoder = OutsideDecoder.program(List.of("/no/such/program"));
        assertThat(decoder.refusal()).get().satisfies(failed -> {
            assertThat(failed.failure()).isEqualTo(Failure.DIED);
            assertThat(failed.detail()).startsWith("cannot be started: ").contains("/no/such/program");
        });
        assertThat(OutsideDecoder.command("no-such-program-at-all").refusal())
                .get()
                .satisfies(failed -> assertThat(failed.detail()).startsWith("ended with status 127"));
    }

    @Test
    void who_fails_every_second_session_is_asked_again_and_again() {
        assertThat(sessions(hostile("no-json"), 30))
                .filteredOn(each -> each instanceof Read)
                .hasSize(15);
    }

    @Test
    void who_fails_three_sessions_in_a_row_is_given_up() {
        Failed died = new Failed(Failure.DIED, "ended with status 3; its last words: out of flashes");
        Failed givenUp = new Failed(Failure.DIED, "not started again after 3 failures; the last: " + died.detail());
        assertThat(sessions(hostile("dies-always"), 5)).containsExactly(died, died, died, givenUp, givenUp);
    }

    @Test
    void formats_that_a_program_does_not_read_do_not_hide_that_it_always_fails() {
        List<FlashFormat> read = List.of(format("pair-even"));
        List<FlashFormat> unread = List.of(format("pair-loop"));
        List<Outcome> outcomes = new ArrayList<>();
        try (Entrant.Reader reader = hostile("dies-always").open()) {
            for (List<FlashFormat> candidates : List.of(read, unread, read, unread, read, unread, read)) {
                outcomes.add(reader.read(TRAIN, candidates));
            }
        }
        assertThat(outcomes).filteredOn(each -> each instanceof Read).hasSize(2);
        assertThat(((Failed) outcomes.get(6)).detail()).startsWith("not started again after 3 failures; ");
    }

    private static FlashFormat format(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    @Test
    @EnabledOnOs(value = OS.LINUX, disabledReason = "only there children out of reach can be found")
    void no_child_is_left_behind_not_even_one_that_has_put_itself_out_of_reach() throws Exception {
        List<Outcome> outcomes = sessions(hostile("leaves-children"), 2);
        List<String> numbers = ((Read) outcomes.get(0)).reading().codes().getOrDefault(Segment.CODES, List.of());
        assertThat(numbers).hasSize(2);
        for (String number : numbers) {
            Optional<ProcessHandle> child = ProcessHandle.of(Long.parseLong(number));
            if (child.isPresent()) {
                child.get().onExit().get(30, TimeUnit.SECONDS);
            }
        }
    }

    @Test
    void what_ignores_that_it_should_end_is_ended() {
        assertThat(sessions(hostile("ignores-its-end"), 1)).hasOnlyElementsOfType(Read.class);
    }
}
