package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class FlashesTest {
    private static final long TENTH = 100_000_000;
    private static final long SECOND = 1_000_000_000;

    /** Light shorter than a tenth of a second is left out, darkness shorter than two tenths is closed. */
    private static Flashes of(String darkAndLitSeconds) {
        return Flashes.of(Recordings.train(darkAndLitSeconds), true, TENTH, 2 * TENTH, 1000);
    }

    private static long[] starts(Flashes flashes) {
        return Arrays.copyOf(flashes.startNanos, flashes.count);
    }

    private static long[] ends(Flashes flashes) {
        return Arrays.copyOf(flashes.endNanos, flashes.count);
    }

    @Test
    void each_flash_has_its_instants_and_its_length() {
        Flashes flashes = of("1 0.5 2 0.75 4");

        assertThat(flashes.count).isEqualTo(2);
        assertThat(starts(flashes)).containsExactly(SECOND, 3_500_000_000L);
        assertThat(ends(flashes)).containsExactly(1_500_000_000L, 4_250_000_000L);
        assertThat(flashes.start).containsExactly(new double[] {1, 3.5}, within(1e-12));
        assertThat(flashes.end).containsExactly(new double[] {1.5, 4.25}, within(1e-12));
        assertThat(flashes.lit(0)).isCloseTo(0.5, within(1e-12));
        assertThat(flashes.lit(1)).isCloseTo(0.75, within(1e-12));
    }

    @Test
    void the_dark_before_the_first_flash_and_after_the_last_is_told() {
        Flashes flashes = of("1 0.5 2 0.75 4");

        assertThat(flashes.leadSeconds).isCloseTo(1, within(1e-12));
        assertThat(flashes.tailSeconds).isCloseTo(4, within(1e-12));
        assertThat(flashes.cutAtStart).isFalse();
        assertThat(flashes.cutAtEnd).isFalse();
    }

    @Test
    void a_recording_may_begin_and_end_within_a_flash() {
        Flashes flashes = of("0 0.5 2 0.75");

        assertThat(starts(flashes)).containsExactly(0, 2_500_000_000L);
        assertThat(flashes.cutAtStart).isTrue();
        assertThat(flashes.cutAtEnd).isTrue();
        assertThat(flashes.leadSeconds).isZero();
        assertThat(flashes.tailSeconds).isZero();
    }

    @Test
    void a_dark_recording_is_all_lead_and_all_tail() {
        Flashes flashes = of("5");

        assertThat(flashes.count).isZero();
        assertThat(flashes.leadSeconds).isCloseTo(5, within(1e-12));
        assertThat(flashes.tailSeconds).isCloseTo(5, within(1e-12));
        assertThat(flashes.cutAtStart).isFalse();
        assertThat(flashes.cutAtEnd).isFalse();
    }

    @Test
    void light_all_the_time_is_one_flash_cut_at_both_ends() {
        Flashes flashes = of("0 5");

        assertThat(ends(flashes)).containsExactly(5 * SECOND);
        assertThat(flashes.cutAtStart).isTrue();
        assertThat(flashes.cutAtEnd).isTrue();
    }

    @Test
    void where_the_lamp_rests_lit_eclipses_are_what_is_counted() {
        Flashes flashes = Flashes.of(Recordings.train("0 1 0.5 2 0.75 4"), false, TENTH, 2 * TENTH, 1000);

        assertThat(starts(flashes)).containsExactly(SECOND, 3_500_000_000L);
        assertThat(ends(flashes)).containsExactly(1_500_000_000L, 4_250_000_000L);
    }

    @Test
    void a_pulse_shorter_than_the_least_is_left_out_and_one_as_long_stays() {
        Flashes flashes = of("1 0.1 1 0.099999999 1 0.02 1 0.5 1");

        assertThat(starts(flashes)).containsExactly(SECOND, 4_219_999_999L);
        assertThat(flashes.dropped).isEqualTo(2);
        assertThat(flashes.firstDroppedNanos).isEqualTo(2_100_000_000L);
    }

    @Test
    void nothing_left_out_has_no_instant() {
        assertThat(of("1 0.5 1").dropped).isZero();
        assertThat(of("1 0.5 1").firstDroppedNanos).isEqualTo(-1);
    }

    @Test
    void a_gap_shorter_than_the_least_is_closed_and_one_as_long_stays() {
        Flashes flashes = of("1 0.5 0.2 0.5 0.199999999 0.5 1 0.5 0.1 0.5 1");

        assertThat(starts(flashes)).containsExactly(SECOND, 1_700_000_000L, 3_899_999_999L);
        assertThat(ends(flashes)).containsExactly(1_500_000_000L, 2_899_999_999L, 4_999_999_999L);
        assertThat(flashes.dropped).isEqualTo(2);
        assertThat(flashes.firstDroppedNanos).isEqualTo(2_399_999_999L);
    }

    @Test
    void short_pulses_are_left_out_before_gaps_are_closed() {
        // The pulse between does not shorten the gap around it: 0.12 + 0.05 + 0.12 s of darkness.
        Flashes flashes = of("1 0.5 0.12 0.05 0.12 0.5 1");

        assertThat(starts(flashes)).containsExactly(SECOND, 1_790_000_000L);
        assertThat(flashes.dropped).isEqualTo(1);
    }

    @Test
    void a_short_pulse_at_the_end_of_the_recording_belongs_to_the_flash_just_before_it() {
        // It may have been long, since the end cuts it.
        Flashes flashes = of("1 0.5 0.199999999 0.05");

        assertThat(ends(flashes)).containsExactly(1_749_999_999L);
        assertThat(flashes.cutAtEnd).isTrue();
        assertThat(flashes.dropped).isEqualTo(1);
    }

    @Test
    void a_short_pulse_at_the_end_of_the_recording_is_left_out_where_it_stands_alone() {
        assertThat(ends(of("1 0.5 0.2 0.05"))).containsExactly(1_500_000_000L);
        assertThat(of("1 0.05").count).isZero();
        assertThat(of("0 0.05").count).isZero();
    }

    @Test
    void a_short_pulse_at_the_beginning_of_the_recording_is_left_out() {
        Flashes flashes = of("0 0.05 0.1 0.5 1");

        assertThat(starts(flashes)).containsExactly(150_000_000L);
        assertThat(flashes.dropped).isEqualTo(1);
        assertThat(flashes.firstDroppedNanos).isZero();
    }

    private static PulseTrain evenly(int flashes) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (int i = 0; i < flashes; i++) {
            pulses.dark(SECOND).lit(SECOND);
        }
        return pulses.build();
    }

    @Test
    void many_flashes_are_taken_one_by_one() {
        Flashes flashes = Flashes.of(evenly(1100), true, TENTH, TENTH, 2000);

        assertThat(flashes.count).isEqualTo(1100);
        for (int i = 0; i < flashes.count; i++) {
            assertThat(flashes.startNanos[i]).isEqualTo((2 * i + 1) * SECOND);
            assertThat(flashes.endNanos[i]).isEqualTo((2 * i + 2) * SECOND);
        }
    }

    @Test
    void no_more_flashes_are_taken_than_asked_for() {
        Flashes all = Flashes.of(evenly(300), true, TENTH, TENTH, 300);
        Flashes some = Flashes.of(evenly(301), true, TENTH, TENTH, 300);

        assertThat(all.count).isEqualTo(300);
        assertThat(all.more).isFalse();
        assertThat(some.count).isEqualTo(300);
        assertThat(some.more).isTrue();
        assertThat(some.tailSeconds).isCloseTo(2, within(1e-9));
    }

    @Test
    void the_same_flashes_come_out_with_thresholds_up_to_the_shortest_light_and_the_shortest_gap() {
        Flashes flashes = of("1 0.5 0.75 0.4 0.6 0.5 1");

        assertThat(flashes.sameFor(true, 400_000_000, 600_000_000)).isTrue();
        assertThat(flashes.sameFor(true, 400_000_001, 600_000_000)).isFalse();
        assertThat(flashes.sameFor(true, 400_000_000, 600_000_001)).isFalse();
        assertThat(flashes.sameFor(false, 1, 1)).isFalse();
    }

    @Test
    void a_lone_flash_has_no_gap_that_could_be_closed() {
        assertThat(of("1 0.5 1").sameFor(true, 1, 1000 * SECOND)).isTrue();
    }

    @Test
    void where_something_was_left_out_other_thresholds_may_keep_it() {
        assertThat(of("1 0.5 1 0.05 1").sameFor(true, 1, 1)).isFalse();
    }

    @Test
    void a_slice_sees_the_flashes_beside_it_as_the_brink_of_darkness() {
        Flashes slice = of("0 0.5 1 0.6 2 0.7 3 0.8").slice(1, 3);

        assertThat(slice.count).isEqualTo(2);
        assertThat(slice.startNanos).containsExactly(1_500_000_000L, 4_100_000_000L);
        assertThat(slice.endNanos).containsExactly(2_100_000_000L, 4_800_000_000L);
        assertThat(slice.start).containsExactly(new double[] {1.5, 4.1}, within(1e-12));
        assertThat(slice.end).containsExactly(new double[] {2.1, 4.8}, within(1e-12));
        assertThat(slice.leadSeconds).isCloseTo(1, within(1e-12));
        assertThat(slice.tailSeconds).isCloseTo(3, within(1e-12));
        assertThat(slice.cutAtStart).isFalse();
        assertThat(slice.cutAtEnd).isFalse();
    }

    @Test
    void a_slice_from_the_beginning_or_to_the_end_keeps_what_stands_there() {
        Flashes cut = of("0 0.5 1 0.6 2 0.7");
        Flashes free = of("5 0.5 1 0.6 2 0.7 4");

        assertThat(cut.slice(0, 2).cutAtStart).isTrue();
        assertThat(cut.slice(0, 2).cutAtEnd).isFalse();
        assertThat(cut.slice(1, 3).cutAtStart).isFalse();
        assertThat(cut.slice(1, 3).cutAtEnd).isTrue();
        assertThat(free.slice(0, 2).leadSeconds).isCloseTo(5, within(1e-12));
        assertThat(free.slice(0, 2).cutAtStart).isFalse();
        assertThat(free.slice(1, 3).tailSeconds).isCloseTo(4, within(1e-12));
        assertThat(free.slice(1, 3).cutAtEnd).isFalse();
    }

    @Test
    void the_slice_of_all_is_the_whole() {
        Flashes flashes = of("1 0.5 1 0.5 1");

        assertThat(flashes.slice(0, 2)).isSameAs(flashes);
        assertThat(flashes.slice(0, 1)).isNotSameAs(flashes);
        assertThat(flashes.slice(1, 2).count).isEqualTo(1);
    }
}
