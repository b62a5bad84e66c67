package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.BadFormats.BadFormat;

class FormatReaderTest {
    static List<BadFormat> bad() {
        return BadFormats.all();
    }

    static Stream<String> good() {
        return Stream.of(BadFormats.EVEN, BadFormats.PLAIN, BadFormats.SPELLED, BadFormats.LONE);
    }

    @ParameterizedTest
    @MethodSource("good")
    void a_file_is_good_before_something_in_it_is_made_bad(String json) {
        assertThat(TestFormats.parse(json).id()).isEqualTo("test");
    }

    @ParameterizedTest
    @MethodSource("bad")
    void a_problem_is_told_with_its_place_its_field_and_what_was_expected(BadFormat bad) {
        assertThat(problems(bad.file())).containsExactly("bad.json:" + bad.line());
    }

    @Test
    void all_problems_of_a_file_are_told_in_one_run_in_the_order_of_the_file() {
        String json = BadFormats.EVEN;
        json = BadFormats.changed(json, "'id': 'test'", "'id': 'Test'");
        json = BadFormats.changed(json, "'between_digits_s': 2", "'between_digits_s': 0.5");
        json = BadFormats.changed(json, "'list_times': 2", "'list_times': 99");
        json = BadFormats.changed(json, "'code': '11'", "'code': '10'");
        json = BadFormats.changed(json, "'burst'", "'bursts'");

        assertThat(problems(new TextFile("many.json", json)))
                .containsExactly(
                        "many.json:3:9: /id: is \"Test\"; expected small letters, figures and single hyphens",
                        "many.json:10:55: /gaps/between_digits_s: 0.5 is not longer than the gap within a digit (0.5);"
                                + " digits would run together",
                        "many.json:11:26: /list/list_times: is 99; expected a whole number from 1 to 20",
                        "many.json:12:33: /nothing_to_report/code: \"10\": the digit 0 at place 2 cannot be sent;"
                                + " this format sends 1 2 3 4 5 6 7 8 9",
                        "many.json:20:3: /bursts: is not known here; expected one of schema, id, title, notes,"
                                + " rests_lit, flashes_s, code, list, lead_in, gaps, sessions, framing_code,"
                                + " nothing_to_report, burst");
    }

    @Test
    void what_depends_on_something_that_is_wrong_is_not_told_as_well() {
        String json = BadFormats.changed(BadFormats.EVEN, "{'flash': 0.5}", "{}");

        assertThat(problems(new TextFile("bad.json", json)))
                .containsExactly(
                        "bad.json:5:16: /flashes_s: is empty; at least one flash with its seconds was expected");
    }

    @Test
    void a_gap_that_is_never_sent_may_be_left_out_and_stays_below_those_that_are() {
        FlashFormat.Gaps gaps = TestFormats.read("light-iso-4s").gaps();

        assertThat(gaps)
                .isEqualTo(new FlashFormat.Gaps(1_000_000_000L, 1_000_000_000L, 2_000_000_000L, 2_000_000_000L));
    }

    @Test
    void a_repeat_is_as_far_as_the_next_code_where_the_file_does_not_say_it() {
        FlashFormat.Gaps gaps = TestFormats.parse(BadFormats.EVEN).gaps();

        assertThat(gaps).isEqualTo(new FlashFormat.Gaps(500_000_000L, 2_000_000_000L, 4_000_000_000L, 4_000_000_000L));
    }

    /** The groups of a composite light say by their size which is which, as in the published Oc(2+1) 12s. */
    @Test
    void codes_need_no_longer_gap_where_no_group_can_stand_at_two_places() {
        String json = TestFormats.file("light-oc2-1-12s").text();
        String alike = BadFormats.changed(json, "'from': 1, 'to': 1", "'from': 1, 'to': 2");

        assertThat(TestFormats.parse(json).gaps().beforeRepeatNanos()).isEqualTo(4_000_000_000L);
        assertThat(problems(new TextFile("bad.json", alike)))
                .containsExactly("bad.json:15:79: /gaps/before_repeat_s: 4.0 is not longer than the gap between digits"
                        + " (4.0); codes would run together");
    }

    @Test
    void digits_need_no_longer_gap_where_each_place_has_a_flash_of_its_own() {
        FlashFormat.Gaps gaps = TestFormats.read("light-q6-lfl-15s").gaps();

        assertThat(gaps.betweenDigitsNanos()).isEqualTo(gaps.withinDigitNanos()).isEqualTo(500_000_000L);
    }

    private static List<String> problems(TextFile file) {
        ProblemException thrown = catchThrowableOfType(ProblemException.class, () -> FormatReader.read(file));
        assertThat(thrown).as("nothing was found wrong").isNotNull();
        return thrown.problems().stream().map(Problem::toString).toList();
    }
}
