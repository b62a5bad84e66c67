package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.decoder.score.SeedSet.Digests;
import telltally.decoder.score.SeedSet.NotedSeed;
import telltally.decoder.score.SeedSet.SeedRange;
import telltally.simulator.Simulation;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.scenario.Scenario;

class SeedSetReaderTest {
    private static final String SUM = "0".repeat(64);

    private static final String NO_SOURCE =
            "1:1: one of \"scenarios\" (lessons), \"messages\" (a recipe of random ones), \"decoys\" (trains without"
                    + " codes) and \"recordings\" (frozen pulse trains) was expected";

    static final String GOOD =
            """
            {
              "schema": "telltally/seeds/1",
              "id": "yard",
              "generator": 1,
              "why": "loose wires", "curve": {"family": "mixed", "strength": 0.06, "unit": "share"}, "lines": ["lamp"],
              "messages": {
                "formats": ["pair-even", "long-short"],
                "sessions": ["key-on", "running"],
                "codes": {"from": 0, "to": 4},
                "cylinders": {"from": 4, "to": 8},
                "loops": {"from": 2, "to": 3}
              },
              "channel": [
                {"kind": "clock-scale", "factor": {"from": 0.85, "to": 1.18}},
                {"kind": "jitter", "share": 0.06},
                {"kind": "contact-bounce", "longest_s": 0.015, "most_contacts": 5}
              ],
              "seeds": {"from": -2, "count": 4},
              "cases": [{"seed": 17, "why": "read as two"}],
              "digests": {"per": 3, "sha256": ["SUM", "SUM", "SUM"]},
              "floors": {"plain": {"lists_right": 0.99, "codes_right": 0.995, "invented_codes": 0}, "lattice": FULL},
              "lowered": [{"floor": "lists_right", "from": 1, "to": 0.99, "why": "a bulb", "decoder": "plain"}]
            }
            """.replace("SUM", SUM).replace("FULL", "{\"lists_right\": 1, \"codes_right\": 1, \"invented_codes\": 0}");

    @TempDir
    private Path folder;

    private SeedSet read(String text) throws IOException, ProblemException {
        return SeedSetReader.read(Files.writeString(folder.resolve("set.json"), text));
    }

    /** The lines that a file gives, without the folder that it lies in. */
    private List<String> problems(String text) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> read(text));
        return thrown.problems().stream()
                .map(Problem::toString)
                .map(line -> line.replace(folder + "/", ""))
                .toList();
    }

    @Test
    void a_good_set_is_read_with_everything_in_it() throws IOException, ProblemException {
        assertThat(Simulation.GENERATOR_VERSION)
                .as("the version in the example")
                .isEqualTo(1);
        SeedSet set = read(GOOD);
        assertThat(set.id()).isEqualTo("yard");
        assertThat(set.why()).isEqualTo("loose wires");
        MessageRecipe recipe = ((SeedSource.Messages) set.source()).recipe();
        assertThat(recipe.formats()).extracting(FlashFormat::id).containsExactly("pair-even", "long-short");
        assertThat(recipe.sessions()).containsExactly(SessionKind.KEY_ON, SessionKind.RUNNING);
        assertThat(recipe.codes()).isEqualTo(new WholeRange(0, 4));
        assertThat(recipe.cylinders()).isEqualTo(new WholeRange(4, 8));
        assertThat(recipe.loops()).isEqualTo(new WholeRange(2, 3));
        assertThat(set.channel().drawnFrom(Chance.of(1)).impairments())
                .extracting(each -> each.kind())
                .containsExactly("clock-scale", "jitter", "contact-bounce");
        assertThat(set.seeds()).isEqualTo(new SeedRange(-2, 4));
        assertThat(set.noted()).containsExactly(new NotedSeed(17, "read as two"));
        assertThat(set.digests()).isEqualTo(new Digests(3, List.of(SUM, SUM, SUM)));
        assertThat(set.curve()).contains(new CurvePoint("mixed", 0.06, "share"));
        assertThat(set.lines()).containsExactly(Line.LAMP);
        assertThat(set.floors().own("plain")).contains(new Floors(0.99, 0.995, 0));
        assertThat(set.floors().own("lattice")).contains(new Floors(1, 1, 0));
        assertThat(set.lowered()).containsExactly(new LoweredFloor("plain", "lists_right", 1, 0.99, "a bulb"));
    }

    @Test
    void floors_without_a_name_are_those_of_the_plain_decoder() throws IOException, ProblemException {
        SeedSet set = read(GOOD.replaceAll(
                "\"floors\": .*",
                "\"floors\": {\"lists_right\": 0.99, \"codes_right\": 0.995, \"invented_codes\": 7},"));
        assertThat(set.floors().byDecoder()).containsOnlyKeys("plain");
        assertThat(set.floors().of("mine")).contains(new Floors(0.99, 0.995, 7));
    }

    @Test
    void a_decoder_without_floors_of_its_own_is_held_to_those_of_the_plain_one() throws IOException, ProblemException {
        DecoderFloors floors = read(GOOD).floors();
        assertThat(floors.of("lattice")).isEqualTo(floors.own("lattice"));
        assertThat(floors.of("mine")).isEqualTo(floors.own("plain"));
        assertThat(floors.own("mine")).isEmpty();
    }

    @Test
    void without_lines_a_decoder_listens_at_both() throws IOException, ProblemException {
        assertThat(read(GOOD.replace(", \"lines\": [\"lamp\"]", "")).lines()).containsExactly(Line.LAMP, Line.PIN);
    }

    @Test
    void a_floor_may_rise_again_after_it_was_lowered() throws IOException, ProblemException {
        assertThat(read(GOOD.replace("\"lists_right\": 0.99,", "\"lists_right\": 0.995,"))
                        .floors()
                        .own("plain"))
                .contains(new Floors(0.995, 0.995, 0));
    }

    @Test
    void another_number_of_seeds_has_neither_digests_nor_floors() throws IOException, ProblemException {
        SeedSet more = read(GOOD).withCount(1000);
        assertThat(more.seeds()).isEqualTo(new SeedRange(-2, 1000));
        assertThat(more.digests().sha256()).isEmpty();
        assertThat(more.floors().of("plain")).isEmpty();
        assertThat(more.blocks().stream()
                        .mapToInt(block -> block.seeds().size())
                        .sum())
                .isEqualTo(1000);
    }

    @Test
    void every_seed_is_in_one_block() throws IOException, ProblemException {
        assertThat(read(GOOD).blocks())
                .containsExactly(
                        new SeedBlock(1, List.of(-2L, -1L, 0L)),
                        new SeedBlock(2, List.of(1L)),
                        new SeedBlock(3, List.of(17L)));
        assertThat(read(GOOD).blocks().get(0)).hasToString("block 1, seeds -2 to 0");
    }

    @Test
    void a_case_within_the_range_is_not_run_twice() throws IOException, ProblemException {
        String text = GOOD.replace("\"seed\": 17", "\"seed\": 1").replace(", \"" + SUM + "\"]", "]");
        assertThat(read(text).blocks())
                .containsExactly(new SeedBlock(1, List.of(-2L, -1L, 0L)), new SeedBlock(2, List.of(1L)));
    }

    @Test
    void a_set_without_segments_and_loops_needs_neither_sessions_nor_loops() throws IOException, ProblemException {
        String text = GOOD.replace("\"pair-even\", \"long-short\"", "\"quad-lead\"")
                .replaceAll("(?m)^ *\"(sessions|cylinders|loops)\".*\\R", "")
                .replace("\"to\": 4},", "\"to\": 4}");
        assertThat(((SeedSource.Messages) read(text).source()).recipe().sessions())
                .isEmpty();
    }

    @Test
    void only_who_draws_digests_may_read_a_set_without_them() throws IOException, ProblemException {
        String text = GOOD.replace("\"generator\": 1", "\"generator\": 9")
                .replaceAll("\"sha256\": \\[.*\\]", "\"sha256\": []");
        assertThat(problems(text)).hasSize(2);
        assertThat(SeedSetReader.readUndrawn(folder.resolve("set.json")).blocks())
                .hasSize(3);
    }

    /** A good set with one part of it replaced, and the lines that this must give. */
    private record BadFile(String name, String text, List<String> lines) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static BadFile bad(String name, String part, String replacement, String... lines) {
        assertThat(GOOD).contains(part);
        return new BadFile(
                name,
                GOOD.replace(part, replacement),
                Stream.of(lines).map(line -> "set.json:" + line).toList());
    }

    static Stream<BadFile> badFiles() {
        return Stream.of(
                bad(
                        "another kind of file",
                        "seeds/1",
                        "scenario/1",
                        "2:13: /schema: is \"telltally/scenario/1\"; expected \"telltally/seeds/1\""),
                bad(
                        "another generator",
                        "\"generator\": 1",
                        "\"generator\": 2",
                        "4:16: /generator: is 2; these recordings would be generated by version 1. Draw the digests"
                                + " anew, as seeds/README.md says, or use the Telltally that generates 2"),
                bad(
                        "no generator",
                        "\"generator\": 1",
                        "\"generator\": 0",
                        "4:16: /generator: is 0; expected a whole number from 1 to 1000000"),
                bad(
                        "neither lessons nor messages",
                        "\"messages\"",
                        "\"mesages\"",
                        NO_SOURCE,
                        "6:3: /mesages: is not known here; expected one of schema, id, generator, why, curve, lines,"
                                + " scenarios, messages, decoys, recordings, channel, seeds, cases, digests, floors, lowered"),
                bad(
                        "lessons and messages",
                        "\"messages\"",
                        "\"scenarios\": [\"nowhere.json\"], \"messages\"",
                        NO_SOURCE,
                        "6:17: /scenarios/0: \"nowhere.json\": no such file"),
                bad(
                        "an unknown format",
                        "\"long-short\"",
                        "\"short-long\"",
                        "7:30: /messages/formats/1: no format is called \"short-long\"; expected count-loop,"
                                + " long-short, pair-even, pair-loop, pair-thrice, quad-lead, triple-even or a file"
                                + " ending in .json"),
                bad(
                        "a format twice",
                        "\"long-short\"",
                        "\"pair-even\", \"long-short\"",
                        "7:30: /messages/formats/1: \"pair-even\" stands twice; each format was expected once"),
                bad(
                        "no format",
                        "[\"pair-even\", \"long-short\"]",
                        "[]",
                        "7:16: /messages/formats: is empty; at least one was expected"),
                bad(
                        "an unknown session",
                        "\"key-on\"",
                        "\"key-off\"",
                        "8:18: /messages/sessions/0: is \"key-off\"; expected \"key-on\" or \"running\" or \"balance\""),
                bad(
                        "a session twice",
                        "\"key-on\"",
                        "\"running\"",
                        "8:29: /messages/sessions/1: \"running\" stands twice; each session was expected once"),
                bad(
                        "sessions without segments",
                        "\"pair-even\", ",
                        "",
                        "8:17: /messages/sessions: has no meaning here; none of the formats has segments"),
                bad(
                        "loops where nothing loops",
                        ", \"long-short\"",
                        "",
                        "11:14: /messages/loops: has no meaning here; none of the formats loops"),
                bad(
                        "cylinders without an engine",
                        ", \"running\"",
                        "",
                        "10:18: /messages/cylinders: has no meaning here; no engine runs"),
                bad(
                        "an odd number of cylinders",
                        "\"to\": 8",
                        "\"to\": 7",
                        "10:18: /messages/cylinders: holds an odd number; a running test opens with half the number of"
                                + " cylinders"),
                bad(
                        "a range the wrong way round",
                        "\"from\": 2, \"to\": 3",
                        "\"from\": 3, \"to\": 2",
                        "11:32: /messages/loops/to: is 2; expected at least 3, where \"from\" begins"),
                bad(
                        "more codes than there are to draw from",
                        "\"to\": 4}",
                        "\"to\": 41}",
                        "9:14: /messages/codes: asks for 41 codes in a list; expected at most 40, half of what the"
                                + " format pair-even can send",
                        "9:14: /messages/codes: asks for 41 codes in a list; expected at most 40, half of what the"
                                + " format long-short can send"),
                bad(
                        "an unknown impairment",
                        "\"jitter\"",
                        "\"hum\"",
                        "15:14: /channel/1/kind: is \"hum\"; expected \"clock-scale\" or \"jitter\" or"
                                + " \"contact-bounce\" or \"clock-drift\" or \"missed-flashes\" or \"ghost-flashes\" or \"late-start\" or \"early-stop\" or \"loose-contact\""
                                + " or \"glare\" or \"camera-frames\" or \"tap-along\" or \"short-taps\" or \"filament-lamp\" or \"led\" or \"meter-needle\""),
                bad(
                        "no seeds",
                        "\"count\": 4",
                        "\"count\": 0",
                        "18:34: /seeds/count: is 0; expected a whole number from 1 to 100000"),
                bad(
                        "seeds beyond the last number",
                        "\"from\": -2",
                        "\"from\": 9223372036854775807",
                        "18:21: /seeds/from: is so great that the numbers end before the seeds do"),
                bad(
                        "a case twice",
                        "{\"seed\": 17,",
                        "{\"seed\": 17, \"why\": \"x\"}, {\"seed\": 17,",
                        "19:48: /cases/1/seed: stands twice; each seed was expected once"),
                bad(
                        "no digest",
                        "\"0000",
                        "\"o000",
                        Stream.of(0, 1, 2)
                                .map(each -> "20:" + (36 + 68 * each) + ": /digests/sha256/" + each + ": is \"o"
                                        + "0".repeat(59) + "...\"; expected 64 small hexadecimal digits")
                                .toArray(String[]::new)),
                bad(
                        "too few digests",
                        "\"per\": 3",
                        "\"per\": 1",
                        "20:14: /digests: holds 3 of SHA-256; expected 5, one for every 1 of the seeds and one for all"
                                + " cases outside their range; seeds/README.md says how they are drawn"),
                bad(
                        "a share above one",
                        "\"codes_right\": 0.995",
                        "\"codes_right\": 99.5",
                        "21:60: /floors/plain/codes_right: is 99.5; expected a number from 0 to 1"),
                bad(
                        "an unknown floor",
                        "\"floor\": \"lists_right\"",
                        "\"floor\": \"lists\"",
                        "22:25: /lowered/0/floor: is \"lists\"; expected \"lists_right\" or \"codes_right\" or"
                                + " \"invented_codes\""),
                bad(
                        "a floor that was raised",
                        "\"from\": 1, \"to\": 0.99",
                        "\"from\": 0.99, \"to\": 1",
                        "22:60: /lowered/0/to: lowers nothing; expected a number smaller than \"from\""),
                bad(
                        "a curve of no name",
                        "\"mixed\"",
                        "\"Mixed noise\"",
                        "5:45: /curve/family: is \"Mixed noise\"; expected small letters, figures and single hyphens"),
                bad(
                        "a line that is none",
                        "[\"lamp\"]",
                        "[\"lamp\", \"lamp\", \"bulb\"]",
                        "5:108: /lines/1: is \"lamp\"; expected \"lamp\" and \"pin\", each at most once",
                        "5:116: /lines/2: is \"bulb\"; expected \"lamp\" and \"pin\", each at most once"),
                bad("no line", "[\"lamp\"]", "[]", "5:99: /lines: is empty; at least one was expected"),
                bad(
                        "a decoder of no name",
                        "\"lattice\": {",
                        "\"The lattice\": {",
                        "21:104: /floors/The lattice: is under the name \"The lattice\"; expected the id of a"
                                + " decoder: small letters, figures and single hyphens"),
                bad(
                        "a floor lower than it was lowered to",
                        "\"to\": 0.99",
                        "\"to\": 0.995",
                        "21:13: /floors: the lists_right of plain stands lower than its last entry in \"lowered\""
                                + " says; an entry with the reason was expected"),
                bad(
                        "a lowering between two entries",
                        "\"lowered\": [",
                        "\"lowered\": [{\"floor\": \"codes_right\", \"from\": 1, \"to\": 0.994, \"why\": \"a\"},"
                                + " {\"floor\": \"codes_right\", \"from\": 0.993, \"to\": 0.990, \"why\": \"b\"}, ",
                        "22:110: /lowered/1/from: is lower than the entry before left it; every lowering was expected to"
                                + " have its entry"),
                bad(
                        "a lowered floor of a decoder that has none",
                        "\"decoder\": \"plain\"",
                        "\"decoder\": \"plane\"",
                        "22:91: /lowered/0/decoder: \"plane\" has no floors here"),
                bad(
                        "a floor of invented codes that was raised",
                        "\"lists_right\", \"from\": 1, \"to\": 0.99",
                        "\"invented_codes\", \"from\": 3, \"to\": 2",
                        "22:60: /lowered/0/to: lowers nothing; expected a number greater than \"from\""));
    }

    @ParameterizedTest
    @MethodSource("badFiles")
    void a_mistake_is_told_at_its_place(BadFile file) {
        assertThat(problems(file.text())).containsExactlyElementsOf(file.lines());
    }

    @Test
    void all_mistakes_are_told_in_one_run_in_the_order_of_the_file() {
        String text = GOOD.replace("\"yard\"", "\"Yard\"")
                .replace("\"share\": 0.06", "\"share\": 6")
                .replace("\"why\": \"a bulb\"", "\"why\": \"\"");
        assertThat(problems(text))
                .hasSize(3)
                .satisfiesExactly(
                        line -> assertThat(line).startsWith("set.json:3:9: /id: "),
                        line -> assertThat(line).startsWith("set.json:15:33: /channel/1/share: "),
                        line -> assertThat(line).startsWith("set.json:22:70: /lowered/0/why: "));
    }

    @Nested
    class Of_lessons {
        private static final String LESSON = """
                {"schema": "telltally/scenario/1", "id": "van", "title": "Van", "briefing": ["It coughs."],
                 "task": "Count.", "format": "pair-even", "codes": {"present": ["41"], "stored": []}}
                """;

        private String lessons(String names) {
            return GOOD.replaceAll(
                    "(?s)\"messages\".*?\"channel\"",
                    Matcher.quoteReplacement("\"scenarios\": [" + names + "],\n  \"channel\""));
        }

        @Test
        void they_are_found_beside_the_set() throws IOException, ProblemException {
            Files.createDirectory(folder.resolve("lessons"));
            Files.writeString(folder.resolve("lessons/van.json"), LESSON);
            SeedSource.Scenarios source =
                    (SeedSource.Scenarios) read(lessons("\"lessons/van.json\"")).source();
            assertThat(source.scenarios()).extracting(Scenario::id).containsExactly("van");
        }

        @Test
        void none_is_too_few() {
            assertThat(problems(lessons("")))
                    .containsExactly("set.json:6:16: /scenarios: is empty; at least one lesson was expected");
        }

        @Test
        void one_that_is_not_there_is_told_at_its_name() {
            assertThat(problems(lessons("\"gone.json\", \"a\\u0000b\"")))
                    .containsExactly(
                            "set.json:6:17: /scenarios/0: \"gone.json\": no such file",
                            "set.json:6:30: /scenarios/1: \"a?b\" cannot be the name of a file");
        }

        @Test
        void two_of_the_same_id_are_one_too_many() throws IOException {
            Files.writeString(folder.resolve("a.json"), LESSON);
            Files.writeString(folder.resolve("b.json"), LESSON);
            assertThat(problems(lessons("\"a.json\", \"b.json\"")))
                    .containsExactly(
                            "set.json:6:27: /scenarios/1: the id \"van\" stands twice; lessons with the same id"
                                    + " would share their chance");
        }

        @Test
        void what_is_wrong_with_one_is_told_after_what_is_wrong_with_the_set() throws IOException {
            Files.writeString(
                    folder.resolve("a.json"), LESSON.replace("\"41\"", "\"40\"").replace("Count.", ""));
            assertThat(problems(lessons("\"a.json\"").replace("\"a bulb\"", "\"\"")))
                    .satisfiesExactly(
                            line -> assertThat(line).startsWith("set.json:").contains("/lowered/0/why"),
                            line -> assertThat(line).startsWith("a.json:2:10: /task: "),
                            line -> assertThat(line).startsWith("a.json:2:59: /codes/present/0: "));
        }
    }
}
