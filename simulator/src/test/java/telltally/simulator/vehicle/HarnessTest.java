package telltally.simulator.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HarnessTest {
    private final Vehicle vehicle = UsualVehicle.of(6, Transmission.AUTOMATIC);
    private final Conditions warm = Conditions.warm();
    private final Harness harness = Harness.of(vehicle, warm);

    @Test
    void a_short_on_one_sensors_reference_pulls_all_sensors_down() {
        Harness shorted = Harness.of(vehicle.with("throttle", new Fault.ShortToGround(Place.REFERENCE_WIRE)), warm);

        // The reference's 0.5 ohms against 0.2 of short and 0.13 of wiring: two fifths of 5 V are left.
        assertThat(shorted.pinVolts("coolant") / harness.pinVolts("coolant")).isBetween(0.35, 0.45);
        assertThat(shorted.pinVolts("air") / harness.pinVolts("air")).isBetween(0.35, 0.45);
    }

    @Test
    void a_tired_battery_sags_when_the_solenoids_are_switched_on() {
        Harness tired = Harness.of(vehicle, warm.withBattery(new Battery(12.6, 1, false)));
        double resting = tired.meterVolts(Node.BATTERY_POSITIVE, Node.GROUND);
        double loaded = tired.allSwitched(true).meterVolts(Node.BATTERY_POSITIVE, Node.GROUND);

        // Coils of 35, 45, 60, 10 and 25 ohms and their drivers are 4.8 ohms together, more than the controller's 15.
        assertThat(resting).isBetween(11.5, 12.0);
        assertThat(loaded).isBetween(9.5, 10.2);
    }

    @Test
    void the_reference_holds_until_the_supply_is_too_low() {
        double full = harness.pinVolts("air");
        Harness nine = Harness.of(vehicle, warm.withBattery(Battery.charged().withVolts(9)));
        Harness five = Harness.of(vehicle, warm.withBattery(Battery.charged().withVolts(5)));

        assertThat(nine.pinVolts("air")).isCloseTo(full, within(1e-12));
        // 5 V less 2 percent in the wires less half a volt in the regulator.
        assertThat(five.pinVolts("air") / full).isCloseTo(4.4 / 5, within(0.01));
        assertThat(five.controllerAwake()).isFalse();
    }

    @Test
    void unplugging_opens_a_circuit() {
        assertThat(harness.unplugged("coolant-sensor").pinVolts("coolant")).isCloseTo(5, within(0.002));
        assertThat(harness.pinVolts("coolant")).isLessThan(1);
    }

    @Test
    void switching_off_undoes_switching_on() {
        Harness back = harness.switched("purge-solenoid", true).switched("purge-solenoid", false);

        assertThat(back.pinVolts("purge-solenoid")).isEqualTo(harness.pinVolts("purge-solenoid"));
        assertThat(vehicle.outputs())
                .isEqualTo(List.of(
                        "recirculation-solenoid",
                        "purge-solenoid",
                        "air-diverter-solenoid",
                        "idle-air-solenoid",
                        "lock-up-solenoid"));
    }

    @Test
    void what_does_not_exist_is_refused_by_name() {
        assertThatThrownBy(() -> harness.unplugged("oil-sensor")).hasMessageContaining("oil-sensor");
        assertThatThrownBy(() -> harness.switched("coolant", true)).hasMessageContaining("coolant");
        assertThatThrownBy(() -> harness.pinVolts("oil")).hasMessageContaining("oil");
        assertThatThrownBy(() -> harness.pulledIn("coolant")).hasMessageContaining("coolant");
        assertThatThrownBy(() -> harness.meterVolts(new Node("nowhere"), Node.GROUND))
                .hasMessageContaining("nowhere");
    }

    @Test
    void a_transmission_refuses_what_it_has_not_got() {
        Vehicle manual = UsualVehicle.of(4, Transmission.MANUAL);

        assertThatThrownBy(() -> Harness.of(vehicle, warm.withClutchDown(true)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Harness.of(manual, warm.withGear(Gear.PARK)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
