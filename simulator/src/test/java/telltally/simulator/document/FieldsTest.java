package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FieldsTest {
    @Nested
    class Members {
        @Test
        void of_every_kind_are_handed_out() throws ProblemException {
            Problems problems = new Problems("a.json");
            Fields fields = Fields.of(
                    new TextFile(
                            "a.json",
                            "{\"schema\":\"s/1\",\"id\":\"pair-even\",\"title\":\"T\",\"digits\":2.0,\"seed\":-9223372036854775808,"
                                    + "\"share\":0.25,\"on_s\":0.5,\"loops\":true,\"kind\":\"b\",\"inner\":{\"x\":1},"
                                    + "\"list\":[{\"x\":1},{\"x\":2}],\"words\":[\"u\",\"v\"],\"levels\":[1,2.5]}"),
                    problems);

            fields.schema("s/1");
            assertThat(fields.id("id")).isEqualTo("pair-even");
            assertThat(fields.text("title")).isEqualTo("T");
            assertThat(fields.whole("digits", 1, 4)).isEqualTo(2);
            assertThat(fields.wholeLong("seed")).isEqualTo(Long.MIN_VALUE);
            assertThat(fields.number("share", 0, 1)).isEqualTo(0.25);
            assertThat(fields.nanos("on_s", 1, 1_000_000_000)).isEqualTo(500_000_000);
            assertThat(fields.flag("loops", false)).isTrue();
            assertThat(fields.choice("kind", List.of("a", "b"), word -> word)).isEqualTo("b");
            assertThat(fields.object("inner").map(inner -> inner.whole("x", 0, 9)))
                    .contains(1);
            assertThat(fields.objects("list")).hasSize(2);
            assertThat(fields.texts("words"))
                    .extracting(Fields.PlacedText::text, Fields.PlacedText::pointer)
                    .containsExactly(tuple("u", "/words/0"), tuple("v", "/words/1"));
            assertThat(fields.numbers("levels", 0, 3)).containsExactly(1.0, 2.5);
            fields.close();
            assertThat(problems.all()).isEmpty();
        }

        @Test
        void that_may_be_missing_are_answered_with_what_holds_otherwise() throws ProblemException {
            Problems problems = new Problems("a.json");
            Fields fields = Fields.of(new TextFile("a.json", "{}"), problems);

            assertThat(fields.optionalText("a")).isEmpty();
            assertThat(fields.whole("a", 0, 9, 7)).isEqualTo(7);
            assertThat(fields.number("a", 0, 9, 7.5)).isEqualTo(7.5);
            assertThat(fields.optionalNanos("a", 0, 9)).isEmpty();
            assertThat(fields.flag("a", true)).isTrue();
            assertThat(fields.optionalObject("a")).isEqualTo(Optional.empty());
            assertThat(fields.optionalObjects("a")).isEmpty();
            assertThat(fields.optionalTexts("a")).isEmpty();
            assertThat(problems.all()).isEmpty();
        }

        @Test
        void are_listed_in_the_order_of_the_file() throws ProblemException {
            Problems problems = new Problems("a.json");
            Fields fields = Fields.of(new TextFile("a.json", "{\"11\":\"x\",\"04\":\"y\"}"), problems);

            assertThat(fields.textsByName()).containsExactly(Map.entry("11", "x"), Map.entry("04", "y"));
            fields.close();
            assertThat(problems.all()).isEmpty();
        }

        @Test
        void are_pointed_to_as_rfc_6901_has_it() throws ProblemException {
            Fields fields = Fields.of(new TextFile("a.json", "{}"), new Problems("a.json"));

            // RFC 6901, section 5: the members "a/b" and "m~n" of its example.
            assertThat(fields.pointer("a/b")).isEqualTo("/a~1b");
            assertThat(fields.pointer("m~n")).isEqualTo("/m~0n");
        }
    }

    /** What stands at {@code "v"}, what is asked for, and every line that is told. */
    static Stream<Arguments> mistakes() {
        return Stream.of(
                mistake("\"x\"", fields -> fields.text("w"), "1:1: /w: is missing; expected a text"),
                mistake("1", fields -> fields.text("v"), "1:6: /v: is a number; expected a text"),
                mistake("\" \"", fields -> fields.text("v"), "1:6: /v: is empty; a text was expected"),
                mistake(
                        "\"Pair even\"",
                        fields -> fields.id("v"),
                        "1:6: /v: is \"Pair even\"; expected small letters, figures and single hyphens"),
                mistake("[]", fields -> fields.whole("v", 1, 4), "1:6: /v: is an array; expected a whole number"),
                mistake("2.5", fields -> fields.whole("v", 1, 4), "1:6: /v: is 2.5; expected a whole number"),
                mistake("5", fields -> fields.whole("v", 1, 4), "1:6: /v: is 5; expected a whole number from 1 to 4"),
                mistake(
                        "1e999999999",
                        fields -> fields.whole("v", 1, 4),
                        "1:6: /v: is 1E+999999999; expected a whole number from 1 to 4"),
                mistake(
                        "1e2147483647",
                        fields -> fields.whole("v", 1, 4),
                        "1:6: /v: is 1E+2147483647; expected a whole number from 1 to 4"),
                mistake(
                        "1e-999999999",
                        fields -> fields.whole("v", 0, 4),
                        "1:6: /v: is 1E-999999999; expected a whole number"),
                mistake("null", fields -> fields.wholeLong("v"), "1:6: /v: is null; expected a whole number"),
                mistake(
                        "9223372036854775808",
                        fields -> fields.wholeLong("v"),
                        "1:6: /v: is 9223372036854775808; expected a whole number of at most 63 bits"),
                mistake("\"1\"", fields -> fields.number("v", 0, 1), "1:6: /v: is a text; expected a number"),
                mistake("1.5", fields -> fields.number("v", 0, 1), "1:6: /v: is 1.5; expected a number from 0 to 1"),
                mistake("{}", fields -> fields.nanos("v", 0, 1), "1:6: /v: is an object; expected a number of seconds"),
                mistake(
                        "60",
                        fields -> fields.nanos("v", 100_000_000, 10_000_000_000L),
                        "1:6: /v: is 60; expected seconds from 0.1 to 10.0"),
                mistake("0", fields -> fields.flag("v", true), "1:6: /v: is a number; expected true or false"),
                mistake(
                        "\"c\"",
                        fields -> fields.choice("v", List.of("a", "b"), word -> word),
                        "1:6: /v: is \"c\"; expected \"a\" or \"b\""),
                mistake("true", fields -> fields.object("v"), "1:6: /v: is true; expected an object"),
                mistake("{}", fields -> fields.objects("v"), "1:6: /v: is an object; expected an array of objects"),
                mistake("[{}, 1]", fields -> fields.objects("v"), "1:11: /v/1: is a number; expected an object"),
                mistake("[\"a\",\n2]", fields -> fields.texts("v"), "2:1: /v/1: is a number; expected a text"),
                mistake(
                        "[1, null, 7]",
                        fields -> fields.numbers("v", 0, 5),
                        "1:10: /v/1: is null; expected a number from 0 to 5",
                        "1:16: /v/2: is 7; expected a number from 0 to 5"),
                mistake(
                        "{\"w\":1}",
                        fields -> fields.object("v").ifPresent(inner -> inner.text("w")),
                        "1:11: /v/w: is a number; expected a text"),
                mistake(
                        "[{},{\"x\":1}]",
                        fields -> fields.objects("v").forEach(Fields::close),
                        "1:11: /v/1/x: is not known here; expected one of "));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_place_and_pointer(String value, Consumer<Fields> asking, List<String> told)
            throws ProblemException {
        Problems problems = new Problems("a.json");
        asking.accept(Fields.of(new TextFile("a.json", "{\"v\":" + value + "}"), problems));

        assertThat(problems.all())
                .extracting(Problem::toString)
                .containsExactlyElementsOf(
                        told.stream().map(line -> "a.json:" + line).toList());
    }

    @Test
    void a_document_of_another_kind_is_told_of() throws ProblemException {
        Problems problems = new Problems("a.json");
        Fields.of(new TextFile("a.json", "{\"schema\":\"telltally/seeds/1\"}"), problems)
                .schema("telltally/format/1");

        assertThat(problems.all())
                .extracting(Problem::toString)
                .containsExactly("a.json:1:11: /schema: is \"telltally/seeds/1\"; expected \"telltally/format/1\"");
    }

    @Test
    void members_that_nobody_asked_for_are_told_of_with_what_was_expected() throws ProblemException {
        Problems problems = new Problems("a.json");
        Fields fields = Fields.of(new TextFile("a.json", "{\"id\":\"a\",\n \"onn_s\":1}"), problems);
        fields.id("id");
        fields.optionalNanos("on_s", 0, 1);
        fields.close();

        assertThat(problems.all())
                .extracting(Problem::toString)
                .containsExactly("a.json:2:2: /onn_s: is not known here; expected one of id, on_s");
    }

    @Test
    void all_mistakes_are_told_in_one_run_in_the_order_of_the_file() throws ProblemException {
        Problems problems = new Problems("a.json");
        Fields fields = Fields.of(new TextFile("a.json", "{\"a\":1,\n \"b\":\"x\"}"), problems);
        fields.whole("b", 0, 9);
        fields.text("a");

        assertThat(problems.all())
                .extracting(Problem::toString)
                .containsExactly(
                        "a.json:1:6: /a: is a number; expected a text",
                        "a.json:2:6: /b: is a text; expected a whole number");
    }

    @Test
    void a_document_that_is_no_object_cannot_be_asked() {
        assertThat(catchThrowableOfType(
                                ProblemException.class,
                                () -> Fields.of(new TextFile("a.json", " [1]"), new Problems("a.json")))
                        .problems())
                .extracting(Problem::toString)
                .containsExactly("a.json:1:2: holds an array; an object was expected: { ... }");
    }

    private static Arguments mistake(String value, Consumer<Fields> asking, String... told) {
        return Arguments.of(value, asking, List.of(told));
    }
}
