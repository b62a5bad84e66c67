package telltally.decoder.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Interval;

class FlashCountTest {
    private static Group group(long startNanos, long endNanos) {
        return new Group(GroupKind.CODE, Segment.CODES, "3", 1, startNanos, endNanos, List.of());
    }

    private static Interval flash(long startNanos, long endNanos) {
        return new Interval(true, startNanos, endNanos);
    }

    @Test
    void flashes_are_counted_from_one_in_each_group_and_not_between_groups() {
        FlashCount count = new FlashCount(List.of(group(10, 30), group(50, 60)));
        assertThat(count.next(flash(1, 5))).isZero();
        assertThat(count.next(flash(10, 15))).isEqualTo(1);
        assertThat(count.next(flash(25, 30))).isEqualTo(2);
        assertThat(count.next(flash(35, 40))).isZero();
        assertThat(count.next(flash(50, 60))).isEqualTo(1);
        assertThat(count.next(flash(70, 80))).isZero();
    }

    @Test
    void a_flash_that_only_touches_a_group_is_not_in_it() {
        assertThat(new FlashCount(List.of(group(10, 30))).next(flash(5, 10))).isZero();
        assertThat(new FlashCount(List.of(group(10, 30))).next(flash(30, 35))).isZero();
        assertThat(new FlashCount(List.of(group(10, 30))).next(flash(5, 11))).isEqualTo(1);
        assertThat(new FlashCount(List.of(group(10, 30))).next(flash(29, 35))).isEqualTo(1);
    }

    @Test
    void where_one_group_ends_as_the_next_begins_counting_starts_anew() {
        FlashCount count = new FlashCount(List.of(group(10, 30), group(30, 50)));
        assertThat(count.next(flash(20, 30))).isEqualTo(1);
        assertThat(count.next(flash(30, 40))).isEqualTo(1);
        assertThat(count.next(flash(45, 50))).isEqualTo(2);
    }
}
