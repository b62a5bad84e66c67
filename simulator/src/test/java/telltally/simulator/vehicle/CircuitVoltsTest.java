package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Volts at the controller's pins, against dividers worked out by hand. */
class CircuitVoltsTest {
    /** Wires and contacts add 0.13 ohms each way, the reference 0.5: less than 2 mV wherever a kilohm is in the way. */
    private static final double SOUND_WIRES_VOLTS = 0.002;

    private final Vehicle vehicle = UsualVehicle.of(8, Transmission.MANUAL);
    private final Conditions warm = Conditions.warm();

    private static double volts(Vehicle vehicle, Conditions conditions, String circuit) {
        return Harness.of(vehicle, conditions).pinVolts(circuit);
    }

    @Nested
    class A_temperature_sensor {
        /** Resistances of the published 10 kilohm curve, pulled up to 5 V through 10 kilohms. */
        @ParameterizedTest
        @CsvSource({"-40, 336103.2", "-20, 97006.9", "0, 32650.9", "25, 10000", "50, 3601.10", "100, 678.42"})
        void divides_the_reference_with_its_pull_up(double celsius, double ohms) {
            double expected = 5 * ohms / (ohms + 10_000);

            assertThat(volts(vehicle, warm.withCoolantCelsius(celsius), "coolant"))
                    .isCloseTo(expected, within(SOUND_WIRES_VOLTS));
        }

        @ParameterizedTest
        @EnumSource(names = {"PART", "SIGNAL_WIRE", "RETURN_WIRE"})
        void reads_the_whole_reference_when_open_anywhere(Place place) {
            assertThat(volts(vehicle.with("coolant", new Fault.Open(place)), warm, "coolant"))
                    .isCloseTo(5, within(SOUND_WIRES_VOLTS));
        }

        @ParameterizedTest
        @EnumSource(names = {"PART", "SIGNAL_WIRE"})
        void reads_next_to_nothing_when_shorted_to_ground(Place place) {
            assertThat(volts(vehicle.with("coolant", new Fault.ShortToGround(place)), warm, "coolant"))
                    .isBetween(0.0, 0.001);
        }

        @Test
        void reads_no_more_than_its_reference_when_shorted_to_the_battery() {
            assertThat(volts(vehicle.with("coolant", new Fault.ShortToSupply(Place.SIGNAL_WIRE)), warm, "coolant"))
                    .isEqualTo(5);
        }

        @ParameterizedTest
        @EnumSource(names = {"PART", "SIGNAL_WIRE", "RETURN_WIRE"})
        void looks_colder_for_resistance_in_its_way(Place place) {
            Vehicle corroded = vehicle.with("coolant", new Fault.HighResistance(place, 2_500));

            assertThat(volts(corroded, warm.withCoolantCelsius(25), "coolant"))
                    .isCloseTo(5 * 12_500.0 / 22_500, within(SOUND_WIRES_VOLTS));
        }

        @Test
        void that_has_drifted_reads_another_temperature() {
            Vehicle drifted = vehicle.with("air", new Fault.DriftedByKelvin(-25));

            assertThat(volts(drifted, warm.withAirCelsius(25), "air"))
                    .isCloseTo(5 * 32_650.9 / 42_650.9, within(SOUND_WIRES_VOLTS));
        }

        @Test
        void is_read_back_as_the_temperature_it_has() {
            ThermistorCircuit coolant = (ThermistorCircuit) vehicle.circuit("coolant");

            // 1 mV is 0.1 K at 90 degrees.
            assertThat(coolant.celsiusAt(volts(vehicle, warm, "coolant"))).isCloseTo(90, within(0.1));
            assertThat(coolant.celsiusAt(coolant.voltsAt(-12.5))).isCloseTo(-12.5, within(1e-9));
        }
    }

    @Nested
    class A_throttle_sensor {
        @ParameterizedTest
        @CsvSource({"0, 0.18", "0.5, 0.55", "1, 0.92"})
        void reads_its_share_of_the_reference(double throttleShare, double trackShare) {
            // The pull-down of 220 kilohms loads the track of 4 kilohms: at half of it by R(1 - x)x/220k, 0.5 percent.
            double loaded = 1 / (1 + 4_000 * trackShare * (1 - trackShare) / 220_000);

            assertThat(volts(vehicle, warm.withThrottleShare(throttleShare), "throttle"))
                    .isCloseTo(5 * trackShare * loaded, within(SOUND_WIRES_VOLTS));
        }

        @ParameterizedTest
        @EnumSource(names = {"PART", "SIGNAL_WIRE", "REFERENCE_WIRE"})
        void reads_nothing_when_signal_or_reference_is_open(Place place) {
            assertThat(volts(vehicle.with("throttle", new Fault.Open(place)), warm, "throttle"))
                    .isCloseTo(0, within(1e-9));
        }

        @Test
        void reads_nearly_the_reference_when_its_return_is_open() {
            Vehicle open = vehicle.with("throttle", new Fault.Open(Place.RETURN_WIRE));

            assertThat(volts(open, warm, "throttle"))
                    .isCloseTo(5 * 220_000.0 / (220_000 + 0.82 * 4_000), within(SOUND_WIRES_VOLTS));
        }

        @Test
        void that_has_drifted_reads_further_along() {
            Vehicle drifted = vehicle.with("throttle", new Fault.DriftedByShare(0.1));

            assertThat(volts(drifted, warm, "throttle")).isCloseTo(5 * 0.28, within(0.01));
        }
    }

    @Nested
    class A_switch {
        @Test
        void to_ground_pulls_its_pin_down_when_closed() {
            assertThat(volts(vehicle, warm, "neutral-switch")).isBetween(0.0, 0.01);
            assertThat(volts(vehicle, warm.withGear(Gear.ENGAGED), "neutral-switch"))
                    .isBetween(12.0, 12.6);
            assertThat(volts(vehicle, warm.withClutchDown(true), "clutch-switch"))
                    .isBetween(0.0, 0.01);
        }

        @Test
        void to_the_battery_lifts_its_pin_when_closed() {
            assertThat(volts(vehicle, warm, "air-conditioning")).isZero();
            assertThat(volts(vehicle, warm.withAirConditioningOn(true), "air-conditioning"))
                    .isBetween(12.4, 12.6);
        }

        @Test
        void that_is_stuck_or_unconnected_follows_nothing() {
            Vehicle open = vehicle.with("neutral-switch", new Fault.Open(Place.SIGNAL_WIRE));
            Vehicle stuckOpen = vehicle.with("neutral-switch", Fault.Stuck.OPEN);
            Vehicle stuckClosed = vehicle.with("neutral-switch", Fault.Stuck.CLOSED);

            assertThat(volts(open, warm, "neutral-switch")).isGreaterThan(12);
            assertThat(volts(stuckOpen, warm, "neutral-switch")).isGreaterThan(12);
            assertThat(volts(stuckClosed, warm.withGear(Gear.ENGAGED), "neutral-switch"))
                    .isLessThan(0.01);
        }
    }

    @Nested
    class A_solenoid {
        private static final String NAME = "idle-air-solenoid";

        private static Harness harness(Vehicle vehicle, boolean on) {
            return Harness.of(vehicle, Conditions.warm()).switched(NAME, on);
        }

        @Test
        void stands_at_the_battery_when_off_and_near_ground_when_on() {
            assertThat(harness(vehicle, false).pinVolts(NAME)).isBetween(12.5, 12.6);
            // 12.6 V over 10 ohms of coil, 0.3 of driver and less than 0.3 of wiring and battery.
            assertThat(harness(vehicle, true).pinVolts(NAME)).isCloseTo(12.6 * 0.3 / 10.6, within(0.01));
        }

        @Test
        void clicks_when_it_is_switched() {
            assertThat(harness(vehicle, false).pulledIn(NAME)).isFalse();
            assertThat(harness(vehicle, true).pulledIn(NAME)).isTrue();
        }

        @Test
        void with_a_dead_output_stays_at_the_battery_and_silent() {
            Harness dead = harness(vehicle.with(NAME, Fault.DeadOutput.DEAD_OUTPUT), true);

            assertThat(dead.pinVolts(NAME)).isGreaterThan(12.5);
            assertThat(dead.pulledIn(NAME)).isFalse();
        }

        @ParameterizedTest
        @EnumSource(names = {"PART", "SIGNAL_WIRE", "SUPPLY_WIRE"})
        void reads_nothing_when_open_anywhere(Place place) {
            Harness open = harness(vehicle.with(NAME, new Fault.Open(place)), false);

            assertThat(open.pinVolts(NAME)).isZero();
            assertThat(harness(open.vehicle(), true).pulledIn(NAME)).isFalse();
        }

        @Test
        void with_its_driver_wire_on_ground_is_always_on() {
            Harness shorted = harness(vehicle.with(NAME, new Fault.ShortToGround(Place.SIGNAL_WIRE)), false);

            assertThat(shorted.pinVolts(NAME)).isLessThan(0.5);
            assertThat(shorted.pulledIn(NAME)).isTrue();
        }

        @Test
        void with_a_shorted_coil_stays_high_when_switched_on() {
            Harness shorted = harness(vehicle.with(NAME, new Fault.ShortToSupply(Place.SIGNAL_WIRE)), true);

            // 0.3 ohms of driver against 0.2 of short and 0.13 of wiring: about half the battery.
            assertThat(shorted.pinVolts(NAME)).isBetween(5.0, 7.0);
            assertThat(shorted.pulledIn(NAME)).isFalse();
        }

        @Test
        void stays_silent_with_too_much_resistance_in_its_feed() {
            Vehicle corroded = vehicle.with(NAME, new Fault.HighResistance(Place.SUPPLY_WIRE, 12));

            assertThat(harness(corroded, true).pulledIn(NAME)).isFalse();
        }
    }

    @Nested
    class The_supply {
        @Test
        void arrives_at_the_controller_less_its_own_drop() {
            // 15 ohms of controller behind 0.01 of battery and twice 0.14 of wiring and joints.
            assertThat(volts(vehicle, warm, "supply")).isCloseTo(12.6 * 15 / 15.29, within(0.01));
        }

        @ParameterizedTest
        @EnumSource(names = {"SUPPLY_WIRE", "RETURN_WIRE"})
        void sinks_with_resistance_in_either_wire(Place place) {
            Vehicle corroded = vehicle.with("supply", new Fault.HighResistance(place, 10));

            assertThat(volts(corroded, warm, "supply")).isCloseTo(12.6 * 15 / 25.29, within(0.05));
        }

        @Test
        void is_gone_with_an_open_wire_and_the_controller_with_it() {
            Harness dead = Harness.of(vehicle.with("supply", new Fault.Open(Place.SUPPLY_WIRE)), warm);

            assertThat(dead.controllerAwake()).isFalse();
            assertThat(dead.allSwitched(true).pulledIn("purge-solenoid")).isFalse();
            assertThat(dead.pinVolts("coolant")).isCloseTo(0, within(1e-6));
        }
    }
}
