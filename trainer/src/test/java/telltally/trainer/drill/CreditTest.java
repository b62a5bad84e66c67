package telltally.trainer.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.trainer.drill.Answer.Chosen;
import telltally.trainer.drill.Answer.Entry;
import telltally.trainer.drill.Answer.Written;
import telltally.trainer.drill.Question.Choose;
import telltally.trainer.lesson.Slip;

/** An answer is credited to the skill that it says something about. */
class CreditTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();

    private static Drill drill(Skill skill, int level, String wanted) {
        return LongStream.range(0, 500)
                .mapToObj(seed -> MAKER.make(skill, new Level(level), seed))
                .filter(each -> each.question() instanceof Question.Write)
                .filter(each -> each.truth().codes().values().stream()
                        .anyMatch(codes -> codes.stream().anyMatch(code -> code.matches(wanted))))
                .findFirst()
                .orElseThrow();
    }

    private static Written written(Segment segment, List<String> codes) {
        return new Written(
                codes.stream().map(code -> new Entry(segment, code, 0)).toList());
    }

    private static List<String> sent(Drill drill) {
        return new ArrayList<>(drill.truth().codes().get(Segment.CODES));
    }

    @Test
    void a_nine_miscounted_in_a_list_held_in_the_head_counts_against_counting_nines_as_well() {
        Drill drill = drill(Skill.LIST_IN_THE_HEAD, 9, "9[1-8]");
        List<String> codes = sent(drill);
        codes.replaceAll(code -> code.startsWith("9") ? "8" + code.substring(1) : code);
        Marked marked = drill.mark(written(Segment.CODES, codes));
        assertThat(marked.right()).isFalse();
        assertThat(marked.credits(Skill.LIST_IN_THE_HEAD)).singleElement().matches(credit -> !credit.right());
        assertThat(marked.credits(Skill.COUNT_A_DIGIT))
                .hasSize(2 * codes.size())
                .filteredOn(credit -> !credit.right())
                .isNotEmpty()
                .allMatch(credit -> credit.item().equals("9"));
        assertThat(marked.mistakes())
                .allMatch(mistake -> ((Mistake.InWriting) mistake).slip() instanceof Slip.MiscountedDigit);
    }

    @Test
    void a_lost_code_counts_against_holding_the_list_and_says_nothing_about_the_digits_of_that_code() {
        Drill drill = drill(Skill.LIST_IN_THE_HEAD, 9, "..");
        List<String> codes = sent(drill);
        codes.remove(1);
        Marked marked = drill.mark(written(Segment.CODES, codes));
        assertThat(marked.credits(Skill.LIST_IN_THE_HEAD)).singleElement().matches(credit -> !credit.right());
        assertThat(marked.credits(Skill.COUNT_A_DIGIT))
                .hasSize(2 * codes.size())
                .allMatch(Credit::right);
    }

    @Test
    void a_miscount_is_no_error_about_where_a_code_ends() {
        Drill drill = drill(Skill.END_OF_A_CODE, 8, "[2-9].");
        List<String> codes = sent(drill);
        codes.replaceAll(code -> code.matches("[2-9].") ? (char) (code.charAt(0) - 1) + code.substring(1) : code);
        Marked marked = drill.mark(written(Segment.CODES, codes));
        assertThat(marked.right()).isFalse();
        assertThat(marked.credits(Skill.END_OF_A_CODE)).singleElement().matches(Credit::right);
        assertThat(marked.credits(Skill.COUNT_A_DIGIT)).anyMatch(credit -> !credit.right());
    }

    @Test
    void two_digits_run_together_are_an_error_about_where_a_digit_ends_and_none_of_counting() {
        Drill drill = drill(Skill.END_OF_A_DIGIT, 1, "22");
        Marked marked = drill.mark(written(Segment.CODES, List.of("4")));
        assertThat(marked.credits(Skill.END_OF_A_DIGIT)).singleElement().matches(credit -> !credit.right());
        assertThat(marked.credits(Skill.COUNT_A_DIGIT)).isEmpty();
    }

    @Test
    void a_present_code_filed_as_stored_counts_against_keeping_segments_apart_and_not_against_counting() {
        Drill drill = MAKER.make(Skill.SEGMENTS_APART, new Level(3), 1);
        List<Entry> entries = new ArrayList<>();
        drill.truth()
                .codes()
                .forEach((segment, codes) -> codes.forEach(code ->
                        entries.add(new Entry(segment == Segment.PRESENT ? Segment.STORED : segment, code, 0))));
        Marked marked = drill.mark(new Written(entries));
        assertThat(marked.credits(Skill.SEGMENTS_APART)).singleElement().matches(credit -> !credit.right());
        assertThat(marked.credits(Skill.COUNT_A_DIGIT)).allMatch(Credit::right);
    }

    @Test
    void the_separator_written_down_as_a_code_counts_against_the_rule() {
        Drill drill = MAKER.make(Skill.SEGMENTS_APART, new Level(3), 1);
        List<Entry> entries = new ArrayList<>(((Written) drill.perfectAnswer()).entries());
        entries.add(new Entry(Segment.PRESENT, "1", 0));
        Marked marked = drill.mark(new Written(entries));
        assertThat(marked.credits(Skill.SEGMENTS_APART)).singleElement().matches(credit -> !credit.right());
    }

    @Test
    void a_digit_counted_alone_is_credited_under_its_own_number() {
        Drill drill = MAKER.make(Skill.COUNT_A_DIGIT, Level.FULL, "9", 3);
        assertThat(sent(drill)).containsExactly("9");
        assertThat(drill.mark(written(Segment.CODES, List.of("8"))).credits())
                .containsExactly(new Credit(Skill.COUNT_A_DIGIT, Level.FULL, "9", false));
    }

    @Test
    void cylinder_flashes_that_were_not_doubled_miss_the_rule_and_wrongly_doubled_ones_the_count() {
        Drill drill = LongStream.range(0, 100)
                .mapToObj(seed -> MAKER.make(Skill.CYLINDER_FLASHES, new Level(4), seed))
                .filter(each -> each.question() instanceof Choose
                        && each.truth().groups().get(0).digits().equals("3"))
                .findFirst()
                .orElseThrow();
        List<String> options = ((Choose) drill.question())
                .options().stream()
                        .map(option -> option.text().arguments().get(0).toString())
                        .toList();
        Marked notDoubled = drill.mark(new Chosen(options.indexOf("3")));
        Marked miscounted = drill.mark(new Chosen(options.indexOf("8")));
        assertThat(notDoubled.credits()).containsExactly(new Credit(Skill.CYLINDER_FLASHES, new Level(4), "", false));
        assertThat(miscounted.credits())
                .containsExactly(
                        new Credit(Skill.CYLINDER_FLASHES, new Level(4), "", true),
                        new Credit(Skill.COUNT_A_DIGIT, new Level(4), "3", false));
        assertThat(miscounted.right()).isFalse();
    }

    @Test
    void what_a_code_means_is_credited_under_its_list_and_code() {
        Drill drill = MAKER.make(Skill.CODE_MEANING, new Level(2), "plank 41", 9);
        Marked marked = drill.mark(drill.perfectAnswer());
        assertThat(marked.credits()).containsExactly(new Credit(Skill.CODE_MEANING, new Level(2), "plank 41", true));
    }

    @Test
    void whoever_joins_midway_may_begin_the_list_anywhere() {
        Drill drill = drill(Skill.FROM_THE_MIDDLE, 10, "..");
        List<String> codes = sent(drill);
        for (int turn = 0; turn < codes.size(); turn++) {
            Collections.rotate(codes, 1);
            assertThat(drill.mark(written(Segment.CODES, codes)).right()).isTrue();
        }
        Collections.swap(codes, 0, 1);
        assertThat(drill.mark(written(Segment.CODES, codes)).right()).isFalse();
    }

    @Test
    void which_digit_was_written_for_which_adds_up_over_answers() {
        Drill drill = drill(Skill.LIST_IN_THE_HEAD, 9, "9[1-8]");
        List<String> codes = sent(drill);
        codes.replaceAll(code -> code.startsWith("9") ? "8" + code.substring(1) : code);
        Marked wrong = drill.mark(written(Segment.CODES, codes));
        Marked right = drill.mark(drill.perfectAnswer());
        DigitConfusions confusions = DigitConfusions.none().plus(drill, wrong).plus(drill, right);
        assertThat(confusions.times("9", "8")).isPositive();
        assertThat(confusions.right("9") + confusions.times("9", "8")).isEqualTo(confusions.sent("9"));
        assertThat(confusions.digits()).isSorted().contains("9");
    }
}
