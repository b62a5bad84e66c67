package telltally.simulator.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import telltally.simulator.codelist.CodeListReader;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FormatReader;

/** The examples of the guide beside the lessons are ones that work. */
class InstructorGuideTest {
    @Test
    void the_examples_of_a_lesson_a_story_a_format_and_a_code_list_can_be_read() throws IOException, ProblemException {
        List<TextFile> examples = examples();
        assertThat(examples).hasSize(4);
        assertThat(ScenarioReader.shipped()
                        .read(examples.get(0), Optional.empty())
                        .id())
                .isEqualTo("my-first-lesson");
        assertThat(ScenarioReader.shipped()
                        .read(examples.get(1), Optional.empty())
                        .id())
                .isEqualTo("my-first-story");
        assertThat(FormatReader.read(examples.get(2)).id()).isEqualTo("my-format");
        assertThat(CodeListReader.read(examples.get(3)).id()).isEqualTo("my-list");
    }

    private static List<TextFile> examples() throws IOException {
        try (InputStream in =
                InstructorGuideTest.class.getClassLoader().getResourceAsStream("telltally/scenarios/README.md")) {
            String guide = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Pattern.compile("```json\n(.*?)```", Pattern.DOTALL)
                    .matcher(guide)
                    .results()
                    .map((MatchResult block) -> new TextFile("README.md", block.group(1)))
                    .toList();
        }
    }
}
