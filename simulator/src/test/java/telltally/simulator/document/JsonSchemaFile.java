package telltally.simulator.document;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** A JSON Schema that ships beside the files of an instructor, applied by a validator from outside the project. */
public final class JsonSchemaFile {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final TextFile file;
    private final Schema schema;

    private JsonSchemaFile(TextFile file) {
        this.file = file;
        this.schema = REGISTRY.getSchema(file.text(), InputFormat.JSON);
    }

    /** @param kind such as {@code format}, for {@code scenarios/schemas/format.schema.json} */
    public static JsonSchemaFile shipped(String kind) {
        return all().stream()
                .filter(each -> each.file.name().equals(kind + ".schema.json"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no schema for " + kind));
    }

    public static List<JsonSchemaFile> all() {
        return new ResourceFolder("telltally/scenarios/schemas")
                .read().stream().map(JsonSchemaFile::new).toList();
    }

    public TextFile file() {
        return file;
    }

    /** What the validator says against a file; nothing where the file is valid. */
    public List<String> problems(String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}
