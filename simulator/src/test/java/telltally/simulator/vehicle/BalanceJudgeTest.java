package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import telltally.simulator.vehicle.BalanceVerdict.Outcome;

class BalanceJudgeTest {
    /** Worked power balance at cordonline.net/michigan/ep/ep_24.htm: six cylinders at 750 rpm, cylinder 5 does least. */
    private static final Contributions WORKED = Contributions.of(750, 680, 650, 660, 638, 733, 668);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void the_worked_example_names_cylinder_5_in_every_repeat(int repeat) {
        BalanceVerdict verdict = BalanceJudge.ofRepeat(repeat).judge(WORKED);

        assertThat(verdict.outcome()).isEqualTo(Outcome.WEAK);
        assertThat(verdict.weak()).isEqualTo(List.of(5));
        assertThat(verdict.flashes()).hasValue(5);
    }

    /** Drops and their shares, worked out apart from this program; 13 percent spread, as printed in the example. */
    @ParameterizedTest
    @CsvSource({"1, 70, 14.9", "2, 100, 21.2", "3, 90, 19.1", "4, 112, 23.8", "5, 17, 3.6", "6, 82, 17.4"})
    void the_worked_example_has_these_drops(int cylinder, double rpm, double percent) {
        assertThat(WORKED.drop(cylinder)).isEqualTo(rpm);
        assertThat(100 * WORKED.drop(cylinder) / WORKED.sum()).isCloseTo(percent, within(0.05));
    }

    @Test
    void repeats_tell_weak_from_dead() {
        Contributions weak = Contributions.of(1500, 1350, 1350, 1410, 1350);
        Contributions dead = Contributions.of(1500, 1350, 1350, 1498, 1350);

        assertThat(BalanceJudge.ofRepeat(0).judge(weak).flashes()).hasValue(3);
        assertThat(BalanceJudge.ofRepeat(1).judge(weak).flashes()).hasValue(9);
        assertThat(BalanceJudge.ofRepeat(0).judge(dead).flashes()).hasValue(3);
        assertThat(BalanceJudge.ofRepeat(2).judge(dead).flashes()).hasValue(3);
        assertThat(BalanceJudge.ofRepeat(5)).isEqualTo(BalanceJudge.ofRepeat(2));
    }

    @Test
    void of_several_weak_cylinders_the_weakest_comes_first() {
        BalanceVerdict verdict = BalanceJudge.ofRepeat(0).judge(Contributions.of(1500, 1350, 1450, 1350, 1490));

        assertThat(verdict.weak()).isEqualTo(List.of(4, 2));
    }

    @Test
    void readings_without_any_drop_are_worth_nothing() {
        BalanceVerdict verdict = BalanceJudge.ofRepeat(0).judge(Contributions.of(1500, 1500, 1500, 1500, 1500));

        assertThat(verdict.outcome()).isEqualTo(Outcome.SPOILED);
        assertThat(verdict.flashes()).isEmpty();
    }

    @Property
    void a_verdict_does_not_depend_on_the_scale_of_the_drops(
            @ForAll @Size(8) List<@DoubleRange(min = 1, max = 100) Double> drops) {
        // A power of two, so that scaling rounds nothing.
        Contributions scaled =
                new Contributions(drops.stream().map(drop -> 4 * drop).toList());

        assertThat(BalanceJudge.ofRepeat(0).judge(scaled).weak())
                .isEqualTo(
                        BalanceJudge.ofRepeat(0).judge(new Contributions(drops)).weak());
    }

    @Test
    void thresholds_and_verdicts_that_make_no_sense_are_refused() {
        assertThatThrownBy(() -> new BalanceJudge(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BalanceJudge(1.01)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BalanceVerdict(Outcome.WEAK, List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BalanceVerdict(Outcome.ALL_CONTRIBUTE, List.of(1), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
