package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.scenario.ScenarioReader;

/** Every shipped seed set: are the recordings still what they were? A case that cannot be made fails its set. */
class SeedSetsTest {
    private static final Path LESSONS = Path.of("..", "scenarios", "lessons");

    static List<Path> files() throws IOException {
        return SeedFiles.in(SeedFolder.SHIPPED);
    }

    @Test
    void all_sets_were_seen_and_all_their_cases() throws IOException, ProblemException {
        int cases = 0;
        for (Path file : files()) {
            SeedSet set = SeedSetReader.read(file);
            SeedCases made = new SeedCases(set);
            for (SeedBlock block : set.blocks()) {
                cases += block.seeds().stream()
                        .mapToInt(seed -> made.of(seed).size())
                        .sum();
            }
        }
        assertThat(files()).hasSize(7);
        // Five sets of 400 random messages, 18 lessons played by 20 seeds, and 32 by 10.
        assertThat(cases).isEqualTo(5 * 400 + 18 * 20 + 32 * 10);
    }

    @ParameterizedTest
    @MethodSource("files")
    void the_cases_come_out_as_they_did_when_their_digests_were_drawn(Path file) throws ProblemException {
        assertThat(DigestCheck.moved(SeedSetReader.read(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_set_is_named_as_its_file(Path file) throws ProblemException {
        assertThat(file.getFileName()).hasToString(SeedSetReader.read(file).id() + ".json");
    }

    @Test
    void every_shipped_lesson_is_in_exactly_one_set() throws IOException, ProblemException {
        List<String> shipped = new ArrayList<>();
        try (Stream<Path> lessons = Files.list(LESSONS)) {
            for (Path lesson : lessons.toList()) {
                shipped.add(ScenarioReader.shipped().read(lesson).id());
            }
        }
        List<String> inSets = new ArrayList<>();
        for (Path file : files()) {
            if (SeedSetReader.read(file).source() instanceof SeedSource.Scenarios source) {
                source.scenarios().forEach(each -> inSets.add(each.id()));
            }
        }
        assertThat(inSets).containsExactlyInAnyOrderElementsOf(shipped);
    }
}
