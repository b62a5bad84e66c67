package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class KnowledgeTracingTest {
    @Test
    void answers_move_knowledge_as_in_the_worked_example() {
        // L0 .2, s .1, g .2, t .1, answers 1 1 0 1 0 0: the first two steps agree with the table of
        // bkt-study-guide.tyche.institute, chapter 7; the later ones are computed (the table errs from step 3 on).
        assertTrace(
                new KnowledgeTracing(0.2, new KnowledgeTracing.Rates(0.1, 0.1, 0.2)),
                "110100",
                new double[] {.34, .603529, .811579, .562123, .791807, .525833},
                new double[] {.576471, .873684, .517318, .845438, .465475, .188350});
    }

    @Test
    void a_longer_row_of_answers_agrees_with_a_forward_filter() {
        // L0 .5, t .4, s .2, g .2: computed, and checked with a matrix forward filter.
        assertTrace(
                new KnowledgeTracing(0.5, new KnowledgeTracing.Rates(0.4, 0.2, 0.2)),
                "0011101101",
                new double[] {},
                new double[] {.52, .527869, .890355, .982080, .997275, .993514, .999022, .999853, .999648, .999947});
    }

    private static void assertTrace(KnowledgeTracing start, String answers, double[] chances, double[] known) {
        KnowledgeTracing now = start;
        for (int i = 0; i < answers.length(); i++) {
            if (i < chances.length) {
                assertThat(now.chanceRight()).as("before answer " + i).isCloseTo(chances[i], within(1e-6));
            }
            now = now.after(answers.charAt(i) == '1');
            assertThat(now.known()).as("after answer " + i).isCloseTo(known[i], within(1e-6));
        }
    }

    @Property(tries = 200)
    void it_stays_a_chance_and_a_right_answer_never_counts_against_knowing(
            @ForAll @DoubleRange(max = 1) double known,
            @ForAll @DoubleRange(max = 1) double learn,
            @ForAll @DoubleRange(max = 0.49) double slip,
            @ForAll @DoubleRange(max = 0.49) double guess,
            @ForAll List<Boolean> answers) {
        KnowledgeTracing now = new KnowledgeTracing(known, new KnowledgeTracing.Rates(learn, slip, guess));
        for (boolean right : answers) {
            assertThat(now.after(true).known()).isGreaterThanOrEqualTo(now.known() - 1e-12);
            assertThat(now.after(true).known())
                    .isGreaterThanOrEqualTo(now.after(false).known() - 1e-12);
            now = now.after(right);
            assertThat(now.known()).isBetween(0.0, 1.0);
            assertThat(now.chanceRight()).isBetween(0.0, 1.0);
        }
    }
}
