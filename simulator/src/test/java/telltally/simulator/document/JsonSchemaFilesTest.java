package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.DialectId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every JSON Schema that ships; each package tests its own against its files. */
class JsonSchemaFilesTest {
    static List<TextFile> schemas() {
        return JsonSchemaFile.all().stream().map(JsonSchemaFile::file).toList();
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void a_schema_is_valid_by_the_schema_of_draft_2020_12(TextFile schema) {
        Schema draft = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(DialectId.DRAFT_2020_12));

        assertThat(draft.validate(schema.text(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void a_schema_has_a_name_that_is_no_web_address(TextFile schema) throws ProblemException {
        Json.JsonObject root = (Json.JsonObject) JsonDocument.parse(schema);
        String kind = schema.name().replace(".schema.json", "");

        assertThat(text(root, "$id")).matches("urn:telltally:schema:" + kind + ":[0-9]+");
        assertThat(text(root, "$schema")).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void every_field_has_a_title_and_a_description_for_an_editor_to_show(TextFile schema) throws ProblemException {
        List<String> silent = new ArrayList<>();
        int seen = fieldsOf(JsonDocument.parse(schema), "", silent);

        assertThat(silent).isEmpty();
        assertThat(seen).isPositive();
    }

    /** Adds the pointer of every property that explains nothing and is not explained elsewhere; counts all of them. */
    private static int fieldsOf(Json json, String pointer, List<String> silent) {
        int seen = 0;
        if (json instanceof Json.JsonArray array) {
            for (int i = 0; i < array.elements().size(); i++) {
                seen += fieldsOf(array.elements().get(i), pointer + "/" + i, silent);
            }
        }
        if (json instanceof Json.JsonObject object) {
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                String inner = pointer + "/" + member.getKey();
                seen += fieldsOf(member.getValue(), inner, silent);
                // A condition on a field that is explained where it is declared.
                boolean condition = inner.matches(".*/(not|dependentSchemas|if|then|else)(/.*)?");
                if (member.getKey().equals("properties") && !condition) {
                    for (Map.Entry<String, Json> field :
                            ((Json.JsonObject) member.getValue()).members().entrySet()) {
                        seen++;
                        Json.JsonObject declared = (Json.JsonObject) field.getValue();
                        if (text(declared, "title").isBlank()
                                || text(declared, "description").isBlank()) {
                            silent.add(inner + "/" + field.getKey());
                        }
                    }
                }
            }
        }
        return seen;
    }

    private static String text(Json.JsonObject object, String name) {
        return object.members().get(name) instanceof Json.JsonText text ? text.text() : "";
    }
}
