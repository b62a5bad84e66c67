package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class XapiExportTest {
    private static final Learner MIRA = new Learner(1, "Mira \"M\" Öberg", SampleEntries.MORNING);
    private static final URI SCHOOL = URI.create("https://school.example");
    private static final JsonMapper JSON = new JsonMapper();

    private static JsonNode exported(Entry... entries) {
        StringWriter text = new StringWriter();
        try (XapiExport export = new XapiExport(SCHOOL, text)) {
            for (Entry entry : entries) {
                if (entry instanceof DrillEntry drill) {
                    export.drill(MIRA, drill);
                } else {
                    export.lesson(MIRA, (LessonEntry) entry);
                }
            }
        }
        return JSON.readTree(text.toString());
    }

    @Test
    void statements_keep_the_rules_of_the_specification() {
        JsonNode statements = exported(
                SampleEntries.drill("written codes:8@5400"), SampleEntries.drill("none"), SampleEntries.lesson());

        assertThat(statements.size()).isEqualTo(3);
        statements.forEach(each -> assertThat(XapiRules.brokenBy(each)).isEmpty());
    }

    @Test
    void nothing_to_export_is_an_empty_list() {
        assertThat(exported().isArray()).isTrue();
        assertThat(exported().isEmpty()).isTrue();
    }

    @Test
    void a_drill_says_what_was_expected_and_what_was_answered() {
        DrillEntry drill = new DrillEntry(
                UUID.fromString("5b0c1f0e-7c1b-4a55-9a37-0d6c5c6b8f11"),
                SampleEntries.MORNING,
                Skill.HOLD_TWO_DIGITS,
                new Level(10),
                "",
                SampleEntries.YARD,
                "present 34 21",
                "written present:34@9000 present:21@20000",
                "written present:34@9100 present:22@23000",
                false,
                true,
                new DrillEntry.Timing(41_500_000_000L, 30_000_000_000L, 0),
                List.of());
        JsonNode statement = exported(drill).get(0);

        assertThat(statement.path("id").asString()).isEqualTo("5b0c1f0e-7c1b-4a55-9a37-0d6c5c6b8f11");
        assertThat(statement.path("timestamp").asString()).isEqualTo("2026-03-02T09:15:30.250Z");
        assertThat(statement.at("/actor/account/homePage").asString()).isEqualTo("https://school.example");
        assertThat(statement.at("/actor/account/name").asString()).isEqualTo("Mira \"M\" Öberg");
        assertThat(statement.at("/object/id").asString())
                .isEqualTo("https://school.example/telltally/drill/hold-two-digits");
        assertThat(statement.at("/object/definition/correctResponsesPattern/0").asString())
                .isEqualTo("present:34[,]present:21");
        assertThat(statement.at("/result/response").asString()).isEqualTo("present:34[,]present:22");
        assertThat(statement.at("/result/success").asBoolean()).isFalse();
        assertThat(statement.at("/result/duration").asString()).isEqualTo("PT41.5S");
    }

    @Test
    void a_lesson_is_scored_by_its_codes() {
        JsonNode statement = exported(SampleEntries.lesson()).get(0);

        assertThat(statement.at("/result/score/scaled").asDouble()).isEqualTo(0.5);
        assertThat(statement.at("/object/definition/correctResponsesPattern/0").asString())
                .isEqualTo("present:34[,]stored:15");
        assertThat(statement.at("/result/response").asString()).isEqualTo("present:35[,]stored:15");
    }

    @Test
    void learners_have_accounts_at_web_addresses_only() {
        for (String address : List.of("school", "ftp://school.example", "https:///x", "https://school.example/?a=1")) {
            assertThatThrownBy(() -> new XapiExport(URI.create(address), new StringWriter()))
                    .as(address)
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** The checks above are worth what these find: one broken statement for each rule. */
    @ParameterizedTest
    @CsvSource({
        "/actor, {}, 2.4.2 exactly one identifier",
        "/verb/id, answered, 2.4.3 verb id is an IRI",
        "/object/id, two-codes, 2.4.4.1 activity id is an IRI",
        "/id, 17, 2.4.1 id is a UUID",
        "/timestamp, 2026-03-02, 4.5 timestamp with milliseconds and zone",
        "/result/duration, PT1.234S, 4.6 duration to a hundredth of a second",
        "/result/success, maybe, 2.4.5 success is a boolean",
        "/result/score/scaled, 2, 2.4.5.1 scaled score from -1 to 1",
        "/result/score/raw, 3, 2.4.5.1 raw score within min and max",
        "/result/mood, fine, 2.2 unknown key mood",
        "/result/response, null, 2.2 no nulls",
        "/verb/display/English!, answered, 4.2 language map",
        "/result/extensions/level, 4, 4.1 extension key is an IRI",
        "/actor/account/homePage, school, 2.4.2.4 home page is an IRL",
    })
    void a_broken_statement_is_found_out(String where, String value, String rule) {
        JsonNode statement = exported(SampleEntries.drill("none")).get(0);
        int slash = where.lastIndexOf('/');
        ObjectNode parent = (ObjectNode) statement.at(where.substring(0, slash));
        JsonNode odd = value.matches("\\{}|null|[0-9]+") ? JSON.readTree(value) : JSON.valueToTree(value);
        parent.set(where.substring(slash + 1), odd);

        assertThat(XapiRules.brokenBy(statement)).contains(rule);
    }

    @Test
    void the_specifications_kind_of_statement_passes_the_same_checks() {
        JsonNode example = JSON.valueToTree(Map.of(
                "id", "5b0c1f0e-7c1b-4a55-9a37-0d6c5c6b8f11",
                "timestamp", "2026-03-02T09:15:30.250Z",
                "actor", Map.of("account", Map.of("homePage", "https://school.example", "name", "learner-17")),
                "verb", Map.of("id", "http://adlnet.gov/expapi/verbs/answered"),
                "object", Map.of("id", "https://school.example/trainer/scenario/two-codes")));
        assertThat(XapiRules.brokenBy(example)).isEmpty();
    }
}
