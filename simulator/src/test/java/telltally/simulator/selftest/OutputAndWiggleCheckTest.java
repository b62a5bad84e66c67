package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;

/** What can be done after all engine-off codes are out. Common practice, no source. */
class OutputAndWiggleCheckTest {
    private static final Presence LOOSE = new Presence.Wiggled("coolant-sensor", false);

    private static Workshop codesOut(Workshop workshop) {
        return workshop.jumperIn(1).keyOn(3).until(100);
    }

    private static List<SentGroup> lightsAfter(Workshop workshop, double seconds) {
        return workshop.groups(GroupKind.STEADY).stream()
                .filter(group -> group.startNanos() >= Workshop.nanos(seconds))
                .toList();
    }

    @Test
    void the_throttle_to_the_floor_switches_every_output_on_with_the_lamp_lit_and_off_again() {
        Workshop workshop =
                codesOut(Workshop.sound()).press(101, 1).press(110, 1).until(120);
        assertThat(workshop.secondsOf(Kind.OUTPUTS_ON)).isEqualTo(101);
        assertThat(workshop.secondsOf(Kind.OUTPUTS_OFF)).isEqualTo(110);
        assertThat(lightsAfter(workshop, 100)).hasSize(1);
        assertThat(lightsAfter(workshop, 100).get(0).startNanos()).isEqualTo(Workshop.nanos(101));
        assertThat(lightsAfter(workshop, 100).get(0).endNanos()).isEqualTo(Workshop.nanos(110));
        assertThat(workshop.details(Kind.SOLENOID_DROPS)).hasSize(4);
    }

    @Test
    void half_throttle_or_the_floor_before_the_codes_are_out_does_nothing() {
        Workshop workshop = Workshop.sound().jumperIn(1).keyOn(3).press(20, 1).until(100);
        workshop.press(101, 0.5).until(110);
        assertThat(workshop.events(Kind.OUTPUTS_ON)).isEmpty();
        assertThat(workshop.bench().codes()).containsEntry(Segment.PRESENT, List.of("11"));
    }

    @Test
    void a_pedal_that_goes_down_slowly_counts_once() {
        Workshop workshop = codesOut(Workshop.sound());
        for (int step = 1; step <= 20; step++) {
            workshop.throttle(100 + step * 0.1, step / 20.0);
        }
        assertThat(workshop.events(Kind.OUTPUTS_ON)).hasSize(1);
        assertThat(workshop.events(Kind.OUTPUTS_OFF)).isEmpty();
    }

    @Test
    void a_silent_solenoid_is_the_one_without_a_click() {
        Fault corroded = new Fault.HighResistance(Place.SUPPLY_WIRE, 90);
        Workshop workshop =
                codesOut(Workshop.sound().fault("purge-solenoid", corroded)).press(101, 1);
        assertThat(workshop.bench().codes()).containsEntry(Segment.PRESENT, List.of("11"));
        assertThat(workshop.events(Kind.SOLENOID_CLICKS).stream()
                        .filter(event -> event.atNanos() == Workshop.nanos(101))
                        .map(BenchEvent::detail))
                .containsExactly("recirculation-solenoid", "air-diverter-solenoid", "idle-air-solenoid");
    }

    @Test
    void a_connector_that_cuts_a_solenoid_out_when_moved_is_heard() {
        Workshop workshop = codesOut(Workshop.sound()
                        .fault("purge-solenoid", Workshop.OPEN_SIGNAL, new Presence.Wiggled("purge-solenoid", false)))
                .press(101, 1)
                .wiggle(105, "purge-solenoid", 5)
                .until(115);
        assertThat(workshop.details(Kind.SOLENOID_DROPS)).isNotEmpty().allMatch("purge-solenoid"::equals);
        assertThat(workshop.bench().storedCodes()).containsExactly("21");
    }

    @Test
    void with_a_dead_throttle_sensor_the_output_check_cannot_be_switched() {
        Workshop workshop = codesOut(Workshop.sound().fault("throttle", Workshop.OPEN_SIGNAL));
        workshop.press(121, 1).until(130);
        assertThat(workshop.events(Kind.OUTPUTS_ON)).isEmpty();
    }

    @Test
    void a_wiggled_connector_lights_the_lamp_at_the_instant_the_circuit_opens_and_stores_a_code() {
        Workshop workshop = codesOut(Workshop.sound().fault("coolant", Workshop.OPEN_SIGNAL, LOOSE))
                .wiggle(105, "coolant-sensor", 5)
                .until(115);
        List<SentGroup> lights = lightsAfter(workshop, 100);
        assertThat(lights).isNotEmpty();
        assertThat(workshop.events(Kind.CODE_STORED)).hasSize(1);
        assertThat(lights.get(0).startNanos())
                .isEqualTo(workshop.events(Kind.CODE_STORED).get(0).atNanos())
                .isBetween(Workshop.nanos(105.2), Workshop.nanos(105.8));
        assertThat(lights)
                .allMatch(light -> light.endNanos() - light.startNanos() >= Workshop.nanos(0.3)
                        && light.endNanos() - light.startNanos() <= Workshop.nanos(0.9)
                        && light.endNanos() <= Workshop.nanos(110));
        assertThat(workshop.bench().storedCodes()).containsExactly("41");
    }

    @Test
    void another_connector_moved_shows_nothing() {
        Workshop workshop = codesOut(Workshop.sound().fault("coolant", Workshop.OPEN_SIGNAL, LOOSE))
                .wiggle(105, "air-sensor", 5)
                .until(115);
        assertThat(lightsAfter(workshop, 100)).isEmpty();
        assertThat(workshop.bench().storedCodes()).isEmpty();
    }

    @Test
    void moved_with_the_key_on_and_no_test_it_is_stored_without_a_light() {
        Workshop workshop = Workshop.sound()
                .fault("coolant", Workshop.OPEN_SIGNAL, LOOSE)
                .keyOn(3)
                .wiggle(10, "coolant-sensor", 5)
                .until(20);
        assertThat(lightsAfter(workshop, 6)).isEmpty();
        assertThat(workshop.bench().storedCodes()).containsExactly("41");
    }

    @Test
    void moved_with_the_key_off_nobody_sees_it() {
        Workshop workshop = Workshop.sound()
                .fault("coolant", Workshop.OPEN_SIGNAL, LOOSE)
                .wiggle(1, "coolant-sensor", 5)
                .until(20);
        assertThat(workshop.bench().storedCodes()).isEmpty();
        assertThat(workshop.bench().pin().edgeCount()).isZero();
    }

    @Test
    void moved_while_codes_are_sent_it_is_stored_for_the_next_test_and_the_sending_goes_on() {
        Workshop workshop = Workshop.sound()
                .fault("coolant", Workshop.OPEN_SIGNAL, LOOSE)
                .jumperIn(1)
                .keyOn(3)
                .wiggle(20, "coolant-sensor", 5)
                .until(100);
        assertThat(workshop.bench().codes()).containsEntry(Segment.STORED, List.of("11"));
        workshop.jumperOut(101).jumperIn(102).until(200);
        assertThat(workshop.bench().codes()).containsEntry(Segment.STORED, List.of("11", "41"));
    }

    @Test
    void only_what_the_loose_circuit_does_is_stored_not_the_faults_that_are_there_all_along() {
        Workshop workshop = codesOut(Workshop.sound()
                        .conditions(telltally.simulator.vehicle.Conditions.warm()
                                .withBattery(telltally.simulator.vehicle.Battery.charged()
                                        .disconnected()))
                        .fault("air", Workshop.OPEN_SIGNAL)
                        .fault("coolant", Workshop.OPEN_SIGNAL, LOOSE))
                .wiggle(105, "coolant-sensor", 5)
                .until(115);
        assertThat(workshop.bench().storedCodes()).containsExactly("41");
    }

    @Test
    void a_recurring_fault_that_is_there_at_key_on_is_remembered() {
        Presence often = new Presence.Recurring(100 * Workshop.SECOND, 50 * Workshop.SECOND, false);
        Workshop workshop = Workshop.sound()
                .fault("air", Workshop.OPEN_SIGNAL, often)
                .keyOn(3)
                .until(4);
        assertThat(workshop.bench().storedCodes()).containsExactly("61");
    }
}
