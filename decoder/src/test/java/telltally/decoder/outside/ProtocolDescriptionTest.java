package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** What the schema and DEVELOPERS.md say of the lines is what is sent and understood. */
class ProtocolDescriptionTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text(Path.of("examples", "outside.schema.json")), InputFormat.JSON);
    private static final List<FlashFormat> FORMATS = FormatCatalog.shipped().all();
    private static final PulseTrain TRAIN =
            PulseTrain.of(false, 14_000_000_000L, 3_000_000_000L, 3_500_000_000L, 5_500_000_000L, 6_000_000_000L);

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean valid(String line) {
        return SCHEMA.validate(line, InputFormat.JSON).isEmpty();
    }

    private static void understand(String answer) throws Misbehaviour {
        Answer.read(answer.getBytes(StandardCharsets.UTF_8), 1, FORMATS);
    }

    @Test
    void the_example_of_the_description_is_what_is_sent_and_understood() throws Misbehaviour {
        List<String> lines = text(Path.of("..", "DEVELOPERS.md"))
                .lines()
                .filter(line -> line.startsWith("> {") || line.startsWith("< {"))
                .toList();
        assertThat(lines).hasSize(4).allMatch(line -> valid(line.substring(2)));
        List<FlashFormat> told =
                List.of(FORMATS.get(FormatCatalog.shipped().ids().indexOf("pair-even")));
        assertThat(lines.get(0)).isEqualTo("> " + new Request().greeting());
        assertThat(lines.get(2)).isEqualTo("> " + new Request().session(1, TRAIN, told, List.of()));
        assertThat(Capabilities.read(lines.get(1).substring(2).getBytes(StandardCharsets.UTF_8))
                        .formatTold())
                .isTrue();
        assertThat(Answer.read(lines.get(3).substring(2).getBytes(StandardCharsets.UTF_8), 1, told)
                        .codes())
                .isEqualTo(Map.of(Segment.PRESENT, List.of("11")));
    }

    @Test
    void a_request_with_definitions_is_valid() {
        assertThat(valid(new Request().session(7, TRAIN, FORMATS, FORMATS))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"id\":1}",
                "{\"id\":1,\"codes\":[]}",
                "{\"id\":1,\"codes\":{\"yesterday\":[]}}",
                "{\"id\":1,\"codes\":{\"present\":[34]}}",
                "{\"id\":1,\"codes\":{},\"groups\":[{\"kind\":\"code\"}]}",
                "{\"id\":1,\"codes\":{},\"groups\":[{\"kind\":\"codes\",\"segment\":\"present\",\"digits\":\"1\","
                        + "\"start_s\":1,\"end_s\":2}]}",
                "{\"id\":1,\"codes\":{},\"format\":{\"id\":\"pair-even\",\"probability\":2}}",
                "{\"id\":1,\"codes\":{},\"warnings\":[{\"time_s\":1,\"kind\":\"tired\",\"text\":\"\"}]}",
                "[]",
                "17"
            })
    void what_the_schema_refuses_of_an_answer_is_not_understood_either(String answer) {
        assertThat(valid(answer)).isFalse();
        assertThat(catchThrowable(() -> understand(answer))).isInstanceOf(Misbehaviour.class);
    }

    @ParameterizedTest
    @EnumSource
    void every_kind_of_group_is_understood(GroupKind kind) throws Misbehaviour {
        String answer = "{\"id\":1,\"codes\":{},\"groups\":[{\"kind\":\"" + kind.key()
                + "\",\"segment\":\"present\",\"digits\":\"1\",\"start_s\":1,\"end_s\":2}]}";
        assertThat(valid(answer)).isTrue();
        understand(answer);
    }

    @ParameterizedTest
    @EnumSource
    void every_warning_is_understood(WarningKind kind) throws Misbehaviour {
        String answer =
                "{\"id\":1,\"codes\":{},\"warnings\":[{\"time_s\":1,\"kind\":\"" + kind.key() + "\",\"text\":\"\"}]}";
        assertThat(valid(answer)).isTrue();
        understand(answer);
    }
}
