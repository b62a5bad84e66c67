package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.ChannelRecipe.Step;

class ChannelRecipeTest {
    private static final Step CLOCK = clock(new Strength(0.85, 1.18));
    private static final Step JITTER =
            new Step("jitter", draw -> new Jitter(draw.of("share", new Strength(0.01, 0.06))));

    private static Step clock(Strength factor) {
        return new Step("clock-scale", draw -> new ClockScale(draw.of("factor", factor)));
    }

    private static List<Impairment> drawn(long seed, Step... steps) {
        return new ChannelRecipe(List.of(steps)).drawnFrom(Chance.of(seed)).impairments();
    }

    @Test
    void a_strength_of_one_value_is_that_value() {
        assertThat(drawn(7, clock(Strength.of(1.1)))).containsExactly(new ClockScale(1.1));
    }

    @Test
    void a_range_is_drawn_from_over_its_whole_breadth_and_never_beyond() {
        assertThat(LongStream.range(0, 300)
                        .mapToObj(seed -> ((ClockScale) drawn(seed, CLOCK).get(0)).factor()))
                .allMatch(factor -> factor >= 0.85 && factor <= 1.18)
                .anyMatch(factor -> factor < 0.87)
                .anyMatch(factor -> factor > 1.16);
    }

    @Test
    void the_same_seed_draws_the_same() {
        assertThat(drawn(7, CLOCK, JITTER)).isEqualTo(drawn(7, CLOCK, JITTER)).isNotEqualTo(drawn(8, CLOCK, JITTER));
    }

    @Test
    void another_kind_in_between_moves_no_draw_of_the_others() {
        List<Impairment> alone = drawn(7, JITTER);
        assertThat(drawn(7, CLOCK, JITTER).get(1)).isEqualTo(alone.get(0));
    }

    @Test
    void a_second_of_one_kind_draws_for_itself() {
        List<Impairment> two = drawn(7, JITTER, CLOCK, JITTER);
        assertThat(two.get(0)).isNotEqualTo(two.get(2));
    }

    @Test
    void a_range_has_its_smaller_end_first() {
        assertThatThrownBy(() -> new Strength(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Strength(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
