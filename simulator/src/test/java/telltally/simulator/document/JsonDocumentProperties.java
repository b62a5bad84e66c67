package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;

class JsonDocumentProperties {
    /** Pieces of JSON in any order: mostly wrong, but wrong deep inside. */
    @Provide
    Arbitrary<String> nearlyJson() {
        return Arbitraries.of(
                        "{",
                        "}",
                        "[",
                        "]",
                        ",",
                        ":",
                        " ",
                        "\n",
                        "\r\n",
                        "\"a\"",
                        "\"on_s\":",
                        "\"",
                        "\\",
                        "\\u12",
                        "0",
                        "1",
                        "-",
                        "1.5",
                        "1e",
                        "1e9",
                        "1e999999999",
                        "1E-99999999999",
                        ".",
                        "true",
                        "false",
                        "null",
                        "NaN",
                        "/",
                        "#")
                .list()
                .ofMaxSize(30)
                .map(pieces -> String.join("", pieces));
    }

    @Property
    void any_text_is_read_or_refused_with_a_problem(@ForAll String text) {
        assertReadOrRefused(text);
    }

    @Property
    void pieces_of_json_in_any_order_are_read_or_refused_with_a_problem(@ForAll("nearlyJson") String text) {
        assertReadOrRefused(text);
    }

    @Property(tries = 300)
    void fields_of_any_kind_are_asked_for_without_a_crash(@ForAll("nearlyJson") String value) {
        Problems problems = new Problems("a.json");
        try {
            Fields fields = Fields.of(new TextFile("a.json", "{\"a\":" + value + "}"), problems);
            fields.schema("telltally/any/1");
            fields.text("a");
            fields.id("a");
            fields.whole("a", 1, 10);
            fields.wholeLong("a");
            fields.number("a", 1, 2);
            fields.nanos("a", 1, 1_000_000_000L);
            fields.flag("a", true);
            fields.choice("a", List.of("x", "y"), word -> word);
            fields.object("a");
            fields.objects("a");
            fields.texts("a");
            fields.numbers("a", 1, 2);
            fields.textsByName();
            fields.close();
        } catch (ProblemException e) {
            assertThat(e.problems()).isNotEmpty();
            return;
        }
        // It cannot have been a text, a number and a list at once.
        assertThat(problems.any()).isTrue();
        assertThat(problems.all())
                .allSatisfy(problem -> assertThat(problem.toString()).doesNotContain("\n"));
    }

    private static void assertReadOrRefused(String text) {
        @Nullable Json value = null;
        try {
            value = JsonDocument.parse(new TextFile("a.json", text));
        } catch (ProblemException e) {
            assertThat(e.problems()).hasSize(1);
            assertThat(e.problems().get(0).toString()).startsWith("a.json:").doesNotContain("\n");
            return;
        }
        assertThat(value).isNotNull();
    }
}
