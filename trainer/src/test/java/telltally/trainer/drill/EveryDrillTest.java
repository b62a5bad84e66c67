package telltally.trainer.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import telltally.trainer.playback.FlashRate;

/** What holds for every drill of every skill, level and seed. */
class EveryDrillTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();

    @Provide
    Arbitrary<Integer> levels() {
        return Arbitraries.integers().between(Level.LOWEST, Level.HIGHEST);
    }

    @Property(tries = 1000)
    void an_answer_without_a_mistake_is_right_and_so_is_every_credit(
            @ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(skill, new Level(level), seed);
        Marked marked = drill.mark(drill.perfectAnswer());
        assertThat(marked.mistakes()).isEmpty();
        assertThat(marked.right()).isTrue();
        assertThat(marked.credits()).isNotEmpty().allMatch(Credit::right);
        assertThat(marked.credits().get(0).skill()).isEqualTo(skill);
    }

    @Property(tries = 300)
    void no_answer_is_wrong_and_counts_against_the_skill(
            @ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(skill, new Level(level), seed);
        for (Answer nothing : List.of(new Answer.None(), new Answer.Written(List.of()))) {
            Marked marked = drill.mark(nothing);
            assertThat(marked.right()).isFalse();
            assertThat(marked.mistakes()).isNotEmpty();
            assertThat(marked.credits(skill)).isNotEmpty().noneMatch(Credit::right);
        }
    }

    /** The lamp is never faster than the guideline on flashing light allows (WCAG 2.2, success criterion 2.3.1). */
    @Property(tries = 1000)
    void no_second_has_more_than_three_flashes(@ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        assertThat(FlashRate.mostInAnySecond(
                        MAKER.make(skill, new Level(level), seed).pulses()))
                .isLessThanOrEqualTo(FlashRate.MOST_IN_A_SECOND);
    }

    @Property(tries = 200)
    void the_same_order_gives_the_same_drill(@ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        assertThat(DrillMaker.shipped().make(skill, new Level(level), seed))
                .isEqualTo(MAKER.make(skill, new Level(level), seed));
    }

    @Property(tries = 200)
    void what_was_answered_can_be_read_back_from_its_text(
            @ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Answer answer = MAKER.make(skill, new Level(level), seed).perfectAnswer();
        assertThat(Answer.parse(answer.text())).isEqualTo(answer);
    }

    @Property(tries = 100)
    void seeds_give_different_drills(@ForAll Skill skill, @ForAll("levels") int level, @ForAll int seed) {
        long different = IntStream.range(0, 20)
                .mapToObj(each -> MAKER.make(skill, new Level(level), seed + each))
                .map(drill -> drill.pulses())
                .distinct()
                .count();
        assertThat(different).isGreaterThan(15);
    }
}
