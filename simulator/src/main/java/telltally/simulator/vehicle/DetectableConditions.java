package telltally.simulator.vehicle;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.vehicle.DetectableCondition.Check;
import telltally.simulator.vehicle.DetectableCondition.Output;
import telltally.simulator.vehicle.SwitchCircuit.Contact;
import telltally.simulator.vehicle.SwitchCircuit.Feed;
import telltally.simulator.vehicle.ThermistorCircuit.Medium;
import telltally.simulator.vehicle.VoltageWindow.Comparison;

/**
 * The conditions that a controller can detect in a vehicle's circuits, named after the circuits: NAME-voltage-low,
 * NAME-voltage-high, NAME-not-warm, NAME-outside-test-range, NAME-not-closed, NAME-stays-low, NAME-stays-high, NAME-on,
 * and drive-engaged. Limits without a source beside them are common practice, no source.
 */
public final class DetectableConditions {
    private static final List<Phase> ALWAYS = List.of(Phase.ENGINE_OFF, Phase.ENGINE_RUNNING);
    private static final List<Phase> RUNNING = List.of(Phase.ENGINE_RUNNING);

    /** What a sound sensor never reaches. */
    private static final VoltageWindow SENSOR = new VoltageWindow(0.1, 4.9);

    private static final VoltageWindow THROTTLE = new VoltageWindow(0.3, 4.8);
    private static final VoltageWindow THROTTLE_CLOSED = new VoltageWindow(0.3, 1.2);

    private static final double WARM_FROM_CELSIUS = 70;
    private static final double WARM_TO_CELSIUS = 120;
    private static final double AIR_FROM_CELSIUS = 0;
    private static final double AIR_TO_CELSIUS = 80;

    /** ISO 16750-2:2010 table 1, code C: 9 to 16 V. */
    private static final VoltageWindow SUPPLY = new VoltageWindow(9, 16);

    /** Between a contact that is closed and one that is open, with a weak battery too. */
    private static final VoltageWindow CONTACT = new VoltageWindow(4, 4);

    private static final VoltageWindow OUTPUT_OFF = new VoltageWindow(4, 16);
    private static final VoltageWindow OUTPUT_ON = new VoltageWindow(0, 2);

    private DetectableConditions() {}

    /** In the order of the vehicle's circuits; no name comes twice. */
    public static List<DetectableCondition> of(Vehicle vehicle) {
        List<DetectableCondition> all = new ArrayList<>();
        vehicle.circuits().forEach(circuit -> all.addAll(ofCircuit(circuit)));
        List<Check> engaged = vehicle.circuits().stream()
                .filter(DetectableConditions::tellsEngagement)
                .map(circuit -> contact((SwitchCircuit) circuit, false))
                .toList();
        if (!engaged.isEmpty()) {
            all.add(new DetectableCondition("drive-engaged", RUNNING, engaged));
        }
        return List.copyOf(all);
    }

    /** Names of those that the controller sees now. */
    public static List<String> present(Harness harness, Phase phase) {
        return of(harness.vehicle()).stream()
                .filter(condition -> condition.phases().contains(phase) && condition.holds(harness))
                .map(DetectableCondition::name)
                .toList();
    }

    private static List<DetectableCondition> ofCircuit(Circuit circuit) {
        if (circuit instanceof ThermistorCircuit sensor) {
            return ofThermistor(sensor);
        }
        if (circuit instanceof PotentiometerCircuit) {
            return ofThrottle(circuit.name());
        }
        if (circuit instanceof SolenoidCircuit) {
            return ofSolenoid(circuit.name());
        }
        if (circuit instanceof SupplyCircuit) {
            return lowAndHigh(circuit.name(), SUPPLY);
        }
        if (circuit instanceof SwitchCircuit contact && contact.contact() == Contact.AIR_CONDITIONING) {
            return List.of(new DetectableCondition(contact.name() + "-on", RUNNING, List.of(contact(contact, true))));
        }
        return List.of();
    }

    private static List<DetectableCondition> ofThermistor(ThermistorCircuit sensor) {
        boolean coolant = sensor.medium() == Medium.COOLANT;
        VoltageWindow expected = coolant
                ? span(sensor, WARM_FROM_CELSIUS, WARM_TO_CELSIUS)
                : span(sensor, AIR_FROM_CELSIUS, AIR_TO_CELSIUS);
        List<DetectableCondition> all = new ArrayList<>(lowAndHigh(sensor.name(), SENSOR));
        // A broken circuit has a condition of its own and is not reported as a cold engine too.
        all.add(new DetectableCondition(
                sensor.name() + (coolant ? "-not-warm" : "-outside-test-range"),
                coolant ? RUNNING : ALWAYS,
                List.of(
                        new Check(sensor.name(), Output.AS_IT_IS, Comparison.WITHIN, SENSOR),
                        new Check(sensor.name(), Output.AS_IT_IS, Comparison.OUTSIDE, expected))));
        return all;
    }

    private static VoltageWindow span(ThermistorCircuit sensor, double fromCelsius, double toCelsius) {
        return new VoltageWindow(sensor.voltsAt(toCelsius), sensor.voltsAt(fromCelsius));
    }

    private static List<DetectableCondition> ofThrottle(String name) {
        List<DetectableCondition> all = new ArrayList<>(lowAndHigh(name, THROTTLE));
        all.add(new DetectableCondition(
                name + "-not-closed",
                ALWAYS,
                List.of(
                        new Check(name, Output.AS_IT_IS, Comparison.WITHIN, THROTTLE),
                        new Check(name, Output.AS_IT_IS, Comparison.OUTSIDE, THROTTLE_CLOSED))));
        return all;
    }

    private static List<DetectableCondition> ofSolenoid(String name) {
        return List.of(
                new DetectableCondition(
                        name + "-stays-low",
                        ALWAYS,
                        List.of(new Check(name, Output.OFF, Comparison.BELOW, OUTPUT_OFF))),
                new DetectableCondition(
                        name + "-stays-high",
                        ALWAYS,
                        List.of(new Check(name, Output.ON, Comparison.ABOVE, OUTPUT_ON))));
    }

    private static List<DetectableCondition> lowAndHigh(String name, VoltageWindow window) {
        return List.of(
                new DetectableCondition(
                        name + "-voltage-low",
                        ALWAYS,
                        List.of(new Check(name, Output.AS_IT_IS, Comparison.BELOW, window))),
                new DetectableCondition(
                        name + "-voltage-high",
                        ALWAYS,
                        List.of(new Check(name, Output.AS_IT_IS, Comparison.ABOVE, window))));
    }

    private static boolean tellsEngagement(Circuit circuit) {
        return circuit instanceof SwitchCircuit contact && contact.contact() != Contact.AIR_CONDITIONING;
    }

    private static Check contact(SwitchCircuit circuit, boolean closed) {
        boolean low = closed == (circuit.feed() == Feed.GROUND);
        return new Check(circuit.name(), Output.AS_IT_IS, low ? Comparison.BELOW : Comparison.ABOVE, CONTACT);
    }
}
