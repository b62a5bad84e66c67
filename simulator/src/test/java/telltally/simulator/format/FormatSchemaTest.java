package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.Json;
import telltally.simulator.document.JsonDocument;
import telltally.simulator.document.JsonSchemaFile;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.BadFormats.BadFormat;

/** The JSON Schema of formats against the reader: what one takes or refuses by its structure, the other does too. */
class FormatSchemaTest {
    private static final JsonSchemaFile SCHEMA = JsonSchemaFile.shipped("format");

    static List<TextFile> shipped() {
        return new ResourceFolder("telltally/scenarios/formats").read();
    }

    static List<TextFile> published() {
        return TestFormats.files();
    }

    static Stream<BadFormat> structural() {
        return BadFormats.structural();
    }

    static Stream<BadFormat> notStructural() {
        return BadFormats.all().stream().filter(bad -> !bad.structural());
    }

    @Test
    void all_files_are_seen() {
        assertThat(shipped()).hasSize(7);
        assertThat(published()).hasSize(25);
    }

    @ParameterizedTest
    @MethodSource({"shipped", "published"})
    void a_file_that_the_reader_takes_is_valid(TextFile file) {
        assertThat(TestFormats.parse(file).id()).isEqualTo(file.name().replace(".json", ""));
        assertThat(SCHEMA.problems(file.text())).isEmpty();
    }

    @Test
    void an_editor_finds_the_schema_from_where_a_shipped_file_lies() throws ProblemException {
        Path folder = Path.of("../scenarios/formats");
        for (TextFile file : shipped()) {
            String schema = ((Json.JsonText) ((Json.JsonObject) JsonDocument.parse(file))
                            .members()
                            .get("$schema"))
                    .text();
            assertThat(folder.resolve(schema))
                    .isRegularFile()
                    .hasContent(SCHEMA.file().text());
        }
    }

    @ParameterizedTest
    @MethodSource("telltally.simulator.format.FormatReaderTest#good")
    void a_file_is_valid_before_something_in_it_is_made_bad(String json) {
        assertThat(SCHEMA.problems(json)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("structural")
    void a_file_of_bad_structure_is_refused_by_the_schema_as_by_the_reader(BadFormat bad) {
        assertThat(SCHEMA.problems(bad.text())).as(bad.text()).isNotEmpty();
    }

    /** Should the schema learn to see one of these, the case moves to the others. */
    @ParameterizedTest
    @MethodSource("notStructural")
    void how_two_fields_go_together_is_for_the_reader_to_judge(BadFormat bad) {
        assertThat(SCHEMA.problems(bad.text())).isEmpty();
    }
}
