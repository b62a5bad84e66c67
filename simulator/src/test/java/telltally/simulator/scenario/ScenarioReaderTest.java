package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;

class ScenarioReaderTest {
    private static final String GOOD = """
            {
              "schema": "telltally/scenario/1",
              "id": "yard-van",
              "title": "The yard van",
              "briefing": ["It coughs."],
              "task": "Count.",
              "format": "pair-even",
              "code_list": "yard",
              "codes": {"present": ["41"], "stored": []}
            }
            """;

    private static final String CODES = "\"codes\": {\"present\": [\"41\"], \"stored\": []}";

    private static final FormatCatalog SHIPPED = FormatCatalog.shipped();
    private static final ScenarioReader READER = new ScenarioReader(
            FormatCatalog.of(Stream.of("pair-even", "pair-thrice", "long-short", "count-loop")
                    .map(ScenarioReaderTest::format)
                    .toList()),
            CodeListCatalog.of(List.of(new CodeList(
                    "yard", "Yard", "", Map.of("11", "nothing", "12", "frame", "41", "open", "42", "shorted")))));

    private static FlashFormat format(String id) {
        return SHIPPED.find(id).orElseThrow();
    }

    private static Scenario read(String text) throws ProblemException {
        return READER.read(new TextFile("lesson.json", text), Optional.empty());
    }

    private static List<String> problems(String text) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> read(text));
        return thrown.problems().stream().map(Problem::toString).toList();
    }

    /** A good lesson with one part of it replaced, and the lines that this must give. */
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
                Stream.of(lines).map(line -> "lesson.json:" + line).toList());
    }

    static Stream<BadFile> badFiles() {
        return Stream.of(headBadFiles(), referenceBadFiles(), numberBadFiles(), segmentBadFiles(), codeBadFiles())
                .flatMap(each -> each);
    }

    private static Stream<BadFile> headBadFiles() {
        return Stream.of(
                bad("no object", GOOD, "[]", "1:1: holds an array; an object was expected: { ... }"),
                bad(
                        "everything missing",
                        GOOD,
                        "{}",
                        "1:1: /schema: is missing; expected \"telltally/scenario/1\"",
                        "1:1: /id: is missing; expected a text",
                        "1:1: /title: is missing; expected a text",
                        "1:1: /briefing: is missing; expected an array of texts",
                        "1:1: /task: is missing; expected a text",
                        "1:1: /format: is missing; expected a text",
                        "1:1: /codes: is missing; expected an object"),
                bad(
                        "another schema",
                        "telltally/scenario/1",
                        "telltally/format/1",
                        "2:13: /schema: is \"telltally/format/1\"; expected \"telltally/scenario/1\""),
                bad(
                        "an id with a space",
                        "yard-van",
                        "Yard van",
                        "3:9: /id: is \"Yard van\"; expected small letters, figures and single hyphens"),
                bad("a title that is a number", "\"The yard van\"", "7", "4:12: /title: is a number; expected a text"),
                bad("a blank title", "The yard van", " ", "4:12: /title: is empty; a text was expected"),
                bad(
                        "a briefing that is one text",
                        "[\"It coughs.\"]",
                        "\"It coughs.\"",
                        "5:15: /briefing: is a text; expected an array of texts"),
                bad(
                        "a briefing without paragraphs",
                        "[\"It coughs.\"]",
                        "[]",
                        "5:15: /briefing: is empty; at least one paragraph was expected"),
                bad(
                        "a blank paragraph",
                        "[\"It coughs.\"]",
                        "[\"It coughs.\", \"\"]",
                        "5:30: /briefing/1: is empty; a paragraph was expected"),
                bad(
                        "a paragraph that is no text",
                        "[\"It coughs.\"]",
                        "[null]",
                        "5:16: /briefing/0: is null; expected a text"),
                bad("a blank task", "Count.", "", "6:11: /task: is empty; a text was expected"),
                bad(
                        "a mistyped field",
                        "\"task\"",
                        "\"showed_by\": \"lamp\", \"task\"",
                        "6:3: /showed_by: is not known here; expected one of schema, id, title, briefing, task, format,"
                                + " code_list, cylinders, prompt, shown_by, loops, codes, channel"),
                bad(
                        "a display that is none",
                        "\"task\"",
                        "\"shown_by\": \"bell\", \"task\"",
                        "6:15: /shown_by: is \"bell\"; expected \"lamp\" or \"led\" or \"sounder\" or \"lamp-and-sounder\""
                                + " or \"test-light\" or \"meter\""));
    }

    private static Stream<BadFile> referenceBadFiles() {
        return Stream.of(
                bad(
                        "an unknown format",
                        "pair-even",
                        "pair-odd",
                        "7:13: /format: no format is called \"pair-odd\"; expected pair-even, pair-thrice, long-short,"
                                + " count-loop or a file ending in .json"),
                bad("a blank format", "pair-even", "", "7:13: /format: is empty; a text was expected"),
                bad(
                        "an unknown code list",
                        "\"yard\"",
                        "\"barn\"",
                        "8:16: /code_list: no code list is called \"barn\"; expected yard or a file ending in .json"),
                bad("a blank code list", "\"yard\"", "\"\"", "8:16: /code_list: is empty; a text was expected"),
                bad(
                        "a format in a file that is not there",
                        "pair-even",
                        "no-such-folder/barn.json",
                        "7:13: /format: \"no-such-folder/barn.json\": no such file"),
                bad(
                        "a code list in a file with an impossible name",
                        "\"yard\"",
                        "\"\\u0000.json\"",
                        "8:16: /code_list: \"?.json\" cannot be the name of a file"));
    }

    private static Stream<BadFile> numberBadFiles() {
        return Stream.of(
                bad(
                        "too many cylinders",
                        "\"task\"",
                        "\"cylinders\": 14, \"task\"",
                        "6:16: /cylinders: is 14; expected a whole number from 2 to 12"),
                bad(
                        "half a cylinder",
                        "\"task\"",
                        "\"cylinders\": 4.5, \"task\"",
                        "6:16: /cylinders: is 4.5; expected a whole number"),
                bad(
                        "no half of the cylinders",
                        CODES,
                        "\"cylinders\": 5, \"codes\": {\"running\": []}",
                        "9:16: /cylinders: is 5; expected an even number, as a running test opens with half of it"),
                bad(
                        "a running test without cylinders",
                        CODES,
                        "\"codes\": {\"running\": []}",
                        "1:1: /cylinders: is missing; a running test opens with half the number of cylinders"),
                bad(
                        "a prompt that is a text",
                        CODES,
                        "\"cylinders\": 4, \"prompt\": \"yes\", \"codes\": {\"running\": []}",
                        "9:29: /prompt: is a text; expected true or false"),
                bad(
                        "a prompt with the engine off",
                        "\"task\"",
                        "\"prompt\": true, \"task\"",
                        "6:13: /prompt: has no meaning here; only a running test prompts"),
                bad(
                        "no loop at all",
                        "\"pair-even\"",
                        "\"long-short\", \"loops\": 0",
                        "7:36: /loops: is 0; expected a whole number from 1 to 20",
                        "9:24: /codes/present: is no segment of the format long-short; expected codes",
                        "9:42: /codes/stored: is no segment of the format long-short; expected codes"),
                bad(
                        "loops in a format without",
                        "\"task\"",
                        "\"loops\": 3, \"task\"",
                        "6:12: /loops: has no meaning here; the format pair-even does not loop"));
    }

    private static Stream<BadFile> segmentBadFiles() {
        String expected = "; expected the codes of one test: present and stored, or running, or balance, or codes";
        return Stream.of(
                bad("codes that are a list", CODES, "\"codes\": []", "9:12: /codes: is an array; expected an object"),
                bad("no segment", CODES, "\"codes\": {}", "9:12: /codes: holds no segment" + expected),
                bad(
                        "a mistyped segment",
                        CODES,
                        "\"codes\": {\"presnt\": []}",
                        "9:12: /codes: holds no segment" + expected,
                        "9:13: /codes/presnt: is not known here; expected one of present, stored, running, balance, codes"),
                bad(
                        "a mistyped second segment",
                        "\"stored\"",
                        "\"stord\"",
                        "9:32: /codes/stord: is not known here; expected one of present, stored"),
                bad(
                        "two tests",
                        "\"stored\"",
                        "\"balance\"",
                        "9:12: /codes: holds present and stored, balance" + expected),
                bad(
                        "segments in a format without",
                        "\"pair-even\"",
                        "\"long-short\"",
                        "9:24: /codes/present: is no segment of the format long-short; expected codes",
                        "9:42: /codes/stored: is no segment of the format long-short; expected codes"),
                bad(
                        "no segments in a format with them",
                        CODES,
                        "\"codes\": {\"codes\": [\"41\"]}",
                        "9:22: /codes/codes: is no segment of the format pair-even; expected present, stored, running,"
                                + " balance"));
    }

    private static Stream<BadFile> codeBadFiles() {
        String oneResult =
                "expected one result: the flashes 1 to 9, with or without the zero that is written after them";
        return Stream.of(
                bad(
                        "a code that is a number",
                        "[\"41\"]",
                        "[41]",
                        "9:25: /codes/present/0: is a number; expected a text"),
                bad(
                        "a list that is a text",
                        "[\"41\"]",
                        "\"41\"",
                        "9:24: /codes/present: is a text; expected an array of texts"),
                bad(
                        "a code that the format cannot send",
                        "[\"41\"]",
                        "[\"41\", \"40\"]",
                        "9:31: /codes/present/1: \"40\": "
                                + format("pair-even").refusal("40").orElseThrow()),
                bad(
                        "the framing code",
                        "\"pair-even\",\n  \"code_list\": \"yard\",\n  " + CODES,
                        "\"pair-thrice\",\n  \"code_list\": \"yard\",\n  \"codes\": {\"codes\": [\"12\"]}",
                        "9:23: /codes/codes/0: \"12\": is the framing code of this format and no part of a list"),
                bad(
                        "a code that the list does not know",
                        "[\"41\"]",
                        "[\"43\"]",
                        "9:25: /codes/present/0: \"43\" is not in the code list yard"),
                bad(
                        "a code twice",
                        "[\"41\"]",
                        "[\"41\", \"42\", \"41\"]",
                        "9:37: /codes/present/2: \"41\" stands twice; a list has each code once"),
                bad(
                        "the pass code beside another",
                        "[\"41\"]",
                        "[\"41\", \"11\"]",
                        "9:31: /codes/present/1: \"11\" says that there is nothing to report; it cannot stand beside"
                                + " other codes"),
                bad(
                        "more codes than the format sends",
                        "\"pair-even\",\n  \"code_list\": \"yard\",\n  " + CODES,
                        "\"count-loop\",\n  \"codes\": {\"codes\": [\"4\", \"7\"]}",
                        "8:12: /codes: 2 codes; the format count-loop sends at most 1"),
                bad(
                        "two balance results",
                        CODES,
                        "\"codes\": {\"balance\": [\"3\", \"4\"]}",
                        "9:24: /codes/balance: " + oneResult),
                bad(
                        "a balance result of no flash",
                        CODES,
                        "\"codes\": {\"balance\": [\"0\"]}",
                        "9:24: /codes/balance: " + oneResult),
                bad(
                        "a balance result that is a number",
                        CODES,
                        "\"codes\": {\"balance\": [3]}",
                        "9:25: /codes/balance/0: is a number; expected a text"),
                bad(
                        "a balance result for a cylinder that is not there",
                        CODES,
                        "\"cylinders\": 4, \"codes\": {\"balance\": [\"5\"]}",
                        "9:41: /codes/balance/0: \"5\" names a cylinder too many; expected 1 to 4, or 9 where every"
                                + " cylinder contributes"));
    }

    @ParameterizedTest
    @MethodSource("badFiles")
    void each_rule_is_told_with_place_field_and_what_was_expected(BadFile file) {
        assertThat(problems(file.text())).containsExactlyElementsOf(file.lines());
    }

    @Test
    void all_problems_of_a_file_are_told_in_one_run_in_the_order_of_the_file() {
        String text = GOOD.replace("yard-van", "Yard")
                .replace("It coughs.", "")
                .replace("pair-even", "pair-odd")
                .replace("[\"41\"]", "[\"41\", \"43\", 7]");
        assertThat(problems(text))
                .extracting(line -> line.replaceFirst("^lesson.json:(\\d+:\\d+: [^:]*):.*", "$1"))
                .containsExactly(
                        "3:9: /id",
                        "5:16: /briefing/0",
                        "7:13: /format",
                        "9:31: /codes/present/1",
                        "9:37: /codes/present/2");
    }

    @Test
    void a_hostile_code_is_quoted_on_one_short_line() {
        String text = GOOD.replace("[\"41\"]", "[\"" + "4\\n".repeat(5_000) + "\"]");
        assertThat(problems(text)).singleElement().satisfies(line -> {
            assertThat(line)
                    .startsWith("lesson.json:9:25: /codes/present/0: \"4?4?")
                    .doesNotContain("\n");
            assertThat(line).hasSizeLessThan(200);
        });
    }

    @Nested
    class A_good_file {
        @Test
        void is_read_whole() throws ProblemException {
            Scenario scenario = read(GOOD);
            assertThat(scenario.id()).isEqualTo("yard-van");
            assertThat(scenario.title()).isEqualTo("The yard van");
            assertThat(scenario.briefing()).containsExactly("It coughs.");
            assertThat(scenario.task()).isEqualTo("Count.");
            assertThat(scenario.format().id()).isEqualTo("pair-even");
            assertThat(scenario.codeList().orElseThrow().id()).isEqualTo("yard");
            assertThat(((Content.Outright) scenario.content()).message())
                    .isEqualTo(new Message.KeyOn(List.of("41"), List.of()));
            assertThat(scenario.display()).isEqualTo(Display.LAMP);
            assertThat(scenario.loops()).isEqualTo(2);
        }

        @Test
        void needs_no_code_list() throws ProblemException {
            assertThat(read(GOOD.replace("  \"code_list\": \"yard\",\n", "")).codeList())
                    .isEmpty();
        }

        @Test
        void may_give_stored_codes_only() throws ProblemException {
            assertThat(message("{\"stored\": [\"42\", \"41\"]}"))
                    .isEqualTo(new Message.KeyOn(List.of(), List.of("42", "41")));
        }

        @Test
        void may_say_that_there_is_nothing_to_report_by_the_pass_code() throws ProblemException {
            assertThat(message("{\"present\": [\"11\"]}")).isEqualTo(new Message.KeyOn(List.of("11"), List.of()));
        }

        @Test
        void may_hold_a_running_test_with_a_prompt() throws ProblemException {
            Scenario scenario =
                    read(GOOD.replace(CODES, "\"cylinders\": 6, \"prompt\": true, \"codes\": {\"running\": [\"41\"]}"));
            assertThat(((Content.Outright) scenario.content()).message())
                    .isEqualTo(new Message.Running(6, true, List.of("41")));
        }

        @Test
        void may_write_a_balance_result_with_its_silent_zero() throws ProblemException {
            assertThat(message("{\"balance\": [\"40\"]}")).isEqualTo(new Message.Balance(4));
        }

        @Test
        void may_report_nine_for_an_engine_with_fewer_cylinders() throws ProblemException {
            Scenario scenario = read(GOOD.replace(CODES, "\"cylinders\": 4, \"codes\": {\"balance\": [\"9\"]}"));
            assertThat(((Content.Outright) scenario.content()).message()).isEqualTo(new Message.Balance(9));
        }

        @Test
        void may_loop_and_choose_the_sounder() throws ProblemException {
            Scenario scenario = read(GOOD.replace("pair-even", "long-short")
                    .replace(CODES, "\"shown_by\": \"sounder\", \"loops\": 20, \"codes\": {\"codes\": [\"41\"]}"));
            assertThat(scenario.display()).isEqualTo(Display.SOUNDER);
            assertThat(scenario.loops()).isEqualTo(20);
        }

        private Message message(String codes) throws ProblemException {
            Content content = read(GOOD.replace(CODES, "\"codes\": " + codes)).content();
            return ((Content.Outright) content).message();
        }
    }

    @Nested
    class Files_named_by_a_lesson {
        private static final String FORMAT = """
                {"schema": "telltally/format/1", "id": "barn", "title": "Barn", "flashes_s": {"flash": 0.4},
                 "code": {"places": [{"flash": "flash", "from": 1, "to": 40}]},
                 "gaps": {"within_digit_s": 0.4, "before_repeat_s": 3.0}, "list": {"loops": true, "most_codes": 1}}
                """;

        private static final String LIST = """
                {"schema": "telltally/codelist/1", "id": "barn-codes", "title": "Barn",
                 "codes": [{"code": "33", "meaning": "door open"}]}
                """;

        @TempDir
        Path folder;

        private Path lesson() throws IOException {
            Files.createDirectories(folder.resolve("lessons"));
            return Files.writeString(
                    folder.resolve("lessons/lesson.json"),
                    GOOD.replace("\"pair-even\"", "\"../barn.json\"")
                            .replace("\"yard\"", "\"barn-codes.json\"")
                            .replace(CODES, "\"codes\": {\"codes\": [\"33\"]}"));
        }

        private List<String> problemsOf(Path path) {
            ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> READER.read(path));
            return thrown.problems().stream()
                    .map(problem -> problem.toString()
                            .replace(folder + path.getFileSystem().getSeparator(), ""))
                    .map(line -> line.replace('\\', '/'))
                    .toList();
        }

        @Test
        void lie_relative_to_the_lesson() throws IOException, ProblemException {
            Path lesson = lesson();
            Files.writeString(folder.resolve("barn.json"), FORMAT);
            Files.writeString(folder.resolve("lessons/barn-codes.json"), LIST);
            Scenario scenario = READER.read(lesson);
            assertThat(scenario.format().id()).isEqualTo("barn");
            assertThat(scenario.codeList().orElseThrow().meaning("33")).contains("door open");
        }

        @Test
        void are_told_of_at_the_place_that_names_them_where_they_cannot_be_had() throws IOException {
            Path lesson = lesson();
            Files.createDirectory(folder.resolve("barn.json"));
            assertThat(problemsOf(lesson))
                    .containsExactly(
                            "lessons/lesson.json:7:13: /format: \"../barn.json\": is a directory; a file was expected",
                            "lessons/lesson.json:8:16: /code_list: \"barn-codes.json\": no such file");
        }

        @Test
        void are_told_of_at_their_own_places_after_the_problems_of_the_lesson() throws IOException {
            Path lesson = lesson();
            Files.writeString(lesson, Files.readString(lesson).replace("yard-van", "Yard"));
            Files.writeString(folder.resolve("barn.json"), FORMAT.replace("\"Barn\"", "7"));
            Files.writeString(folder.resolve("lessons/barn-codes.json"), LIST.replace("door open", ""));
            assertThat(problemsOf(lesson))
                    .containsExactly(
                            "lessons/lesson.json:3:9: /id: is \"Yard\"; expected small letters, figures and single"
                                    + " hyphens",
                            "barn.json:1:57: /title: is a number; expected a text",
                            "lessons/barn-codes.json:2:38: /codes/0/meaning: is empty; a text was expected");
        }

        @Test
        void do_not_hide_what_is_wrong_with_the_codes() throws IOException {
            Path lesson = lesson();
            Files.writeString(lesson, Files.readString(lesson).replace("[\"33\"]", "[\"33\", \"41\", \"41\"]"));
            Files.writeString(folder.resolve("lessons/barn-codes.json"), LIST);
            assertThat(problemsOf(lesson))
                    .containsExactly(
                            "lessons/lesson.json:7:13: /format: \"../barn.json\": no such file",
                            "lessons/lesson.json:9:29: /codes/codes/1: \"41\" is not in the code list barn-codes",
                            "lessons/lesson.json:9:35: /codes/codes/2: \"41\" is not in the code list barn-codes");
        }
    }
}
