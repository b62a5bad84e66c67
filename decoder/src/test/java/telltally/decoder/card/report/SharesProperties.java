package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

class SharesProperties {
    @Example
    void a_share_that_is_not_the_whole_stands_inside_its_interval() {
        assertThat(Shares.percent(99_999, 100_000)).isEqualTo("99.9");
        assertThat(Shares.interval(99_999, 100_000)).isEqualTo("99.9 to 100.0");
    }

    @Property
    void every_share_as_it_is_shown_stands_inside_its_interval_as_it_is_shown(
            @ForAll @LongRange(min = 1, max = 10_000_000) long all, @ForAll @LongRange(max = 10_000_000) long drawn) {
        long right = drawn % (all + 1);
        BigDecimal share = new BigDecimal(Shares.percent(right, all));
        String[] ends = Shares.interval(right, all).split(" to ", -1);
        assertThat(share).isBetween(new BigDecimal(ends[0]), new BigDecimal(ends[1]));
        assertThat(share.compareTo(BigDecimal.valueOf(100)) == 0).isEqualTo(right == all);
    }
}
