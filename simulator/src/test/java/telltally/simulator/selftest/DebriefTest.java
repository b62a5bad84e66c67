package telltally.simulator.selftest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.Debrief.Confirmation;
import telltally.simulator.selftest.Debrief.Expectation;
import telltally.simulator.selftest.Debrief.Finding;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Place;

class DebriefTest {
    private static Expectation expected(Workshop workshop) {
        BenchSetup setup = workshop.setup();
        return Debrief.of(setup, new Diagnosis(setup.vehicle()));
    }

    private static Finding only(Workshop workshop) {
        assertThat(expected(workshop).findings()).hasSize(1);
        return expected(workshop).findings().get(0);
    }

    private static Confirmation reading(Finding finding, String measurement) {
        return finding.confirmations().stream()
                .filter(each -> each.measurement().name().equals(measurement))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_sound_vehicle_has_nothing_to_be_found() {
        Expectation expectation = expected(Workshop.sound());
        assertThat(expectation.findings()).isEmpty();
        assertThat(expectation.weakCylinders()).isEmpty();
        assertThat(expectation.fromConditions()).isEmpty();
    }

    @Test
    void an_open_sensor_has_its_code_in_every_segment_and_a_meter_over_its_range() {
        Finding finding = only(Workshop.sound().fault("coolant", new Fault.Open(Place.PART)));
        assertThat(finding.codes())
                .isEqualTo(Map.of(
                        Segment.PRESENT, List.of("41"), Segment.STORED, List.of("41"), Segment.RUNNING, List.of("41")));
        assertThat(reading(finding, "part-ohms").reading()).isInfinite();
        // The shipped curve has 915 ohms at 90 degrees Celsius.
        assertThat(reading(finding, "part-ohms").soundReading()).isBetween(850.0, 1000.0);
        // An open circuit is pulled up to the whole reference of 5 V: common practice, no source.
        assertThat(reading(finding, "volts-connected").reading()).isBetween(4.9, 5.0);
    }

    @Test
    void a_formats_own_segments_are_told_and_no_others() {
        Finding finding = only(Workshop.sound().format("pair-loop", "plank").fault("coolant", Workshop.OPEN_SIGNAL));
        assertThat(finding.codes()).isEqualTo(Map.of(Segment.CODES, List.of("41")));
    }

    @Test
    void what_the_conditions_set_anyway_is_no_finding_of_a_fault() {
        Expectation expectation = expected(Workshop.sound()
                .conditions(Conditions.warm().withCoolantCelsius(5))
                .fault("air", Workshop.OPEN_SIGNAL));
        assertThat(expectation.fromConditions()).isEqualTo(Map.of(Segment.RUNNING, List.of("43")));
        assertThat(expectation.findings().get(0).codes().get(Segment.RUNNING)).containsExactly("61");
    }

    @Test
    void a_dead_output_shows_only_while_the_outputs_are_switched_on() {
        Finding finding = only(Workshop.sound().fault("purge-solenoid", Fault.DeadOutput.DEAD_OUTPUT));
        assertThat(finding.silentSolenoids()).containsExactly("purge-solenoid");
        assertThat(finding.confirmations()).isNotEmpty().allMatch(Confirmation::outputsOn);
        // Off as on it stands at battery voltage; a sound output pulls it to ground.
        assertThat(reading(finding, "volts-connected").reading()).isBetween(12.0, 12.6);
        assertThat(reading(finding, "volts-connected").soundReading()).isLessThan(0.5);
    }

    @Test
    void a_corroded_solenoid_has_no_code_and_is_silent() {
        Finding finding =
                only(Workshop.sound().fault("purge-solenoid", new Fault.HighResistance(Place.SUPPLY_WIRE, 90)));
        assertThat(finding.codes()).isEmpty();
        assertThat(finding.silentSolenoids()).containsExactly("purge-solenoid");
        assertThat(reading(finding, "supply-wire-ohms").reading()).isBetween(90.0, 90.5);
    }

    @Test
    void weak_cylinders_are_named_with_their_number() {
        assertThat(expected(Workshop.sound().weak(3, 0.4)).weakCylinders())
                .extracting(Debrief.WeakCylinder::number)
                .containsExactly(3);
    }
}
