package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import telltally.simulator.vehicle.VoltageWindow.Comparison;

class DetectableConditionsTest {
    private final Vehicle manual = UsualVehicle.of(8, Transmission.MANUAL);
    private final Conditions warm = Conditions.warm();

    private static List<String> running(Vehicle vehicle, Conditions conditions) {
        return DetectableConditions.present(Harness.of(vehicle, conditions), Phase.ENGINE_RUNNING);
    }

    @ParameterizedTest
    @EnumSource
    void a_sound_vehicle_in_the_right_conditions_shows_nothing(Transmission transmission) {
        Harness harness = Harness.of(UsualVehicle.of(8, transmission), warm);

        assertThat(DetectableConditions.present(harness, Phase.ENGINE_OFF)).isEmpty();
        assertThat(DetectableConditions.present(harness, Phase.ENGINE_RUNNING)).isEmpty();
    }

    @Test
    void every_name_comes_once() {
        assertThat(DetectableConditions.of(manual))
                .extracting(DetectableCondition::name)
                .doesNotHaveDuplicates();
    }

    /** Common practice, no source: a cold engine, a gear, the air conditioning each set a code of their own. */
    @Nested
    class In_the_wrong_conditions {
        @Test
        void a_cold_engine_is_told_when_it_runs_and_not_before() {
            Conditions cold = warm.withCoolantCelsius(15);

            assertThat(running(manual, cold)).isEqualTo(List.of("coolant-not-warm"));
            assertThat(DetectableConditions.present(Harness.of(manual, cold), Phase.ENGINE_OFF))
                    .isEmpty();
        }

        @Test
        void a_gear_is_told_unless_the_clutch_is_down() {
            Conditions engaged = warm.withGear(Gear.ENGAGED);

            assertThat(running(manual, engaged)).isEqualTo(List.of("drive-engaged"));
            assertThat(running(manual, engaged.withClutchDown(true))).isEmpty();
            assertThat(running(UsualVehicle.of(8, Transmission.AUTOMATIC), warm.withGear(Gear.PARK)))
                    .isEmpty();
        }

        @Test
        void the_air_conditioning_is_told() {
            assertThat(running(manual, warm.withAirConditioningOn(true))).isEqualTo(List.of("air-conditioning-on"));
        }

        @Test
        void an_open_throttle_and_cold_air_are_told() {
            assertThat(running(manual, warm.withThrottleShare(0.3))).isEqualTo(List.of("throttle-not-closed"));
            assertThat(running(manual, warm.withAirCelsius(-15))).isEqualTo(List.of("air-outside-test-range"));
        }
    }

    @Nested
    class With_a_fault {
        private List<String> with(String circuit, Fault fault) {
            return running(manual.with(circuit, fault), warm);
        }

        @Test
        void a_sensor_is_too_high_or_too_low_and_nothing_else() {
            assertThat(with("coolant", new Fault.Open(Place.SIGNAL_WIRE))).isEqualTo(List.of("coolant-voltage-high"));
            assertThat(with("coolant", new Fault.ShortToGround(Place.PART))).isEqualTo(List.of("coolant-voltage-low"));
            assertThat(with("throttle", new Fault.Open(Place.PART))).isEqualTo(List.of("throttle-voltage-low"));
            assertThat(with("throttle", new Fault.ShortToSupply(Place.SIGNAL_WIRE)))
                    .isEqualTo(List.of("throttle-voltage-high"));
        }

        @Test
        void a_drifted_coolant_sensor_looks_like_a_cold_engine() {
            assertThat(with("coolant", new Fault.DriftedByKelvin(-50))).isEqualTo(List.of("coolant-not-warm"));
        }

        @Test
        void an_unconnected_neutral_switch_looks_like_a_gear() {
            assertThat(with("neutral-switch", new Fault.Open(Place.SIGNAL_WIRE)))
                    .isEqualTo(List.of("drive-engaged"));
        }

        @Test
        void a_solenoid_is_told_by_its_feedback() {
            assertThat(with("purge-solenoid", new Fault.Open(Place.PART)))
                    .isEqualTo(List.of("purge-solenoid-stays-low"));
            assertThat(with("purge-solenoid", Fault.DeadOutput.DEAD_OUTPUT))
                    .isEqualTo(List.of("purge-solenoid-stays-high"));
            assertThat(with("idle-air-solenoid", new Fault.ShortToSupply(Place.PART)))
                    .isEqualTo(List.of("idle-air-solenoid-stays-high"));
        }

        @Test
        void a_supply_that_sags_is_told() {
            assertThat(with("supply", new Fault.HighResistance(Place.RETURN_WIRE, 7)))
                    .isEqualTo(List.of("supply-voltage-low"));
            assertThat(running(manual, warm.withBattery(Battery.charged().withVolts(18))))
                    .isEqualTo(List.of("supply-voltage-high"));
        }
    }

    /** ISO 16750-2:2010 table 1, code C: a 12 V controller works from 9 to 16 V. */
    @Test
    void a_supply_within_the_standards_range_is_not_told() {
        for (double volts : new double[] {9.3, 12, 14, 16.2}) {
            // Two percent drop in the wires: 9.3 and 16.2 V at the battery arrive as 9.1 and 15.9.
            assertThat(running(manual, warm.withBattery(Battery.charged().withVolts(volts))))
                    .as("%s V", volts)
                    .isEmpty();
        }
    }

    @Test
    void a_window_takes_its_ends_in() {
        VoltageWindow window = new VoltageWindow(1, 2);

        assertThat(window.holds(Comparison.WITHIN, 1)).isTrue();
        assertThat(window.holds(Comparison.WITHIN, 2)).isTrue();
        assertThat(window.holds(Comparison.BELOW, 1)).isFalse();
        assertThat(window.holds(Comparison.ABOVE, 2)).isFalse();
        assertThat(window.holds(Comparison.OUTSIDE, 0.9)).isTrue();
        assertThat(window.holds(Comparison.OUTSIDE, 1.5)).isFalse();
        assertThatThrownBy(() -> new VoltageWindow(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
