package telltally.decoder.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schema is for editors; what it refuses, the reader refuses as well. */
class SeedsSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final String TEXT = new ResourceFolder("telltally/scenarios/schemas")
            .read().stream()
                    .filter(file -> file.name().equals("seeds.schema.json"))
                    .findFirst()
                    .orElseThrow()
                    .text();
    private static final Schema SCHEMA = REGISTRY.getSchema(TEXT, InputFormat.JSON);

    @TempDir
    private Path folder;

    private static List<Error> errors(Schema schema, String text) {
        return schema.validate(text, InputFormat.JSON);
    }

    private SeedSet read(String text) throws IOException, ProblemException {
        return SeedSetReader.read(Files.writeString(folder.resolve("set.json"), text));
    }

    @Test
    void the_schema_is_valid_by_the_schema_of_its_draft() {
        Schema draft = REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertThat(errors(draft, TEXT)).isEmpty();
    }

    @Test
    void the_schema_has_its_name_and_explains_every_field() {
        JsonNode schema = JsonMapper.shared().readTree(TEXT);
        assertThat(schema.get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.get("$id").asString()).isEqualTo("urn:telltally:schema:seeds:1");
        assertThat(fields(schema))
                .hasSizeGreaterThan(25)
                .allMatch(field -> field.has("title") && field.has("description"));
    }

    /** The schemas of all members, however deep; members of a definition's own are explained where it is used. */
    private static Stream<JsonNode> fields(JsonNode schema) {
        Stream<JsonNode> members =
                schema.has("$ref") ? Stream.of() : schema.path("properties").valueStream();
        return Stream.concat(
                members.flatMap(member -> Stream.concat(Stream.of(member), fields(member))),
                schema.has("items") ? fields(schema.get("items")) : Stream.of());
    }

    @Test
    void every_shipped_set_is_valid() throws IOException {
        List<Path> sets = SeedFiles.in(SeedFolder.SHIPPED);
        assertThat(sets).hasSizeGreaterThan(100);
        for (Path set : sets) {
            assertThat(errors(SCHEMA, Files.readString(set))).as(set.toString()).isEmpty();
        }
    }

    @Test
    void the_good_example_is_accepted_by_schema_and_reader() throws IOException, ProblemException {
        assertThat(errors(SCHEMA, SeedSetReaderTest.GOOD)).isEmpty();
        assertThat(read(SeedSetReaderTest.GOOD).id()).isEqualTo("yard");
    }

    static Stream<String> badFiles() {
        String good = SeedSetReaderTest.GOOD;
        return Stream.of(
                good.replace("seeds/1", "seeds/2"),
                good.replace("\"yard\"", "\"Yard\""),
                good.replace("\"generator\": 1", "\"generator\": 0"),
                good.replace("\"generator\": 1", "\"generator\": \"1\""),
                good.replace("\"loose wires\"", "\" \""),
                good.replace("\"why\": \"loose wires\",", ""),
                good.replace("\"messages\"", "\"mesages\""),
                good.replace("\"messages\"", "\"scenarios\": [\"a.json\"], \"messages\""),
                good.replace("\"pair-even\", \"long-short\"", ""),
                good.replace("\"long-short\"", "\"pair-even\""),
                good.replace("\"running\"", "\"driving\""),
                good.replace("\"running\"", "\"balance\""),
                good.replace("\"key-on\"", "\"running\""),
                good.replace("\"codes\": {\"from\": 0, \"to\": 4},", ""),
                good.replace("\"codes\": {\"from\": 0, \"to\": 4}", "\"codes\": 4"),
                good.replace("\"to\": 4}", "\"to\": 51}"),
                good.replace("\"from\": 0, \"to\": 4", "\"from\": -1, \"to\": 4"),
                good.replace("\"to\": 8", "\"to\": 7"),
                good.replace("\"to\": 8", "\"to\": 14"),
                good.replace("\"loops\": {\"from\": 2", "\"loops\": {\"from\": 0"),
                good.replace("\"loops\": {\"from\": 2", "\"loops\": {\"start\": 2"),
                good.replace("\"jitter\"", "\"hum\""),
                good.replace("\"share\": 0.06", "\"share\": 1.5"),
                good.replace("\"share\": 0.06", "\"share\": {\"from\": 0.06}"),
                good.replace("\"share\": 0.06", "\"share\": {\"from\": 0.06, \"to\": 1.5}"),
                good.replace("\"share\": 0.06", "\"factor\": 1.5"),
                good.replace("\"share\": 0.06", "\"share\": 0.06, \"factor\": 1.5"),
                good.replace("\"factor\": {\"from\": 0.85", "\"factor\": {\"from\": 0.05"),
                good.replace("\"longest_s\": 0.015", "\"longest_s\": -0.015"),
                good.replace("\"longest_s\": 0.015", "\"longest_ms\": 15"),
                good.replace("\"most_contacts\": 5", "\"most_contacts\": 5.5"),
                good.replace("\"count\": 4", "\"count\": 0"),
                good.replace("\"from\": -2", "\"from\": \"-2\""),
                good.replace("\"seed\": 17, \"why\": \"read as two\"", "\"seed\": 17"),
                good.replace("\"seed\": 17", "\"seed\": 17.5"),
                good.replace("\"per\": 3", "\"per\": 0"),
                good.replace("\"0000", "\"000"),
                good.replace("\"0000", "\"X000"),
                good.replace("\"lists_right\": 0.99", "\"lists_right\": 1.01"),
                good.replace("\"lists_right\": 0.99,", ""),
                good.replace("\"invented_codes\": 0}", "\"invented_codes\": -1}"),
                good.replace("\"floor\": \"lists_right\"", "\"floor\": \"lists\""),
                good.replace("\"mixed\"", "\"Mixed\""),
                good.replace("\"strength\": 0.06", "\"strength\": -1"),
                good.replace("\"unit\": \"share\"", "\"unit\": \"\""),
                good.replace("[\"lamp\"]", "[]"),
                good.replace("[\"lamp\"]", "[\"bulb\"]"),
                good.replace("[\"lamp\"]", "[\"lamp\", \"lamp\"]"),
                good.replace("\"lattice\"", "\"The lattice\""),
                good.replaceAll("\"floors\": .*", "\"floors\": {},"),
                good.replace("\"why\": \"a bulb\"", "\"because\": \"a bulb\""));
    }

    @Test
    void decoys_and_recordings_are_explained_as_well() {
        assertThat(errors(SCHEMA, SeedSourcesTest.set(SeedSourcesTest.Decoys.ALL)))
                .isEmpty();
        assertThat(errors(SCHEMA, SeedSourcesTest.Recordings.SET)).isEmpty();
    }

    static Stream<String> badSources() {
        String decoys = SeedSourcesTest.set(SeedSourcesTest.Decoys.ALL);
        String recordings = SeedSourcesTest.Recordings.SET;
        return Stream.of(
                decoys.replace("\"steady\"", "\"dim\""),
                decoys.replace("\"level\": 1", "\"level\": 2"),
                decoys.replace("\"mean_s\": 0.5", "\"mean_s\": 0"),
                decoys.replace("\"mean_s\": 0.5", "\"mean\": 0.5"),
                SeedSourcesTest.set("\"decoys\": []"),
                recordings.replace("\"edges\": \"a.csv\"", "\"edge\": \"a.csv\""),
                recordings.replace("\"why\": \"hum\"", "\"why\": \"\""),
                recordings.replace("\"digests\"", "\"generator\": 1, \"digests\""));
    }

    @ParameterizedTest
    @MethodSource({"badFiles", "badSources"})
    void a_bad_file_is_refused_by_schema_and_reader(String text) {
        assertThat(text).isNotEqualTo(SeedSetReaderTest.GOOD);
        assertThat(errors(SCHEMA, text)).isNotEmpty();
        assertThatThrownBy(() -> read(text)).isInstanceOf(ProblemException.class);
    }
}
