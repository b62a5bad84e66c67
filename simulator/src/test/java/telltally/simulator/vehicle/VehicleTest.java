package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VehicleTest {
    private final Vehicle vehicle = UsualVehicle.of(4, Transmission.MANUAL);

    /** 720 degrees over the number of cylinders: T. Denton's automobile textbook, p. 123, for four and six. */
    @ParameterizedTest
    @CsvSource({"4, 180", "6, 120", "8, 90"})
    void firings_come_at_even_intervals(int count, double degrees) {
        assertThat(Cylinders.sound(count).firingIntervalDegrees()).isEqualTo(degrees);
        assertThat(StrictMath.toDegrees(Cylinders.sound(count).firingIntervalRadians()))
                .isCloseTo(degrees, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 8, 10, 12})
    void two_to_twelve_cylinders_fire_each_once(int count) {
        assertThat(Cylinders.sound(count).firingOrder()).hasSize(count).doesNotHaveDuplicates();
    }

    @Test
    void a_firing_order_that_is_no_permutation_is_refused() {
        assertThatThrownBy(() -> Cylinders.soundInOrder(1, 3, 3, 2)).hasMessageContaining("[1, 3, 3, 2]");
        assertThatThrownBy(() -> Cylinders.soundInOrder(0, 1, 2, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Cylinders.sound(1)).hasMessageContaining("2 to 12");
        assertThatThrownBy(() -> Cylinders.sound(13)).hasMessageContaining("2 to 12");
    }

    @Test
    void a_weak_cylinder_has_a_cause() {
        assertThatThrownBy(() -> new Cylinder(0.5, Cylinder.Weakness.NONE)).hasMessageContaining("0.5");
        assertThatThrownBy(() -> new Cylinder(1, Cylinder.Weakness.SPARK)).hasMessageContaining("SPARK");
        assertThat(vehicle.cylinders()
                        .with(3, new Cylinder(0.4, Cylinder.Weakness.FUEL))
                        .strength(3))
                .isEqualTo(0.4);
    }

    @Test
    void a_circuit_refuses_a_fault_it_cannot_have() {
        assertThatThrownBy(() -> vehicle.with("coolant", Fault.Stuck.OPEN)).hasMessageContaining("coolant");
        assertThatThrownBy(() -> vehicle.with("coolant", new Fault.Open(Place.REFERENCE_WIRE)))
                .hasMessageContaining("REFERENCE_WIRE");
        assertThatThrownBy(() -> vehicle.with("throttle", new Fault.DriftedByKelvin(5)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> vehicle.with("supply", new Fault.ShortToGround(Place.SUPPLY_WIRE)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> vehicle.with("oil", new Fault.Open(Place.PART)))
                .hasMessageContaining("coolant");
    }

    @Test
    void a_vehicle_needs_one_supply_and_distinct_names() {
        List<Circuit> twice = List.of(vehicle.circuit("supply"), vehicle.circuit("supply"));
        List<Circuit> none = List.of(vehicle.circuit("coolant"));

        assertThatThrownBy(() -> withCircuits(twice)).hasMessageContaining("supply");
        assertThatThrownBy(() -> withCircuits(none)).hasMessageContaining("one supply");
    }

    private Vehicle withCircuits(List<Circuit> circuits) {
        return new Vehicle(vehicle.cylinders(), vehicle.engine(), vehicle.transmission(), circuits, List.of());
    }

    @Test
    void gear_and_air_conditioning_load_the_engine() {
        Vehicle automatic = UsualVehicle.of(4, Transmission.AUTOMATIC);
        Conditions warm = Conditions.warm();

        assertThat(automatic.loadNewtonMetres(warm)).isZero();
        assertThat(automatic.loadNewtonMetres(warm.withGear(Gear.ENGAGED))).isEqualTo(20);
        assertThat(vehicle.loadNewtonMetres(warm.withAirConditioningOn(true))).isEqualTo(8);
    }
}
