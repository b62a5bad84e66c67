package telltally.decoder.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Lengths are logarithms; a tenth is about 10 %. */
class GapRuleTest {
    private static final Offset<Double> HARDLY = within(1e-9);

    @Test
    void a_length_costs_what_it_is_off_the_nearest_nominal_one() {
        GapRule rule = GapRule.near(1.0, 2.0);

        assertThat(rule.cost(2.0)).isZero();
        // Two spreads of 8 % off: half the square of two.
        assertThat(rule.cost(1.16)).isCloseTo(2, HARDLY);
        assertThat(rule.cost(1.84)).isCloseTo(2, HARDLY);
        assertThat(rule.off(1.16)).isCloseTo(0.16, HARDLY);
        assertThat(rule.off(1.84)).isCloseTo(-0.16, HARDLY);
    }

    @Test
    void breaking_a_rule_costs_no_more_than_is_said() {
        assertThat(GapRule.near(1.0).cost(3.0)).isGreaterThan(300);
        assertThat(GapRule.near(1.0).atMost(5).cost(3.0)).isEqualTo(5);
        assertThat(GapRule.near(1.0).atMost(5).cost(1.0)).isZero();
    }

    @Test
    void from_a_length_on_all_are_alike_and_cost_what_chance_does() {
        GapRule rule = GapRule.atLeast(2.0);

        assertThat(rule.cost(2.0)).isEqualTo(Cost.CHANCE);
        assertThat(rule.cost(9.0)).isEqualTo(Cost.CHANCE);
        assertThat(rule.cost(1.92)).isCloseTo(Cost.CHANCE + 0.5, HARDLY);
        assertThat(rule.open(2.0)).isTrue();
        assertThat(rule.open(1.99)).isFalse();
        assertThat(rule.off(2.5)).isNaN();
    }

    @Test
    void any_length_is_any_length() {
        assertThat(GapRule.any().cost(-50)).isEqualTo(Cost.CHANCE);
        assertThat(GapRule.any().open(-50)).isTrue();
    }

    @Test
    void a_nominal_length_may_be_exceeded_where_that_is_said() {
        GapRule rule = GapRule.near(1.0).orAtLeast(1.0);

        assertThat(rule.cost(1.0)).isZero();
        assertThat(rule.cost(1.08)).isCloseTo(0.5, HARDLY);
        assertThat(rule.cost(4.0)).isEqualTo(Cost.CHANCE);
        assertThat(rule.cost(0.84)).isCloseTo(2, HARDLY);
    }

    @Test
    void a_rule_allows_its_own_lengths_and_those_beyond_its_shortest() {
        GapRule near = GapRule.near(1.0, 2.0);
        assertThat(near.allows(2.0)).isTrue();
        assertThat(near.allows(1.5)).isFalse();
        assertThat(GapRule.atLeast(2.0).allows(2.0)).isTrue();
        assertThat(GapRule.atLeast(2.0).allows(1.9)).isFalse();
    }
}
