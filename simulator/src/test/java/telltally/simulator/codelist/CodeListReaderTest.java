package telltally.simulator.codelist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.Segment;

class CodeListReaderTest {
    private static final String GOOD = """
            {
              "schema": "telltally/codelist/1",
              "id": "barn",
              "title": "The barn door",
              "notes": "Invented.",
              "codes": [
                {"code": "7", "meaning": "door open"},
                {"code": "3", "meaning": "door jammed"}
              ]
            }
            """;

    private static final String ENTRIES = GOOD.substring(GOOD.indexOf('['), GOOD.indexOf(']') + 1);

    private static CodeList read(String text) throws ProblemException {
        return CodeListReader.read(new TextFile("list.json", text));
    }

    private static List<String> problems(String text) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> read(text));
        return thrown.problems().stream().map(Problem::toString).toList();
    }

    /** A good list with one part of it replaced, and the lines that this must give. */
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
                Stream.of(lines).map(line -> "list.json:" + line).toList());
    }

    static Stream<BadFile> badFiles() {
        return Stream.of(
                bad("no object", GOOD, "\"7\"", "1:1: holds a text; an object was expected: { ... }"),
                bad(
                        "everything missing",
                        GOOD,
                        "{}",
                        "1:1: /schema: is missing; expected \"telltally/codelist/1\"",
                        "1:1: /id: is missing; expected a text",
                        "1:1: /title: is missing; expected a text",
                        "1:1: /codes: is missing; expected an array of objects"),
                bad(
                        "another schema",
                        "codelist/1",
                        "codelist/2",
                        "2:13: /schema: is \"telltally/codelist/2\"; expected \"telltally/codelist/1\""),
                bad(
                        "a bad id",
                        "\"barn\"",
                        "\"barn-\"",
                        "3:9: /id: is \"barn-\"; expected small letters, figures and single hyphens"),
                bad("a blank title", "The barn door", "", "4:12: /title: is empty; a text was expected"),
                bad("blank notes", "Invented.", " ", "5:12: /notes: is empty; a text was expected"),
                bad(
                        "a mistyped field",
                        "\"notes\"",
                        "\"note\"",
                        "5:3: /note: is not known here; expected one of schema, id, title, notes, codes"),
                bad(
                        "codes by name",
                        ENTRIES,
                        "{\"7\": \"open\"}",
                        "6:12: /codes: is an object; expected an array of objects"),
                bad(
                        "no code",
                        ENTRIES,
                        "[]",
                        "6:12: /codes: is empty; at least one code with its meaning was expected"),
                bad("a code without an object", ENTRIES, "[\"7\"]", "6:13: /codes/0: is a text; expected an object"),
                bad("a code that is a number", "\"7\"", "7", "7:14: /codes/0/code: is a number; expected a text"),
                bad("a blank code", "\"7\"", "\"\"", "7:14: /codes/0/code: is empty; a text was expected"),
                bad(
                        "a code with a space",
                        "\"7\"",
                        "\"7 \"",
                        "7:14: /codes/0/code: \"7 \" has a space in it; a code has none"),
                bad("a code twice", "\"3\"", "\"7\"", "8:14: /codes/1/code: \"7\" stands here for the second time"),
                bad(
                        "no meaning",
                        ", \"meaning\": \"door jammed\"",
                        "",
                        "8:5: /codes/1/meaning: is missing; expected a text"),
                bad(
                        "an empty set_by",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": []}",
                        "7:53: /codes/0/set_by: is empty; expected at least one condition, or no \"set_by\""),
                bad(
                        "a condition that is no name",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"Door\", \"in\": [\"codes\"]}]}",
                        "7:68: /codes/0/set_by/0/condition: is \"Door\"; expected small letters, figures and single"
                                + " hyphens"),
                bad(
                        "a condition in no segment",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"door\", \"in\": []}]}",
                        "7:82: /codes/0/set_by/0/in: is empty; expected at least one segment that tells of the"
                                + " condition"),
                bad(
                        "a segment that tells of no condition",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"door\", \"in\": [\"balance\"]}]}",
                        "7:83: /codes/0/set_by/0/in/0: is \"balance\"; expected \"present\", \"stored\", \"running\" or"
                                + " \"codes\", each once"),
                bad(
                        "a segment twice",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"door\", \"in\": [\"codes\", \"codes\"]}]}",
                        "7:92: /codes/0/set_by/0/in/1: is \"codes\"; expected \"present\", \"stored\", \"running\" or"
                                + " \"codes\", each once"),
                bad(
                        "a mistyped field of a condition",
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"door\", \"in\": [\"codes\"], \"at\": 1}]}",
                        "7:93: /codes/0/set_by/0/at: is not known here; expected one of condition, in"),
                bad(
                        "a mistyped field of a code",
                        "\"door open\"}",
                        "\"door open\", \"see\": \"\"}",
                        "7:43: /codes/0/see: is not known here; expected one of code, meaning," + " set_by"));
    }

    @ParameterizedTest
    @MethodSource("badFiles")
    void each_rule_is_told_with_place_field_and_what_was_expected(BadFile file) {
        assertThat(problems(file.text())).containsExactlyElementsOf(file.lines());
    }

    @Test
    void all_problems_of_a_file_are_told_in_one_run_in_the_order_of_the_file() {
        assertThat(problems(GOOD.replace("barn\"", "Barn\"").replace(ENTRIES, "[]")))
                .containsExactly(
                        "list.json:3:9: /id: is \"Barn\"; expected small letters, figures and single hyphens",
                        "list.json:6:12: /codes: is empty; at least one code with its meaning was expected");
    }

    @Test
    void a_good_list_keeps_the_order_of_the_file() throws ProblemException {
        CodeList list = read(GOOD);
        assertThat(list.id()).isEqualTo("barn");
        assertThat(list.title()).isEqualTo("The barn door");
        assertThat(list.notes()).isEqualTo("Invented.");
        assertThat(list.meanings()).containsExactly(entry("7", "door open"), entry("3", "door jammed"));
        assertThat(list.meaning("4")).isEmpty();
    }

    @Test
    void conditions_set_codes_in_the_segments_that_tell_of_them_in_the_order_of_the_list() throws ProblemException {
        CodeList list = read(GOOD.replace(
                        "\"door open\"}",
                        "\"door open\", \"set_by\": [{\"condition\": \"cold\", \"in\": [\"stored\", \"codes\"]},"
                                + " {\"condition\": \"wet\", \"in\": [\"codes\"]}]}")
                .replace(
                        "\"door jammed\"}",
                        "\"door jammed\", \"set_by\": [{\"condition\": \"wet\", \"in\": [\"codes\"]}]}"));
        assertThat(list.codesFor(List.of("wet", "cold"), Segment.CODES)).containsExactly("7", "3");
        assertThat(list.codesFor(List.of("cold"), Segment.STORED)).containsExactly("7");
        assertThat(list.codesFor(List.of("wet"), Segment.STORED)).isEmpty();
        assertThat(list.codesFor(List.of("dry"), Segment.CODES)).isEmpty();
    }

    @Test
    void notes_may_be_left_out() throws ProblemException {
        assertThat(read(GOOD.replace("  \"notes\": \"Invented.\",\n", "")).notes())
                .isEmpty();
    }
}
