package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;

/** Key on, engine off. The order of things and their times: common practice, no source. */
class EngineOffSessionTest {
    private static Workshop keyOnTest(Workshop workshop) {
        return workshop.jumperIn(1).keyOn(3).until(150);
    }

    private static List<String> sent(Workshop workshop) {
        return workshop.bench().groups().stream()
                .map(group -> group.kind().key() + " " + group.segment().key() + " " + group.digits())
                .toList();
    }

    @Test
    void bulb_check_clicks_present_codes_twice_separator_stored_codes_twice() {
        Workshop workshop = keyOnTest(Workshop.sound()
                .fault("coolant", OPEN)
                .fault("air", Workshop.GROUNDED_SIGNAL, new Presence.Remembered()));
        assertThat(sent(workshop))
                .containsExactly(
                        "steady present ",
                        "code present 41",
                        "code present 41",
                        "separator present 1",
                        "code stored 41",
                        "code stored 62",
                        "code stored 41",
                        "code stored 62");
        assertThat(Stream.of(Kind.BULB_CHECK, Kind.TEST_BEGINS, Kind.SOLENOID_CLICKS, Kind.CODES_BEGIN, Kind.CODES_OUT)
                        .map(workshop::secondsOf))
                .isSorted();
    }

    private static final Fault OPEN = Workshop.OPEN_SIGNAL;

    @Test
    void nothing_to_report_is_sent_as_the_pass_code_in_both_segments() {
        assertThat(keyOnTest(Workshop.sound()).bench().codes())
                .containsEntry(Segment.PRESENT, List.of("11"))
                .containsEntry(Segment.STORED, List.of("11"));
    }

    @Test
    void the_pass_code_has_three_digits_where_codes_have_three() {
        assertThat(keyOnTest(Workshop.sound().format("triple-even", "trestle"))
                        .bench()
                        .codes())
                .containsEntry(Segment.PRESENT, List.of("111"));
    }

    @Test
    void the_bulb_check_is_a_light_and_no_group_of_a_code() {
        Workshop workshop = Workshop.sound().keyOn(3).until(60);
        SentGroup light = workshop.bench().groups().get(0);
        assertThat(workshop.bench().groups()).hasSize(1);
        assertThat(light.kind()).isEqualTo(GroupKind.STEADY);
        assertThat(light.startNanos()).isEqualTo(3 * Workshop.SECOND);
        assertThat(light.endNanos()).isEqualTo(5 * Workshop.SECOND);
        assertThat(workshop.bench().codes()).isEmpty();
    }

    @Test
    void without_the_jumper_no_test_begins_and_putting_it_in_later_begins_it() {
        Workshop workshop = Workshop.sound().keyOn(3).jumperIn(20).until(21);
        assertThat(workshop.secondsOf(Kind.TEST_BEGINS)).isEqualTo(20);
    }

    @Test
    void the_jumper_in_and_out_with_the_key_off_does_nothing() {
        Workshop workshop = Workshop.sound()
                .fault("coolant", OPEN)
                .jumperIn(1)
                .jumperOut(2)
                .jumperIn(3)
                .until(10);
        assertThat(workshop.bench().pin().edgeCount()).isZero();
        assertThat(workshop.bench().storedCodes()).containsExactly("41");
    }

    @Test
    void jumper_and_key_that_already_are_where_they_are_put_change_nothing() {
        Workshop workshop = Workshop.sound().jumperIn(1).keyOn(3).until(20);
        int events = workshop.bench().events().size();
        workshop.jumperIn(21).keyOn(22);
        assertThat(workshop.bench().events()).hasSize(events);
    }

    @Test
    void the_throttle_off_its_stop_while_the_test_looks_is_reported_and_comes_of_the_operator() {
        Workshop workshop = Workshop.sound()
                .jumperIn(1)
                .keyOn(3)
                .throttle(4, 0.5)
                .throttle(20, 0)
                .until(100);
        assertThat(workshop.bench().codes()).containsEntry(Segment.PRESENT, List.of("33"));
        assertThat(workshop.bench().codesFromConditions()).containsEntry(Segment.PRESENT, List.of("33"));
    }

    @Test
    void a_solenoid_without_current_does_not_click_as_the_test_begins() {
        Workshop workshop = keyOnTest(Workshop.sound().fault("purge-solenoid", new Fault.Open(Place.PART)));
        assertThat(workshop.details(Kind.SOLENOID_CLICKS))
                .containsExactly("recirculation-solenoid", "air-diverter-solenoid", "idle-air-solenoid");
        assertThat(workshop.bench().codes()).containsEntry(Segment.PRESENT, List.of("21"));
    }

    @Test
    void the_jumper_pulled_before_codes_are_sent_ends_the_test_and_erases_nothing() {
        Workshop workshop = Workshop.sound()
                .fault("coolant", OPEN)
                .jumperIn(1)
                .keyOn(3)
                .jumperOut(7)
                .until(60);
        assertThat(workshop.bench().storedCodes()).containsExactly("41");
        assertThat(workshop.groups(GroupKind.CODE)).isEmpty();
        assertThat(workshop.events(Kind.STORED_ERASED)).isEmpty();
    }

    @Test
    void a_battery_too_low_for_the_controller_leaves_everything_dark() {
        Conditions flat = Conditions.warm().withBattery(Battery.charged().withVolts(5));
        Workshop workshop = keyOnTest(Workshop.sound().conditions(flat));
        assertThat(workshop.bench().pin().edgeCount()).isZero();
        assertThat(workshop.details(Kind.NO_SUPPLY)).hasSize(1);
    }

    @Test
    void a_weak_battery_sets_its_own_code_and_will_not_turn_the_starter() {
        Conditions weak = Conditions.warm().withBattery(Battery.charged().withVolts(8.7));
        Workshop workshop =
                keyOnTest(Workshop.sound().conditions(weak)).crank(151).until(152);
        assertThat(workshop.bench().codes()).containsEntry(Segment.PRESENT, List.of("88"));
        assertThat(workshop.details(Kind.DOES_NOT_START)).containsExactly("battery");
        assertThat(workshop.bench().engineRuns()).isFalse();
    }

    @Test
    void a_supply_that_comes_and_goes_starts_the_controller_anew_each_time() {
        Presence everyMinute = new Presence.Recurring(60 * Workshop.SECOND, 5 * Workshop.SECOND, false);
        Workshop workshop = Workshop.sound()
                .fault("supply", new Fault.Open(Place.SUPPLY_WIRE), everyMinute)
                .jumperIn(6)
                .keyOn(7)
                .until(70);
        assertThat(workshop.events(Kind.BULB_CHECK))
                .extracting(event -> event.atNanos() / Workshop.SECOND)
                .containsExactly(7L, 65L);
        assertThat(workshop.events(Kind.NO_SUPPLY))
                .extracting(event -> event.atNanos() / Workshop.SECOND)
                .containsExactly(60L);
    }

    @Test
    void a_dead_dash_lamp_is_dark_while_the_output_works() {
        Workshop workshop = keyOnTest(Workshop.sound().darkLamp().fault("coolant", OPEN));
        assertThat(workshop.bench().lamp().edgeCount()).isZero();
        assertThat(workshop.bench().pin())
                .isEqualTo(keyOnTest(Workshop.sound().fault("coolant", OPEN))
                        .bench()
                        .pin());
    }

    @Test
    void the_wire_carries_the_same_list_a_hundred_times_faster_before_each_slow_one() {
        Workshop workshop = keyOnTest(Workshop.sound().fault("coolant", OPEN));
        // Code 41 twice and 41 twice, five flashes each, slow and fast; separator and bulb check once.
        assertThat(workshop.bench().lamp().edgeCount()).isEqualTo(2 * (4 * 5 + 1 + 1));
        assertThat(workshop.bench().pin().edgeCount()).isEqualTo(2 * (2 * 4 * 5 + 1 + 1));
    }
}
