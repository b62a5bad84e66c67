package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.format.GroupKind;
import telltally.simulator.signal.PulseTrain;

/** The bench stepped as a window does it, while somebody watches the lamp. */
class LiveBenchTest {
    private static final long STEP_NANOS = 7_000_000;

    private static Workshop started(String format) {
        return Workshop.sound()
                .format(format, "plank")
                .fault("coolant", Workshop.OPEN_SIGNAL)
                .jumperIn(1)
                .keyOn(3);
    }

    @ParameterizedTest
    @CsvSource({"pair-even, 70", "pair-loop, 40", "long-short, 40"})
    void is_lit_at_every_step_as_its_recording_says_afterwards(String format, long seconds) {
        Bench bench = started(format).bench();
        List<Boolean> seen = new ArrayList<>();
        List<Long> steps = new ArrayList<>();
        for (long at = bench.nowNanos() + STEP_NANOS; at <= seconds * Workshop.SECOND; at += STEP_NANOS) {
            bench.advanceTo(at);
            assertThat(bench.nowNanos()).isEqualTo(at);
            seen.add(bench.lit());
            steps.add(at);
        }
        PulseTrain pin = bench.pin();
        // A step shows what held up to its instant.
        assertThat(seen)
                .isEqualTo(steps.stream().map(at -> pin.litAt(at - 1)).toList())
                .contains(true, false);
    }

    @ParameterizedTest
    @CsvSource({"pair-even, 70", "pair-loop, 40", "long-short, 40"})
    void shows_the_same_whether_it_is_stepped_or_played_in_one_go(String format, long seconds) {
        Bench stepped = started(format).bench();
        for (long at = stepped.nowNanos(); at < seconds * Workshop.SECOND; at += STEP_NANOS) {
            stepped.advanceTo(at);
        }
        stepped.advanceTo(seconds * Workshop.SECOND);
        Bench played = started(format).until((double) seconds).bench();
        assertThat(stepped.pin()).isEqualTo(played.pin());
        assertThat(stepped.lamp()).isEqualTo(played.lamp());
        assertThat(stepped.groups()).isEqualTo(played.groups());
        assertThat(stepped.events()).isEqualTo(played.events());
    }

    @Test
    void a_group_is_there_from_the_instant_of_its_last_flash_on() {
        long end = started("pair-even").until(60).groups(GroupKind.CODE).get(0).endNanos();
        Workshop workshop = started("pair-even");
        workshop.bench().advanceTo(end - 1);
        assertThat(workshop.groups(GroupKind.CODE)).isEmpty();
        workshop.bench().advanceTo(end);
        assertThat(workshop.groups(GroupKind.CODE)).hasSize(1);
    }

    @Test
    void a_light_is_told_as_far_as_it_has_lasted() {
        Workshop workshop = started("pair-even").until(4);
        assertThat(workshop.groups(GroupKind.STEADY)).hasSize(1);
        assertThat(workshop.groups(GroupKind.STEADY).get(0).startNanos()).isEqualTo(Workshop.nanos(3));
        assertThat(workshop.groups(GroupKind.STEADY).get(0).endNanos()).isEqualTo(Workshop.nanos(4));
    }

    @Test
    void staying_at_this_instant_is_no_way_back() {
        Bench bench = Workshop.sound().until(5).bench();
        bench.advanceTo(Workshop.nanos(5));
        assertThat(bench.nowNanos()).isEqualTo(Workshop.nanos(5));
        assertThatThrownBy(() -> bench.advanceTo(Workshop.nanos(5) - 1)).hasMessageContaining("not before");
    }
}
