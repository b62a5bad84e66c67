package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schemas are for editors; what they refuse, the readers refuse as well. */
class SchemasTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static String schemaText(String name) {
        return new ResourceFolder("telltally/scenarios/schemas")
                .read().stream()
                        .filter(file -> file.name().equals(name + ".schema.json"))
                        .findFirst()
                        .orElseThrow()
                        .text();
    }

    private static Schema schema(String name) {
        return REGISTRY.getSchema(schemaText(name), InputFormat.JSON);
    }

    private static List<Error> errors(Schema schema, String text) {
        return schema.validate(text, InputFormat.JSON);
    }

    private static List<TextFile> shipped(String folder) {
        return new ResourceFolder("telltally/scenarios/" + folder).read();
    }

    @ParameterizedTest
    @ValueSource(strings = {"scenario", "codelist"})
    void a_schema_is_valid_by_the_schema_of_its_draft(String name) {
        Schema draft = REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertThat(errors(draft, schemaText(name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"scenario", "codelist"})
    void a_schema_has_its_name_and_explains_every_field(String name) {
        JsonNode schema = JsonMapper.shared().readTree(schemaText(name));
        assertThat(schema.get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.get("$id").asString()).isEqualTo("urn:telltally:schema:" + name + ":1");
        assertThat(fields(schema))
                .hasSizeGreaterThan(6)
                .allMatch(field -> field.has("title") && field.has("description"));
    }

    /** The schemas of all members, however deep. */
    private static Stream<JsonNode> fields(JsonNode schema) {
        Stream<JsonNode> members = schema.path("properties").valueStream();
        return Stream.concat(
                members.flatMap(member -> Stream.concat(Stream.of(member), fields(member))),
                schema.has("items") ? fields(schema.get("items")) : Stream.of());
    }

    @Nested
    class Of_scenarios {
        private final Schema schema = schema("scenario");

        private static final String GOOD = """
                {"schema": "telltally/scenario/1", "id": "yard", "title": "Yard", "briefing": ["It coughs."],
                 "task": "Count.", "format": "pair-even", "codes": {"present": ["41"], "stored": []}}
                """;

        @Test
        void every_shipped_lesson_is_valid() {
            List<TextFile> lessons = shipped("lessons");
            assertThat(lessons)
                    .hasSize(50)
                    .allSatisfy(
                            lesson -> assertThat(errors(schema, lesson.text())).isEmpty());
        }

        @Test
        void the_good_example_is_accepted_by_schema_and_reader() throws ProblemException {
            assertThat(errors(schema, GOOD)).isEmpty();
            assertThat(ScenarioReader.shipped().read(new TextFile("good.json", GOOD), Optional.empty()))
                    .isNotNull();
        }

        private static final String STORY = """
                {"schema": "telltally/scenario/1", "id": "yard", "title": "Yard", "briefing": ["It coughs."],
                 "task": "Count.", "format": "pair-even", "code_list": "plank",
                 "vehicle": {"cylinders": 4, "transmission": "manual", "firing_order": [1, 2, 4, 3],
                  "weak": [{"cylinder": 2, "strength": 0.3, "cause": "fuel"}]},
                 "conditions": {"coolant_c": 20, "gear": "neutral"},
                 "faults": [{"circuit": "coolant", "fault": "high-resistance", "place": "signal-wire", "ohms": 900},
                  {"circuit": "air", "fault": "open", "when": "wiggled", "connector": "air-sensor"},
                  {"circuit": "throttle", "fault": "drifted", "share": 0.2, "when": "recurring", "period_s": 9, "length_s": 1}],
                 "acts": [{"at_s": 1, "act": "key-on"}, {"at_s": 2, "act": "throttle", "to": "floor"},
                  {"at_s": 3, "act": "gear", "gear": "engaged"}, {"at_s": 4, "act": "wiggle", "connector": "air-sensor", "for_s": 3},
                  {"at_s": 8, "act": "clutch", "down": true}, {"at_s": 9, "act": "air-conditioning", "on": true}]}
                """;

        @Test
        void the_good_story_is_accepted_by_schema_and_reader() throws ProblemException {
            assertThat(errors(schema, STORY)).isEmpty();
            assertThat(ScenarioReader.shipped().read(new TextFile("good.json", STORY), Optional.empty()))
                    .isNotNull();
        }

        static Stream<String> badStories() {
            return Stream.of(
                    STORY.replace("\"code_list\": \"plank\",", ""),
                    STORY.replace("\"cylinders\": 4", "\"cylinders\": 13"),
                    STORY.replace("\"cylinders\": 4, ", ""),
                    STORY.replace("\"manual\"", "\"sledge\""),
                    STORY.replace("[1, 2, 4, 3]", "[1, 2, 4, 4]"),
                    STORY.replace("0.3", "1"),
                    STORY.replace("\"fuel\"", "\"luck\""),
                    STORY.replace("\"coolant_c\": 20", "\"coolant_c\": 200"),
                    STORY.replace("\"coolant_c\": 20", "\"coolant_k\": 20"),
                    STORY.replace("\"neutral\"", "\"reverse\""),
                    STORY.replace(", \"ohms\": 900", ""),
                    STORY.replace("\"ohms\": 900", "\"ohms\": 0"),
                    STORY.replace("\"fault\": \"open\"", "\"fault\": \"broken\""),
                    STORY.replace("\"signal-wire\"", "\"somewhere\""),
                    STORY.replace(", \"connector\": \"air-sensor\"}", "}"),
                    STORY.replace("\"fault\": \"open\"", "\"fault\": \"open\", \"ohms\": 3"),
                    STORY.replace("\"wiggled\"", "\"always\""),
                    STORY.replace(", \"share\": 0.2", ""),
                    STORY.replace("\"period_s\": 9, ", ""),
                    STORY.replace("\"length_s\": 1", "\"length_s\": 0.05"),
                    STORY.replace("{\"at_s\": 1, ", "{"),
                    STORY.replace("\"at_s\": 1,", "\"at_s\": 0,"),
                    STORY.replace("\"key-on\"", "\"kick\""),
                    STORY.replace(", \"to\": \"floor\"", ""),
                    STORY.replace(", \"gear\": \"engaged\"", ""),
                    STORY.replace("\"key-on\"", "\"key-on\", \"for_s\": 2"),
                    STORY.replaceAll("(?s)\"acts\": .*]", "\"acts\": []"),
                    STORY.replaceAll("(?s),\\s*\"acts\": .*]", ""),
                    STORY.replace("\"faults\"", "\"loops\": 2, \"faults\""),
                    STORY.replace("\"faults\"", "\"codes\": {\"present\": []}, \"faults\""),
                    GOOD.replace("\"codes\"", "\"acts\": [{\"at_s\": 1, \"act\": \"wait\"}], \"codes\""));
        }

        @ParameterizedTest
        @MethodSource("badStories")
        void a_bad_story_is_refused_by_schema_and_reader(String text) {
            assertThat(text).isNotIn(GOOD, STORY);
            assertThat(errors(schema, text)).isNotEmpty();
            assertThatThrownBy(() -> ScenarioReader.shipped().read(new TextFile("bad.json", text), Optional.empty()))
                    .isInstanceOf(ProblemException.class);
        }

        static Stream<String> badFiles() {
            return Stream.of(
                    GOOD.replace("scenario/1", "scenario/2"),
                    GOOD.replace("\"yard\"", "\"Yard\""),
                    GOOD.replace("\"title\"", "\"titel\""),
                    GOOD.replace("\"Yard\"", "\" \""),
                    GOOD.replace("[\"It coughs.\"]", "[]"),
                    GOOD.replace("It coughs.", ""),
                    GOOD.replace("\"Count.\"", "1"),
                    GOOD.replace("\"pair-even\"", "\"\""),
                    GOOD.replace("\"task\"", "\"code_list\": \"\", \"task\""),
                    GOOD.replace("\"task\"", "\"cylinders\": 14, \"task\""),
                    GOOD.replace("\"task\"", "\"cylinders\": 4.5, \"task\""),
                    GOOD.replace("\"task\"", "\"prompt\": true, \"task\""),
                    GOOD.replace("\"task\"", "\"shown_by\": \"bell\", \"task\""),
                    GOOD.replace("\"pair-even\"", "\"long-short\", \"loops\": 21")
                            .replace("\"present\": [\"41\"], \"stored\"", "\"codes\""),
                    GOOD.replace("{\"present\": [\"41\"], \"stored\": []}", "{}"),
                    GOOD.replace("\"stored\"", "\"stord\""),
                    GOOD.replace("\"stored\"", "\"running\""),
                    GOOD.replace("\"41\"", "41"),
                    GOOD.replace("\"41\"", "\"\""),
                    GOOD.replace("\"41\"", "\"41\", \"41\""),
                    GOOD.replace("\"present\": [\"41\"], \"stored\"", "\"running\""),
                    GOOD.replace("\"present\": [\"41\"], \"stored\"", "\"running\"")
                            .replace("\"task\"", "\"cylinders\": 5, \"task\""),
                    GOOD.replace("\"present\": [\"41\"], \"stored\": []", "\"balance\": [\"0\"]"),
                    GOOD.replace("\"present\": [\"41\"], \"stored\": []", "\"balance\": [\"3\", \"4\"]"));
        }

        @ParameterizedTest
        @MethodSource("badFiles")
        void a_bad_file_is_refused_by_schema_and_reader(String text) {
            assertThat(text).isNotEqualTo(GOOD);
            assertThat(errors(schema, text)).isNotEmpty();
            assertThatThrownBy(() -> ScenarioReader.shipped().read(new TextFile("bad.json", text), Optional.empty()))
                    .isInstanceOf(ProblemException.class);
        }
    }

    @Nested
    class Of_code_lists {
        private final Schema schema = schema("codelist");

        private static final String GOOD = """
                {"schema": "telltally/codelist/1", "id": "barn", "title": "Barn", "notes": "Invented.",
                 "codes": [{"code": "7", "meaning": "door open"},
                  {"code": "8", "meaning": "door hot", "set_by": [{"condition": "coolant-voltage-low", "in": ["stored", "codes"]}]}]}
                """;

        @Test
        void every_shipped_list_is_valid() {
            List<TextFile> lists = shipped("codelists");
            assertThat(lists)
                    .hasSize(4)
                    .allSatisfy(list -> assertThat(errors(schema, list.text())).isEmpty());
        }

        @Test
        void the_good_example_is_accepted_by_schema_and_reader() throws ProblemException {
            assertThat(errors(schema, GOOD)).isEmpty();
            assertThat(CodeListReader.read(new TextFile("good.json", GOOD))).isNotNull();
        }

        static Stream<String> badFiles() {
            return Stream.of(
                    GOOD.replace("codelist/1", "scenario/1"),
                    GOOD.replace("\"barn\"", "\"barn door\""),
                    GOOD.replace("\"Barn\"", "\"\""),
                    GOOD.replace("\"Invented.\"", "\"\""),
                    GOOD.replace("\"notes\"", "\"note\""),
                    GOOD.replaceAll("(?s)\\[\\{\"code\": \"7\".*]", "[]"),
                    GOOD.replace("\"condition\"", "\"state\""),
                    GOOD.replace("coolant-voltage-low", "coolant voltage low"),
                    GOOD.replace("[\"stored\", \"codes\"]", "[]"),
                    GOOD.replace("\"stored\"", "\"balance\""),
                    GOOD.replace("\"stored\"", "\"codes\""),
                    GOOD.replaceAll("\"set_by\": \\[.*?\\]\\}\\]", "\"set_by\": []"),
                    GOOD.replace("\"7\"", "7"),
                    GOOD.replace("\"7\"", "\"7 1\""),
                    GOOD.replace("door open", ""),
                    GOOD.replace("\"meaning\"", "\"means\""),
                    GOOD.replace("{\"code\": \"7\", \"meaning\": \"door open\"}", "\"7\""));
        }

        @ParameterizedTest
        @MethodSource("badFiles")
        void a_bad_file_is_refused_by_schema_and_reader(String text) {
            assertThat(text).isNotEqualTo(GOOD);
            assertThat(errors(schema, text)).isNotEmpty();
            assertThatThrownBy(() -> CodeListReader.read(new TextFile("bad.json", text)))
                    .isInstanceOf(ProblemException.class);
        }
    }

    @Nested
    class Of_translations {
        private final Schema schema = schema("translation");

        @Test
        void every_shipped_translation_is_valid() {
            assertThat(shipped("translations"))
                    .isNotEmpty()
                    .allSatisfy(translation ->
                            assertThat(errors(schema, translation.text())).isEmpty());
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "{\"schema\": \"telltally/translation/2\", \"language\": \"de\", \"texts\": {}}",
                    "{\"schema\": \"telltally/translation/1\", \"texts\": {}}",
                    "{\"schema\": \"telltally/translation/1\", \"language\": \"German\", \"texts\": {}}",
                    "{\"schema\": \"telltally/translation/1\", \"language\": \"de\", \"texts\": {\"Count.\": \" \"}}",
                    "{\"schema\": \"telltally/translation/1\", \"language\": \"de\", \"text\": {\"Count.\": \"Zähle.\"}}"
                })
        void what_a_translation_is_not_is_refused(String text) {
            assertThat(errors(schema, text)).isNotEmpty();
        }
    }
}
