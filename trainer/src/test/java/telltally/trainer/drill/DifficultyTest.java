package telltally.trainer.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.SentGroup;

/** Higher levels are harder: more flashes, longer lists, pauses that are nearer to each other. */
class DifficultyTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();
    private static final int SEEDS = 60;

    @ParameterizedTest
    @EnumSource(Skill.class)
    void the_full_level_has_more_to_count_than_the_easiest_one(Skill skill) {
        // Pauses to be compared have small groups around them on purpose; a pass code is hard to tell from small codes.
        if (skill != Skill.SEPARATOR_PAUSE && skill != Skill.PASS_CODE) {
            assertThat(mean(skill, Level.FULL, DifficultyTest::mostFlashes))
                    .isGreaterThan(mean(skill, Level.EASIEST, DifficultyTest::mostFlashes));
        }
        assertThat(mean(skill, Level.FULL, DifficultyTest::groups))
                .isGreaterThanOrEqualTo(mean(skill, Level.EASIEST, DifficultyTest::groups));
    }

    @Property(tries = 100)
    void the_gaps_of_one_seed_come_nearer_to_each_other_from_level_to_level(@ForAll Skill skill, @ForAll long seed) {
        if (skill == Skill.COUNT_A_DIGIT || skill == Skill.CODE_MEANING) {
            return; // These go through formats with the level instead.
        }
        List<Drill> drills = new ArrayList<>();
        for (int level = Level.LOWEST; level <= Level.HIGHEST; level++) {
            Drill drill = MAKER.make(skill, new Level(level), seed);
            boolean sameFormat = drills.isEmpty()
                    || drills.get(drills.size() - 1)
                            .format()
                            .id()
                            .equals(drill.format().id());
            if (!sameFormat) {
                drills.clear();
            }
            drills.add(drill);
        }
        for (int i = 1; i < drills.size(); i++) {
            Gaps easier = drills.get(i - 1).format().gaps();
            Gaps harder = drills.get(i).format().gaps();
            assertThat(ratio(harder.betweenDigitsNanos(), harder.withinDigitNanos()))
                    .isLessThanOrEqualTo(ratio(easier.betweenDigitsNanos(), easier.withinDigitNanos()) + 1e-6);
            assertThat(ratio(harder.betweenCodesNanos(), harder.withinDigitNanos()))
                    .isLessThanOrEqualTo(ratio(easier.betweenCodesNanos(), easier.withinDigitNanos()) + 1e-6);
            assertThat(harder.withinDigitNanos()).isLessThanOrEqualTo(easier.withinDigitNanos());
        }
    }

    @Test
    void at_the_full_level_every_fault_code_differs_from_the_pass_code_in_one_digit_only() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Drill drill = MAKER.make(Skill.PASS_CODE, Level.FULL, seed);
            assertThat(drill.truth().codes().values().stream().flatMap(List::stream))
                    .allMatch(code -> code.replace("1", "").length() <= 1);
        }
        assertThat(LongStream.range(0, SEEDS)
                        .mapToObj(seed -> MAKER.make(Skill.PASS_CODE, Level.EASIEST, seed))
                        .flatMap(
                                drill -> drill.truth().codes().values().stream().flatMap(List::stream)))
                .anyMatch(code -> code.replace("1", "").length() == 2);
    }

    @Test
    void what_a_level_makes_of_a_task_never_gets_easier() {
        for (int level = Level.LOWEST; level < Level.HIGHEST; level++) {
            Ease easier = new Ease(new Level(level));
            Ease harder = new Ease(new Level(level + 1));
            assertThat(harder.mostFlashes()).isGreaterThanOrEqualTo(easier.mostFlashes());
            assertThat(harder.clock()).isLessThan(easier.clock());
            assertThat(harder.gapStretch()).isLessThan(easier.gapStretch());
        }
        assertThat(new Ease(Level.FULL).mostFlashes()).isEqualTo(9);
        assertThat(new Ease(Level.FULL).clock()).isEqualTo(1);
        assertThat(new Ease(Level.FULL).gapStretch()).isEqualTo(1);
    }

    @Test
    void the_pause_of_the_separator_and_a_list_held_in_the_head_have_drills_that_grow_of_their_own() {
        assertThat(groups(MAKER.make(Skill.SEPARATOR_PAUSE, Level.EASIEST, 1))).isEqualTo(3);
        assertThat(groups(MAKER.make(Skill.SEPARATOR_PAUSE, Level.FULL, 1))).isEqualTo(4);
        assertThat(groups(MAKER.make(Skill.LIST_IN_THE_HEAD, Level.EASIEST, 1))).isEqualTo(2);
        assertThat(groups(MAKER.make(Skill.LIST_IN_THE_HEAD, new Level(9), 1))).isEqualTo(5);
        assertThat(groups(MAKER.make(Skill.LIST_IN_THE_HEAD, Level.FULL, 1)))
                .as("five codes, each twice as on the vehicle")
                .isEqualTo(10);
    }

    private static double mean(Skill skill, Level level, ToDoubleFunction<Drill> measure) {
        return LongStream.range(0, SEEDS)
                .mapToObj(seed -> MAKER.make(skill, level, seed))
                .mapToDouble(measure)
                .average()
                .orElseThrow();
    }

    private static double mostFlashes(Drill drill) {
        return drill.truth().groups().stream()
                .flatMap(group -> group.signs().stream())
                .mapToInt(sign -> sign.flashes().size())
                .max()
                .orElseThrow();
    }

    private static double groups(Drill drill) {
        return drill.truth().groups().stream()
                .filter(group -> !group.digits().isEmpty())
                .map(SentGroup::digits)
                .count();
    }

    private static double ratio(long longer, long shorter) {
        return (double) longer / shorter;
    }
}
