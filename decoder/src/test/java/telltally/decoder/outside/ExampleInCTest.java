package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Outcome;
import telltally.decoder.score.Score;
import telltally.decoder.score.SeedCase;
import telltally.decoder.score.SeedCases;
import telltally.decoder.score.SeedSet;
import telltally.decoder.score.SeedSetReader;
import telltally.simulator.document.ProblemException;

/** The example in C is compiled, and reads what a decoder of its kind has to read. */
@Timeout(300)
class ExampleInCTest {
    private static final Path SOURCE = Path.of("examples", "in-c", "threshold.c");

    @TempDir
    private static Path folder;

    private static Path program() {
        return folder.resolve("threshold");
    }

    @BeforeAll
    static void compile() throws IOException, InterruptedException {
        assertThat(SOURCE).isRegularFile();
        try {
            Process compiler = new ProcessBuilder(
                            "cc",
                            "-O2",
                            "-Wall",
                            "-Wextra",
                            "-Werror",
                            "-o",
                            program().toString(),
                            SOURCE.toString(),
                            "-lm")
                    .redirectErrorStream(true)
                    .start();
            String said = new String(compiler.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(compiler.waitFor(2, TimeUnit.MINUTES)).isTrue();
            assertThat(compiler.exitValue()).as(said).isZero();
        } catch (IOException e) {
            boolean maySkip = !"no".equals(System.getenv("TELLTALLY_MAY_SKIP"));
            assertThat(maySkip).as("no C compiler, and no test may be skipped").isTrue();
            assumeTrue(false, "no C compiler called cc: " + e.getMessage());
        }
    }

    private static OutsideDecoder decoder() {
        return OutsideDecoder.program(List.of(program().toString()));
    }

    @Test
    void it_says_that_it_wants_the_format_told() {
        assertThat(decoder().id()).isEqualTo("threshold-c");
        assertThat(decoder().traits()).isEqualTo(new Entrant.Traits(true, false));
    }

    @ParameterizedTest
    @CsvSource({"messages-clean, 1.0", "messages-clock, 0.99", "messages-jitter, 0.99", "messages-bounce, 0.99"})
    void it_reads_every_format_that_it_is_told_on_the_lamp_and_on_the_wire(String name, double floor)
            throws ProblemException {
        SeedSet set = SeedSetReader.read(Path.of("..", "seeds", name + ".json"));
        SeedCases cases = new SeedCases(set);
        Score score = Score.NOTHING;
        try (Entrant.Reader reader = decoder().open()) {
            for (long seed = set.seeds().from(); seed < set.seeds().from() + 120; seed++) {
                for (SeedCase each : cases.of(seed)) {
                    score = score.plus(
                            score(reader.read(each.lamp(), List.of(each.format().orElseThrow())), each));
                    score = score.plus(
                            score(reader.read(each.pin(), List.of(each.format().orElseThrow())), each));
                }
            }
        }
        assertThat(score.listsRight() / (double) score.lists())
                .as(score.toString())
                .isGreaterThanOrEqualTo(floor);
    }

    private static Score score(Outcome outcome, SeedCase sent) {
        assertThat(outcome).isInstanceOf(Outcome.Read.class);
        return Score.of(sent.truth(), ((Outcome.Read) outcome).reading());
    }
}
