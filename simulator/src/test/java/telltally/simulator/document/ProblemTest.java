package telltally.simulator.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ProblemTest {
    @Nested
    class Told {
        @Test
        void with_file_line_column_and_field() {
            assertThat(new Problem("a.json", new Place(14, 22), "/gaps/on_s", "is 0; expected more"))
                    .hasToString("a.json:14:22: /gaps/on_s: is 0; expected more");
        }

        @Test
        void without_place_and_field_where_there_are_none() {
            assertThat(Problem.of("a.json", "is empty")).hasToString("a.json: is empty");
        }

        @Test
        void in_one_line_whatever_stood_in_the_file() {
            Problem problem = new Problem("a\r\n.json", Place.START, "/x\ny\u2028z", "is \u001b[31m\u202e");

            assertThat(problem).hasToString("a??.json:1:1: /x?y?z: is ?[31m?");
        }

        @Test
        void with_a_very_long_field_shortened() {
            Problem problem = new Problem("a.json", Place.START, "/" + "n".repeat(50_000), "is not known here");

            assertThat(problem).hasToString("a.json:1:1: /" + "n".repeat(199) + "...: is not known here");
        }
    }

    @Nested
    class QuotedInput {
        @Test
        void stands_between_quotes() {
            assertThat(Problem.quoted("pair-even")).isEqualTo("\"pair-even\"");
            assertThat(Problem.quoted("")).isEqualTo("\"\"");
        }

        @Test
        void has_at_most_sixty_characters() {
            assertThat(Problem.quoted("x".repeat(60))).isEqualTo("\"" + "x".repeat(60) + "\"");
            assertThat(Problem.quoted("x".repeat(61))).isEqualTo("\"" + "x".repeat(60) + "...\"");
        }

        @Test
        void cannot_leave_its_line_nor_turn_it_round() {
            assertThat(Problem.quoted("a\nb\tc\u0085d\u2028e\u202ef\ud83d")).isEqualTo("\"a?b?c?d?e?f?\"");
        }
    }

    @Nested
    class OfOneFile {
        @Test
        void are_told_in_the_order_of_the_file() {
            Problems problems = new Problems("a.json");
            problems.add(new Place(3, 1), "", "third");
            problems.add(new Place(1, 9), "", "first");
            problems.add(new Place(1, 10), "", "second");

            assertThat(problems.any()).isTrue();
            assertThat(problems.count()).isEqualTo(3);
            assertThatExceptionOfType(ProblemException.class)
                    .isThrownBy(problems::throwIfAny)
                    .withMessage("a.json:1:9: first")
                    .satisfies(thrown -> assertThat(thrown.problems())
                            .extracting(Problem::toString)
                            .containsExactly("a.json:1:9: first", "a.json:1:10: second", "a.json:3:1: third"));
        }

        @Test
        void are_no_matter_where_there_are_none() throws ProblemException {
            new Problems("a.json").throwIfAny();

            assertThat(new Problems("a.json").any()).isFalse();
        }

        @Test
        void cannot_be_thrown_where_there_are_none() {
            assertThatIllegalArgumentException().isThrownBy(() -> new ProblemException(List.of()));
        }
    }
}
