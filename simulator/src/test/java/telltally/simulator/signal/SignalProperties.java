package telltally.simulator.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class SignalProperties {
    @Provide
    Arbitrary<PulseTrain> trains() {
        return PulseTrains.any(1);
    }

    /** Short ones, in which every instant can be looked at. */
    @Provide
    Arbitrary<PulseTrain> shortTrains() {
        return Arbitraries.integers()
                .between(0, 1)
                .list()
                .ofMinSize(1)
                .ofMaxSize(30)
                .map(levels -> {
                    PulseTrain.Builder train = PulseTrain.builder();
                    levels.forEach(level -> train.stay(level == 1, 1));
                    return train.build();
                });
    }

    @Property
    void a_written_time_is_read_back_as_it_was(
            @ForAll @LongRange(min = -Seconds.MAX_NANOS, max = Seconds.MAX_NANOS) long nanos) {
        assertThat(Seconds.parseNanos(Seconds.text(nanos))).isEqualTo(nanos);
    }

    @Property
    void intervals_alternate_and_fill_the_train_without_holes(@ForAll("trains") PulseTrain train) {
        List<Interval> intervals = train.intervals();
        assertThat(intervals.get(0).startNanos()).isZero();
        assertThat(intervals.get(0).lit()).isEqualTo(train.litAtStart());
        for (int i = 1; i < intervals.size(); i++) {
            assertThat(intervals.get(i).startNanos())
                    .isEqualTo(intervals.get(i - 1).endNanos())
                    .isEqualTo(train.edgeNanos(i - 1));
            assertThat(intervals.get(i).lit()).isNotEqualTo(intervals.get(i - 1).lit());
        }
        Interval last = intervals.get(intervals.size() - 1);
        assertThat(last.endNanos()).isEqualTo(train.endNanos());
        assertThat(last.lit()).isEqualTo(train.litAtEnd());
    }

    @Property
    void a_train_is_rebuilt_from_its_intervals(@ForAll("trains") PulseTrain train) {
        PulseTrain.Builder again = PulseTrain.builder();
        train.intervals().forEach(interval -> again.stay(interval.lit(), interval.lengthNanos()));

        assertThat(again.build()).isEqualTo(train).hasSameHashCodeAs(train);
    }

    @Property
    void the_level_at_an_instant_is_that_of_the_interval_around_it(@ForAll("shortTrains") PulseTrain train) {
        for (Interval interval : train.intervals()) {
            for (long at = interval.startNanos(); at < interval.endNanos(); at++) {
                assertThat(train.litAt(at)).isEqualTo(interval.lit());
            }
        }
        assertThat(train.litAt(-1)).isEqualTo(train.litAtStart());
        assertThat(train.litAt(train.endNanos())).isEqualTo(train.litAtEnd());
    }

    @Property
    void lit_time_in_a_window_is_what_counting_every_nanosecond_gives(
            @ForAll("shortTrains") PulseTrain train,
            @ForAll @IntRange(min = -5, max = 40) int from,
            @ForAll @IntRange(min = -5, max = 40) int to) {
        long counted = 0;
        for (long at = from; at < to; at++) {
            counted += at >= 0 && at < train.endNanos() && train.litAt(at) ? 1 : 0;
        }

        assertThat(train.litNanosBetween(from, to)).isEqualTo(counted);
    }

    @Property
    void lit_and_dark_time_make_up_the_whole(@ForAll("trains") PulseTrain train) {
        assertThat(train.litNanosBetween(Long.MIN_VALUE, Long.MAX_VALUE)
                        + train.inverted().litNanosBetween(0, train.endNanos()))
                .isEqualTo(train.endNanos());
    }

    @Property
    void exchanging_lit_and_dark_twice_changes_nothing(@ForAll("trains") PulseTrain train) {
        assertThat(train.inverted()).isNotEqualTo(train);
        assertThat(train.inverted().inverted()).isEqualTo(train);
    }
}
