package telltally.decoder.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PartTest {
    @Property(tries = 100)
    void every_block_belongs_to_exactly_one_shard(
            @ForAll @IntRange(min = 1, max = 12) int of, @ForAll @IntRange(max = 1000) int index) {
        assertThat(LongStream.rangeClosed(1, of).filter(shard -> new Part(of, List.of((int) shard)).holds(index)))
                .hasSize(1);
    }

    @Test
    void all_shards_are_the_whole_however_many_there_were() {
        Part whole = new Part(3, List.of(2)).plus(new Part(3, List.of(3))).plus(new Part(3, List.of(1)));
        assertThat(whole).isEqualTo(Part.WHOLE);
        assertThat(new Part(1, List.of(1)).whole()).isTrue();
    }

    @Test
    void some_shards_are_a_part_in_order() {
        assertThat(new Part(4, List.of(3)).plus(new Part(4, List.of(1)))).isEqualTo(new Part(4, List.of(1, 3)));
        assertThat(new Part(4, List.of(3, 1))).hasToString("shard 1+3 of 4");
    }

    @Test
    void what_does_not_belong_together_is_refused() {
        Part first = new Part(2, List.of(1));
        assertThatThrownBy(() -> first.plus(first)).hasMessage("shard 1 of 2 and shard 1 of 2 hold the same shard");
        assertThatThrownBy(() -> first.plus(new Part(3, List.of(2)))).hasMessageContaining("no parts of one run");
        assertThatThrownBy(() -> Part.WHOLE.plus(Part.WHOLE)).hasMessageContaining("no parts of one run");
        assertThatThrownBy(() -> new Part(2, List.of(3))).isInstanceOf(IllegalArgumentException.class);
    }
}
