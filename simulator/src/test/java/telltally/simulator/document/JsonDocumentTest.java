package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class JsonDocumentTest {
    @Nested
    class Values {
        @Test
        void know_their_places() throws ProblemException {
            Json.JsonObject object =
                    (Json.JsonObject) parse("{\n  \"a\": [1.50,\n   \"\u00fc\u20ac\", true],\"b\" : null}");

            assertThat(object.place()).isEqualTo(new Place(1, 1));
            assertThat(object.names().get("a")).isEqualTo(new Place(2, 3));
            assertThat(object.names().get("b")).isEqualTo(new Place(3, 16));
            assertThat(((Json.JsonArray) object.members().get("a")).elements())
                    .containsExactly(
                            new Json.JsonNumber(new Place(2, 9), new BigDecimal("1.50")),
                            new Json.JsonText(new Place(3, 4), "\u00fc\u20ac"),
                            new Json.JsonFlag(new Place(3, 10), true));
            assertThat(object.members().get("b")).isEqualTo(new Json.JsonNull(new Place(3, 22)));
        }

        @Test
        void keep_the_order_of_the_file() throws ProblemException {
            assertThat(((Json.JsonObject) parse("{\"z\":1,\"a\":2,\"m\":3}"))
                            .members()
                            .keySet())
                    .containsExactly("z", "a", "m");
        }

        @Test
        void keep_every_figure_of_a_number() throws ProblemException {
            assertThat(parse("0.1000000000000000000000000000000000001"))
                    .isEqualTo(new Json.JsonNumber(
                            Place.START, new BigDecimal("0.1000000000000000000000000000000000001")));
        }

        @Test
        void say_what_kind_they_are() throws ProblemException {
            for (String[] pair : new String[][] {
                {"{}", "an object"},
                {"[]", "an array"},
                {"\"\"", "a text"},
                {"1", "a number"},
                {"true", "true"},
                {"false", "false"},
                {"null", "null"}
            }) {
                assertThat(parse(pair[0]).kind()).isEqualTo(pair[1]);
            }
        }

        @Test
        void may_lie_forty_deep() throws ProblemException {
            assertThat(parse("[".repeat(40) + "]".repeat(40)).kind()).isEqualTo("an array");
        }
    }

    static Stream<Arguments> mistakes() {
        String value = "expected a valid value (JSON String, Number, Array, Object or token 'null', 'true' or 'false')";
        return Stream.of(
                Arguments.of("", " holds no JSON value"),
                Arguments.of(" \n ", " holds no JSON value"),
                Arguments.of("{} {}", "1:4: nothing may follow the end of the JSON value"),
                Arguments.of("[1,\n 2\n", "3:1: is not JSON: Unexpected end-of-input: expected close marker for Array"),
                Arguments.of("{\"a\":", "1:6: is not JSON: Unexpected end-of-input within/between Object entries"),
                Arguments.of("-", "1:2: is not JSON: Unexpected end-of-input: No digit following sign"),
                Arguments.of(
                        "{\"a\":1,}",
                        "1:8: is not JSON: Unexpected character ('}' (code 125)): was expecting double-quote to start"
                                + " property name"),
                Arguments.of(
                        "[1 2]",
                        "1:4: is not JSON: Unexpected character ('2' (code 50)): was expecting comma to separate Array"
                                + " entries"),
                Arguments.of("{\n \"a\": @}", "2:7: is not JSON: Unexpected character ('@' (code 64)): " + value),
                Arguments.of(
                        "[\ud800]",
                        "1:2: is not JSON: Unexpected character ('\ud800' (code 55296 / 0xd800)): " + value),
                Arguments.of("01", "1:2: is not JSON: Invalid numeric value: Leading zeroes not allowed"),
                Arguments.of(
                        "+1",
                        "1:2: is not JSON: Unexpected character ('+' (code 43)) in numeric value: JSON spec does not allow"
                                + " numbers to have plus signs"),
                Arguments.of("NaN", "1:4: is not JSON: Non-standard token 'NaN'"),
                Arguments.of(
                        "// x\n1",
                        "1:1: is not JSON: Unexpected character ('/' (code 47)): maybe a (non-standard) comment?"),
                Arguments.of("{\"a\":1,\n\"a\":2}", "2:4: \"a\" stands twice in one object; expected once"),
                Arguments.of("\"a\\q\"", "1:4: is not JSON: Unrecognized character escape 'q' (code 113)"),
                Arguments.of("1e99999999999", "1:1: a number has an exponent beyond those that are read"),
                Arguments.of("[\n 1e-2147483648]", "2:2: a number has an exponent beyond those that are read"),
                Arguments.of("[".repeat(41), "1:42: is nested deeper than 40 levels, the most that is read"),
                Arguments.of(
                        "\"" + "x".repeat(20_001) + "\"",
                        "1:20004: a text has more than 20000 characters, the most that is read"),
                Arguments.of("1".repeat(61), "1:62: a number has more than 60 characters, the most that is read"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_place(String text, String told) {
        assertThat(catchThrowableOfType(ProblemException.class, () -> parse(text))
                        .problems())
                .extracting(Problem::toString)
                .containsExactly("a.json:" + told);
    }

    @Test
    void a_name_that_is_far_too_long_is_refused() {
        String text = "{\"" + "n".repeat(100_000) + "\":1}";

        assertThat(catchThrowableOfType(ProblemException.class, () -> parse(text)))
                .hasMessageEndingWith(": a text has more than 20000 characters, the most that is read");
    }

    private static Json parse(String text) throws ProblemException {
        return JsonDocument.parse(new TextFile("a.json", text));
    }
}
