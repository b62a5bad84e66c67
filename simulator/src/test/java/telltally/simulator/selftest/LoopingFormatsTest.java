package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;

/** Formats without segments: what is there and what was there, in one list. Common practice, no source. */
class LoopingFormatsTest {
    private static Workshop twoFaults(String format, String list) {
        return Workshop.sound()
                .format(format, list)
                .fault("air", Workshop.OPEN_SIGNAL)
                .fault("coolant", Workshop.GROUNDED_SIGNAL, new Presence.Remembered());
    }

    @ParameterizedTest
    @CsvSource({"pair-loop, plank", "long-short, plank", "pair-thrice, plank"})
    void the_list_goes_on_until_the_key_is_off(String format, String list) {
        Workshop workshop = twoFaults(format, list)
                .jumperIn(1)
                .keyOn(3)
                .until(1800)
                .keyOff(1801)
                .until(1830);
        assertThat(workshop.bench().codes()).containsExactly(java.util.Map.entry(Segment.CODES, List.of("42", "61")));
        List<Long> ends = workshop.groups(GroupKind.CODE).stream()
                .map(group -> group.endNanos())
                .toList();
        // No gap between two codes is longer than a code and a few seconds.
        for (int i = 1; i < ends.size(); i++) {
            assertThat(ends.get(i) - ends.get(i - 1)).isBetween(1L, 25 * Workshop.SECOND);
        }
        assertThat(ends.get(ends.size() - 1)).isBetween(1775 * Workshop.SECOND, 1801 * Workshop.SECOND);
        assertThat(workshop.bench().pin().litAtEnd()).isFalse();
    }

    @Test
    void neither_key_nor_jumper_erases_what_is_stored() {
        Workshop workshop = twoFaults("pair-loop", "plank")
                .jumperIn(1)
                .keyOn(3)
                .until(60)
                .jumperOut(61)
                .jumperIn(70);
        workshop.until(90).keyOff(91);
        assertThat(workshop.bench().storedCodes()).containsExactly("61", "42");
        assertThat(workshop.events(Kind.STORED_ERASED)).isEmpty();
    }

    @Test
    void the_battery_does() {
        Workshop workshop = twoFaults("pair-loop", "plank").act(new OperatorAct.BatteryOff(1));
        assertThat(workshop.bench().storedCodes()).isEmpty();
    }

    @Test
    void nothing_to_report_is_even_blinking_for_as_long_as_one_looks() {
        Workshop workshop = Workshop.sound()
                .format("pair-loop", "plank")
                .jumperIn(1)
                .keyOn(3)
                .until(600);
        List<telltally.simulator.format.SentGroup> steady = workshop.groups(GroupKind.STEADY);
        assertThat(steady).hasSize(2); // bulb check and blinking
        // Half a second a blink: 0.25 on and 0.25 off from about second 11 on.
        assertThat(steady.get(1).signs().get(0).flashes().size()).isBetween(1170, 1180);
        assertThat(workshop.bench().codes()).containsEntry(Segment.CODES, List.of());
    }

    @Test
    void a_format_that_says_nothing_then_stays_dark() {
        Workshop workshop = Workshop.sound()
                .format("long-short", "plank")
                .jumperIn(1)
                .keyOn(3)
                .until(300);
        assertThat(workshop.groups(GroupKind.CODE)).isEmpty();
        assertThat(workshop.bench().pin().edgeCount()).isEqualTo(2);
        assertThat(workshop.bench().codes()).containsEntry(Segment.CODES, List.of());
    }

    @Test
    void a_format_for_one_count_sends_the_first_of_the_list() {
        Workshop workshop = Workshop.sound()
                .format("count-loop", "burner")
                .fault("coolant", Workshop.OPEN_SIGNAL)
                .conditions(Conditions.warm().withBattery(Battery.charged().withVolts(8.7)))
                .jumperIn(1)
                .keyOn(3)
                .until(3600);
        assertThat(workshop.bench().codes()).containsEntry(Segment.CODES, List.of("3"));
        // 1.5 s of flashes and 3 s of gap, for nearly an hour.
        assertThat(workshop.groups(GroupKind.CODE)).hasSizeBetween(790, 800);
    }

    @Test
    void a_list_sent_once_leaves_the_test_idling_where_a_loose_connector_shows() {
        Workshop workshop = Workshop.sound()
                .format("quad-lead", "ladder")
                .fault("air", Workshop.OPEN_SIGNAL)
                .fault("coolant", Workshop.OPEN_SIGNAL, new Presence.Wiggled("coolant-sensor", false))
                .jumperIn(1)
                .keyOn(3)
                .until(120)
                .wiggle(121, "coolant-sensor", 5)
                .press(130, 1)
                .until(140);
        assertThat(workshop.groups(GroupKind.CODE))
                .extracting(group -> group.digits())
                .containsExactly("6221", "6221");
        assertThat(workshop.details(Kind.CODE_STORED)).containsExactly("6211");
        // Bulb check, two lead-ins, and the loose connector's lights.
        assertThat(workshop.groups(GroupKind.STEADY).stream().skip(3))
                .isNotEmpty()
                .allMatch(light -> light.startNanos() > Workshop.nanos(121));
        assertThat(workshop.events(Kind.OUTPUTS_ON)).isEmpty();
    }

    @Test
    void there_is_no_running_test() {
        Workshop workshop =
                twoFaults("pair-loop", "plank").crank(2).jumperIn(10).until(200);
        assertThat(workshop.bench().engineRuns()).isTrue();
        assertThat(workshop.events(Kind.TEST_BEGINS)).isEmpty();
    }
}
