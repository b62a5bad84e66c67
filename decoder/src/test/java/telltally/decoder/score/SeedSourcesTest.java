package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Segment;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;

/** Sources of cases beside lessons and random messages of shipped formats. */
class SeedSourcesTest {
    private static final FormatCatalog SHIPPED = FormatCatalog.shipped();

    static final String FOREIGN = """
            {"schema": "telltally/format/1", "id": "beacon", "title": "Beacon",
             "flashes_s": {"flash": 2.0}, "code": {"places": [{"flash": "flash", "from": 1, "to": 9}]},
             "gaps": {"within_digit_s": 3.0, "before_repeat_s": 20.0}, "list": {"loops": true, "most_codes": 1}}""";

    @TempDir
    private Path folder;

    static String set(String source) {
        return """
                {"schema": "telltally/seeds/1", "id": "yard", "generator": 1, "why": "w", SOURCE,
                 "channel": [], "seeds": {"from": 0, "count": 40}, "cases": [],
                 "digests": {"per": 40, "sha256": ["ZEROES"]},
                 "floors": {"lists_right": 0, "codes_right": 0, "invented_codes": 0}, "lowered": []}
                """.replace("SOURCE", source).replace("ZEROES", "0".repeat(64));
    }

    private SeedSet read(String text) throws IOException, ProblemException {
        return SeedSetReader.read(Files.writeString(folder.resolve("set.json"), text));
    }

    private List<String> problems(String text) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> read(text));
        return thrown.problems().stream()
                .map(Problem::toString)
                .map(line -> line.replace(folder + "/", ""))
                .toList();
    }

    private static List<SeedCase> all(SeedSet set) {
        SeedCases cases = new SeedCases(set);
        return set.blocks().stream()
                .flatMap(block -> block.seeds().stream())
                .flatMap(seed -> cases.of(seed).stream())
                .toList();
    }

    @Nested
    class Decoys {
        static final String ALL = "\"decoys\": ["
                + "{\"kind\": \"steady\", \"level\": 1, \"length_s\": 10},"
                + "{\"kind\": \"steady\", \"level\": 0, \"length_s\": {\"from\": 20, \"to\": 30}},"
                + "{\"kind\": \"random-edges\", \"mean_s\": 0.5, \"length_s\": 60},"
                + "{\"kind\": \"foreign\", \"format\": " + FOREIGN
                + ", \"codes\": {\"from\": 1, \"to\": 1}, \"loops\": {\"from\": 2, \"to\": 2}}]";

        @Test
        void hold_nothing_and_every_kind_comes_up() throws IOException, ProblemException {
            List<SeedCase> cases = all(read(set(ALL)));
            assertThat(cases)
                    .hasSize(40)
                    .allMatch(each -> each.truth().equals(Truth.nothing())
                            && each.format().isEmpty());
            assertThat(new TreeSet<>(cases.stream().map(SeedCase::origin).toList()))
                    .containsExactly("foreign", "random-edges", "steady");
        }

        @Test
        void are_told_to_no_decoder() throws IOException, ProblemException {
            assertThat(read(set(ALL)).candidates(SHIPPED)).isEqualTo(SHIPPED.all());
        }

        @Test
        void that_are_steady_last_as_long_as_they_are_told_to() throws IOException, ProblemException {
            assertThat(all(read(set(ALL))))
                    .filteredOn(each -> each.origin().equals("steady"))
                    .allSatisfy(each -> {
                        assertThat(each.lamp().edgeCount()).isZero();
                        assertThat(each.lamp().endNanos())
                                .isBetween(
                                        each.lamp().litAtStart() ? 10_000_000_000L : 20_000_000_000L,
                                        each.lamp().litAtStart() ? 10_000_000_000L : 30_000_000_000L);
                    });
        }

        /** 120 stretches are expected in a minute of half a second each; 5 standard deviations are 55. */
        @Test
        void that_are_random_have_as_many_edges_as_their_mean_says() throws IOException, ProblemException {
            assertThat(all(read(set(ALL))))
                    .filteredOn(each -> each.origin().equals("random-edges"))
                    .isNotEmpty()
                    .allSatisfy(each -> {
                        assertThat(each.lamp().edgeCount()).isBetween(65, 175);
                        assertThat(each.lamp().endNanos()).isEqualTo(60_000_000_000L);
                    });
        }

        @Test
        void may_be_of_a_format_in_a_file() throws IOException, ProblemException {
            Files.writeString(folder.resolve("beacon.json"), FOREIGN);
            assertThat(all(read(set(ALL.replace(FOREIGN, "\"beacon.json\""))))).isEqualTo(all(read(set(ALL))));
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '`',
                value = {
                    "\"steady\", \"level\": 1 | \"dim\", \"level\": 1"
                            + "| /decoys/0/kind: is \"dim\"; expected \"steady\" or \"random-edges\" or \"foreign\"",
                    "\"level\": 1 | \"level\": 2 | /decoys/0/level: is 2; expected a whole number from 0 to 1",
                    "\"length_s\": 60 | \"length_s\": 0"
                            + "| /decoys/2/length_s: is 0; expected seconds from 0.001 to 3600.0",
                    "\"beacon\" | \"pair-even\" | /decoys/3/format: has the id of a format that ships; one that no decoder"
                            + " is told of was expected",
                    "\"loops\": {\"from\": 2 | \"loops\": {\"from\": 0"
                            + "| /decoys/3/loops/from: is 0; expected a whole number from 1 to 20",
                    "\"gaps\" | \"gasp\" | /decoys/3/format/gaps: is missing; expected an object"
                })
        void that_cannot_be_made_are_told_at_their_place(String part, String replacement, String problem) {
            assertThat(ALL).contains(part);
            assertThat(problems(set(ALL.replace(part, replacement))))
                    .anySatisfy(line -> assertThat(line).endsWith(problem));
        }

        @Test
        void must_be_some() {
            assertThat(problems(set("\"decoys\": []")))
                    .containsExactly("set.json:1:85: /decoys: is empty; at least one was expected");
        }
    }

    @Nested
    class Formats_in_a_file {
        private static final String MESSAGES = "\"messages\": {\"formats\": [\"count-loop\", \"beacon.json\"],"
                + " \"codes\": {\"from\": 1, \"to\": 1}, \"loops\": {\"from\": 2, \"to\": 2}}";

        @Test
        void are_sent_in_and_told_to_the_decoder() throws IOException, ProblemException {
            Files.writeString(folder.resolve("beacon.json"), FOREIGN);
            SeedSet set = read(set(MESSAGES));
            assertThat(all(set)).extracting(each -> each.truth().formatId()).contains("beacon", "count-loop");
            assertThat(set.candidates(SHIPPED))
                    .hasSize(8)
                    .extracting(FlashFormat::id)
                    .contains("beacon");
        }

        @Test
        void that_are_broken_are_told_at_their_own_places() throws IOException {
            Files.writeString(folder.resolve("beacon.json"), FOREIGN.replace("2.0", "-2.0"));
            assertThat(problems(set(MESSAGES)))
                    .singleElement()
                    .asString()
                    .startsWith("beacon.json:2:25: /flashes_s/flash: ");
        }
    }

    @Nested
    class Recordings {
        static final String SET = """
                {"schema": "telltally/seeds/1", "id": "found", "why": "w", "recordings": [
                  {"edges": "a.csv", "truth": "a.truth.json", "why": "read as 3"},
                  {"edges": "b.csv", "truth": "b.truth.json", "why": "hum"}],
                 "digests": {"per": 2, "sha256": ["ZEROES"]},
                 "floors": {"lists_right": 0, "codes_right": 0, "invented_codes": 0}, "lowered": []}
                """.replace("ZEROES", "0".repeat(64));

        private static final String TRUTH = """
                {"schema": "telltally/truth/1", "format": "count-loop", "codes": {"codes": ["2"]}, "more": 1, "events": [
                 {"kind": "code", "segment": "codes", "digits": "2", "start_s": 1.0, "end_s": 1.9}]}
                """;

        private void write() throws IOException {
            Files.writeString(folder.resolve("a.csv"), "time_s,level\n0,0\n1,1\n1.3,0\n1.6,1\n1.9,0\n9,0\n");
            Files.writeString(folder.resolve("a.truth.json"), TRUTH);
            Files.writeString(folder.resolve("b.csv"), "time_s,level\n0,0\n4,1\n5,0\n9,0\n");
            Files.writeString(
                    folder.resolve("b.truth.json"),
                    "{\"schema\": \"telltally/truth/1\", \"format\": \"none\", \"codes\": {}, \"events\": []}");
        }

        @Test
        void are_cases_counted_from_1_that_no_generator_moves() throws IOException, ProblemException {
            write();
            SeedSet set = read(SET);
            assertThat(set.lines()).containsExactly(Line.LAMP);
            List<SeedCase> cases = all(set);
            assertThat(cases).extracting(SeedCase::seed).containsExactly(1L, 2L);
            assertThat(cases).extracting(SeedCase::origin).containsExactly("a.csv", "b.csv");
            assertThat(cases)
                    .extracting(SeedCase::format)
                    .containsExactly(SHIPPED.find("count-loop"), Optional.empty());
            PulseTrain train = PulseTrain.of(
                    false, 9_000_000_000L, 1_000_000_000L, 1_300_000_000L, 1_600_000_000L, 1_900_000_000L);
            assertThat(cases.get(0).lamp()).isEqualTo(train);
            assertThat(cases.get(0).pin()).isEqualTo(train);
            assertThat(cases.get(0).truth().codes()).isEqualTo(Map.of(Segment.CODES, List.of("2")));
            assertThat(cases.get(0).truth().groups()).hasSize(1);
            assertThat(cases.get(1).truth()).isEqualTo(Truth.nothing());
        }

        @Test
        void lie_beside_their_set_and_are_not_taken_for_one() throws IOException, ProblemException {
            write();
            read(SET);
            assertThat(SeedFiles.in(folder)).containsExactly(folder.resolve("set.json"));
        }

        @Test
        void have_neither_generator_nor_seeds_nor_channel() throws IOException {
            write();
            String text = SET.replace(
                    "\"why\": \"w\"",
                    "\"why\": \"w\", \"generator\": 1, \"channel\": [], \"seeds\": {\"from\": 1, \"count\": 2},"
                            + " \"cases\": [], \"lines\": [\"lamp\"]");
            assertThat(problems(text)).hasSize(5).allMatch(line -> line.contains("has no meaning here"));
        }

        @Test
        void that_cannot_be_read_are_told_in_one_run() throws IOException {
            write();
            Files.writeString(folder.resolve("a.csv"), "time_s,level\n0,0\n1,2\n");
            Files.writeString(folder.resolve("a.truth.json"), TRUTH.replace("count-loop", "count-lop"));
            Files.writeString(folder.resolve("b.truth.json"), TRUTH.replace("\"codes\": [\"2\"]", "\"stroed\": [2]"));
            Files.delete(folder.resolve("b.csv"));
            assertThat(problems(SET))
                    .containsExactly(
                            "set.json:3:13: /recordings/1/edges: \"b.csv\": no such file",
                            "a.csv:3:3: level: is \"2\"; expected 0 (dark) or 1 (lit)",
                            "b.truth.json:1:77: /codes/stroed: no segment is called \"stroed\"; expected present, stored,"
                                    + " running, balance, codes",
                            "b.truth.json:1:78: /codes/stroed/0: is a number; expected a text");
        }

        @Test
        void of_an_unknown_format_are_told() throws IOException {
            write();
            Files.writeString(folder.resolve("a.truth.json"), TRUTH.replace("count-loop", "count-lop"));
            assertThat(problems(SET))
                    .containsExactly("set.json:2:31: /recordings/0/truth: is of the format \"count-lop\"; expected"
                            + " count-loop, long-short, pair-even, pair-loop, pair-thrice, quad-lead, triple-even or"
                            + " none");
        }
    }

    @Test
    void what_a_seed_gives_does_not_depend_on_how_many_there_are() throws IOException, ProblemException {
        SeedSet set = read(set(Decoys.ALL));
        SeedCases more = new SeedCases(set.withCount(1000));
        SeedCases as = new SeedCases(set);
        assertThat(LongStream.range(0, 40).mapToObj(more::of).toList())
                .isEqualTo(LongStream.range(0, 40).mapToObj(as::of).toList());
        assertThat(Stream.of(0L).map(more::of)).isNotEmpty();
    }
}
