package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.scenario.ChannelFields;
import telltally.simulator.scenario.ScenarioReader;

/** Every shipped seed set: are the recordings still what they were? A case that cannot be made fails its set. */
class SeedSetsTest {
    private static final Path LESSONS = Path.of("..", "scenarios", "lessons");
    private static final int FILES = 112;

    /** Lessons by 20 seeds, stories by 10, plain messages, noise, sessions, long lists, decoys, recordings. */
    private static final int CASES = 18 * 20 + 32 * 10 + 5 * 400 + 83 * 56 + 3 * 60 + 7 * 20 + 5 * 20 + 4 * 40 + 25;

    private static final int LEAST_OF_A_FORMAT = 3;

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
        assertThat(files()).hasSize(FILES);
        assertThat(cases).isEqualTo(CASES);
    }

    @ParameterizedTest
    @MethodSource("files")
    void the_cases_come_out_as_they_did_when_their_digests_were_drawn(Path file) throws ProblemException {
        assertThat(DigestCheck.moved(SeedSetReader.read(file))).isEmpty();
    }

    /** The sets in which something spoils random messages. */
    private static List<SeedSet> noisy() throws IOException, ProblemException {
        List<SeedSet> sets = new ArrayList<>();
        for (Path file : SeedFiles.in(SeedFolder.SHIPPED.resolve("noise"))) {
            sets.add(SeedSetReader.read(file));
        }
        return sets;
    }

    private static List<String> kinds(SeedSet set) {
        return set.channel().steps().stream().map(ChannelRecipe.Step::kind).toList();
    }

    @Test
    void every_kind_of_impairment_comes_singly_and_among_others() throws IOException, ProblemException {
        Set<String> singly = new TreeSet<>();
        Set<String> mixed = new TreeSet<>();
        for (SeedSet set : noisy()) {
            (kinds(set).size() == 1 ? singly : mixed).addAll(kinds(set));
        }
        assertThat(singly).containsExactlyInAnyOrderElementsOf(ChannelFields.kinds());
        assertThat(mixed).containsExactlyInAnyOrderElementsOf(ChannelFields.kinds());
    }

    @Test
    void every_format_meets_every_noise() throws IOException, ProblemException {
        for (SeedSet set : noisy()) {
            SeedCases cases = new SeedCases(set);
            Map<String, Integer> times = new TreeMap<>();
            for (SeedBlock block : set.blocks()) {
                for (long seed : block.seeds()) {
                    times.merge(cases.of(seed).get(0).truth().formatId(), 1, Integer::sum);
                }
            }
            assertThat(times)
                    .as(set.id())
                    .containsOnlyKeys(new TreeSet<>(FormatCatalog.shipped().ids()));
            assertThat(times.values()).as(set.id()).allMatch(each -> each >= LEAST_OF_A_FORMAT);
        }
    }

    @Test
    void a_curve_rises_in_one_unit_and_its_points_share_their_messages() throws IOException, ProblemException {
        Map<String, List<SeedSet>> families = new TreeMap<>();
        for (SeedSet set : noisy()) {
            families.computeIfAbsent(set.curve().orElseThrow().family(), name -> new ArrayList<>())
                    .add(set);
        }
        assertThat(families).hasSizeGreaterThan(20);
        families.forEach((name, sets) -> {
            List<Double> strengths = sets.stream()
                    .map(set -> set.curve().orElseThrow().strength())
                    .toList();
            assertThat(strengths).as(name).isSorted().doesNotHaveDuplicates();
            assertThat(sets)
                    .as(name)
                    .map(set -> set.curve().orElseThrow().unit())
                    .containsOnly(sets.get(0).curve().orElseThrow().unit());
            assertThat(sets)
                    .as(name)
                    .map(SeedSet::seeds)
                    .containsOnly(sets.get(0).seeds());
        });
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
