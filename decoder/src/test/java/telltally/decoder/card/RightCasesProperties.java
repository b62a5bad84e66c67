package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class RightCasesProperties {
    private static BitSet bits(int cases, long seed) {
        Random random = new Random(seed);
        BitSet bits = new BitSet();
        for (int i = 0; i < cases; i++) {
            bits.set(i, random.nextBoolean());
        }
        return bits;
    }

    @Property(tries = 100)
    void what_is_written_is_read_back(@ForAll @IntRange(max = 60_000) int cases, @ForAll long seed) {
        RightCases right = new RightCases(cases, bits(cases, seed));
        assertThat(RightCases.of(cases, right.texts())).isEqualTo(right).hasSameHashCodeAs(right);
        assertThat(right.texts()).allMatch(text -> text.length() <= 4_000);
    }

    @Property(tries = 100)
    void what_is_right_on_either_side_only_is_counted(
            @ForAll @IntRange(max = 300) int cases, @ForAll long one, @ForAll long other) {
        RightCases here = new RightCases(cases, bits(cases, one));
        RightCases there = new RightCases(cases, bits(cases, other));
        assertThat(here.count() - here.rightHereOnly(there)).isEqualTo(there.count() - there.rightHereOnly(here));
        assertThat(here.or(there).count()).isEqualTo(here.count() + there.rightHereOnly(here));
    }

    @Example
    void the_lowest_bit_comes_first() {
        BitSet third = new BitSet();
        third.set(2);
        assertThat(new RightCases(9, third).texts()).containsExactly("BAA=");
    }

    @Example
    void bits_of_more_cases_than_there_are_are_refused() {
        assertThatThrownBy(() -> RightCases.of(2, List.of("BA=="))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RightCases.of(9, List.of("BA=="))).hasMessage("holds 1 bytes; expected 2");
        assertThatThrownBy(() -> RightCases.of(8, List.of("?"))).isInstanceOf(IllegalArgumentException.class);
    }
}
