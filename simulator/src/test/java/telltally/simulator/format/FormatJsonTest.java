package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.JsonSchemaFile;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;

class FormatJsonTest {
    /** Those that ship and those of published codes and rhythms: whatever the language can say is in one of them. */
    static Stream<FlashFormat> formats() {
        List<TextFile> shipped = new ResourceFolder("telltally/scenarios/formats").read();
        return Stream.concat(shipped.stream(), TestFormats.files().stream()).map(TestFormats::parse);
    }

    @ParameterizedTest
    @MethodSource("formats")
    void a_format_that_is_written_and_read_again_is_the_same(FlashFormat format) {
        assertThat(TestFormats.parse(FormatJson.text(format))).isEqualTo(format);
    }

    @ParameterizedTest
    @MethodSource("formats")
    void what_is_written_is_one_line_and_valid(FlashFormat format) {
        String text = FormatJson.text(format);
        assertThat(text).doesNotContain("\n");
        assertThat(JsonSchemaFile.shipped("format").problems(text)).isEmpty();
    }

    @Test
    void a_flash_that_only_separators_are_sent_in_is_kept() {
        String even = new ResourceFolder("telltally/scenarios/formats")
                .read().stream()
                        .filter(file -> file.name().equals("pair-even.json"))
                        .findFirst()
                        .orElseThrow()
                        .text();
        FlashFormat winking = TestFormats.parse(even.replace("{\"flash\": 0.5}", "{\"flash\": 0.5, \"wink\": 0.25}")
                .replaceFirst("\"flash\": \"flash\",(\\s+\"running_test_s\")", "\"flash\": \"wink\",$1"));
        assertThat(winking.sessions().orElseThrow().cylinderFlash().name()).isEqualTo("wink");
        assertThat(TestFormats.parse(FormatJson.text(winking))).isEqualTo(winking);
    }

    @Test
    void lengths_are_decimals() {
        assertThat(FormatJson.text(TestFormats.shipped("count-loop")))
                .contains("\"flashes_s\":{\"flash\":0.3}", "\"before_repeat_s\":3.0", "\"15\":15");
    }
}
