package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MeasurementTest {
    private static final Vehicle VEHICLE = UsualVehicle.of(4, Transmission.MANUAL);

    private static double reading(Vehicle vehicle, String circuit, String measurement) {
        return Measurement.confirming(vehicle.circuit(circuit)).stream()
                .filter(one -> one.name().equals(measurement))
                .findFirst()
                .orElseThrow()
                .reading(Harness.of(vehicle, Conditions.warm().withCoolantCelsius(25)));
    }

    @Test
    void a_sound_sensor_reads_its_table_value_and_an_open_connector_the_reference() {
        // 0.02 ohms of leads.
        assertThat(reading(VEHICLE, "coolant", "part-ohms")).isCloseTo(10_000, within(0.05));
        // The meter's 10 megohms hang on the pull-up of 10 kilohms; the throttle's track takes 1.25 mA through the
        // reference's 0.5 ohms.
        assertThat(reading(VEHICLE, "coolant", "signal-wire-volts-unplugged"))
                .isCloseTo(5 * 10e6 / (10e6 + 10e3), within(0.001));
        assertThat(reading(VEHICLE, "coolant", "signal-wire-ohms")).isLessThan(0.2);
        assertThat(reading(VEHICLE, "coolant", "signal-wire-to-ground-ohms")).isInfinite();
    }

    @Test
    void an_open_sensor_is_told_from_an_open_wire() {
        Vehicle openPart = VEHICLE.with("coolant", new Fault.Open(Place.PART));
        Vehicle openWire = VEHICLE.with("coolant", new Fault.Open(Place.SIGNAL_WIRE));

        assertThat(reading(openPart, "coolant", "part-ohms")).isInfinite();
        assertThat(reading(openPart, "coolant", "signal-wire-ohms")).isLessThan(0.2);
        assertThat(reading(openPart, "coolant", "volts-connected")).isGreaterThan(4.9);
        assertThat(reading(openWire, "coolant", "part-ohms")).isCloseTo(10_000, within(0.05));
        assertThat(reading(openWire, "coolant", "signal-wire-ohms")).isInfinite();
        assertThat(reading(openWire, "coolant", "volts-connected")).isCloseTo(0, within(0.001));
    }

    @Test
    void a_short_in_the_sensor_goes_with_the_connector_and_one_in_the_wire_stays() {
        Vehicle shortedPart = VEHICLE.with("coolant", new Fault.ShortToGround(Place.PART));
        Vehicle shortedWire = VEHICLE.with("coolant", new Fault.ShortToGround(Place.SIGNAL_WIRE));

        assertThat(reading(shortedPart, "coolant", "signal-wire-volts-unplugged"))
                .isGreaterThan(4.9);
        assertThat(reading(shortedPart, "coolant", "part-to-ground-ohms")).isLessThan(1);
        assertThat(reading(shortedWire, "coolant", "signal-wire-volts-unplugged"))
                .isLessThan(0.01);
        assertThat(reading(shortedWire, "coolant", "signal-wire-to-ground-ohms"))
                .isLessThan(1);
        assertThat(reading(shortedWire, "coolant", "part-to-ground-ohms")).isInfinite();
    }

    @Test
    void a_meter_shows_battery_volts_where_the_controller_sees_no_more_than_its_reference() {
        Vehicle shorted = VEHICLE.with("coolant", new Fault.ShortToSupply(Place.SIGNAL_WIRE));

        assertThat(reading(shorted, "coolant", "volts-connected")).isBetween(12.5, 12.6);
    }

    @Test
    void resistance_in_a_wire_is_found_by_its_ohms() {
        Vehicle corroded = VEHICLE.with("throttle", new Fault.HighResistance(Place.RETURN_WIRE, 330));

        assertThat(reading(corroded, "throttle", "return-wire-ohms")).isCloseTo(330.1, within(1e-6));
    }

    static List<Vehicle.CircuitFault> every_electrical_fault() {
        List<Vehicle.CircuitFault> all = new ArrayList<>();
        for (Circuit circuit : VEHICLE.circuits()) {
            for (Place place : Place.values()) {
                List<Fault> faults = List.of(
                        new Fault.Open(place),
                        new Fault.ShortToGround(place),
                        new Fault.ShortToSupply(place),
                        new Fault.HighResistance(place, 500));
                faults.stream()
                        .filter(circuit::admits)
                        .forEach(fault -> all.add(new Vehicle.CircuitFault(circuit.name(), fault)));
            }
        }
        return all;
    }

    @Test
    void every_place_of_every_circuit_was_tried() {
        // 1 supply with 3 places and 2 kinds; 2 thermistors, 3 switches and 4 solenoids with 3 places and 4 kinds;
        // 1 potentiometer with 4 places and 4 kinds.
        assertThat(every_electrical_fault()).hasSize(3 * 2 + 9 * 3 * 4 + 4 * 4);
    }

    /** So that no lesson ends with a finding nobody could have confirmed. Switches are tried in both positions. */
    @ParameterizedTest
    @MethodSource("every_electrical_fault")
    void every_electrical_fault_is_found_by_some_measurement(Vehicle.CircuitFault told) {
        Conditions resting = Conditions.warm();
        List<Conditions> positions =
                List.of(resting, resting.withClutchDown(true).withAirConditioningOn(true));

        assertThat(Measurement.confirming(VEHICLE.circuit(told.circuit())))
                .anyMatch(one -> positions.stream().anyMatch(position -> finds(one, told, position)));
    }

    /** By more than a meter's accuracy of a percent on either reading, and its last digit. */
    private static boolean finds(Measurement measurement, Vehicle.CircuitFault told, Conditions conditions) {
        Harness faulty = Harness.of(VEHICLE.with(told.circuit(), told.fault()), conditions);
        double one = measurement.reading(faulty);
        double other = measurement.reading(faulty.sound());
        if (Double.isInfinite(one) || Double.isInfinite(other)) {
            return one != other;
        }
        return Math.abs(one - other) > 0.02 * Math.max(Math.abs(one), Math.abs(other)) + 0.01;
    }
}
