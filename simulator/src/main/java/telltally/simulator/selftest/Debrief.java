package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.format.Segment;
import telltally.simulator.vehicle.Circuit;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Harness;
import telltally.simulator.vehicle.Measurement;
import telltally.simulator.vehicle.Measurement.Quantity;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.SolenoidCircuit;
import telltally.simulator.vehicle.Vehicle;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** What a learner should find on this bench, and how it is confirmed before a part is replaced. All of it computed. */
public final class Debrief {
    /** A reading further off than this from that of a sound vehicle shows the fault. Common practice, no source. */
    private static final double TELLING_SHARE = 0.1;

    /** Readings this close to nothing are not compared by share. */
    private static final double NOTHING = 0.05;

    private Debrief() {}

    /**
     * A reading that tells the faulty circuit from a sound one; infinite ohms are a meter over its range.
     *
     * @param outputsOn whether it is taken while the output check has the outputs switched on
     */
    public record Confirmation(Measurement measurement, boolean outputsOn, double reading, double soundReading) {}

    /**
     * A fault of a circuit.
     *
     * @param codes those that this fault alone sets, by segment, while it is there
     * @param silentSolenoids outputs that do not move for it in the output check
     * @param confirmations readings that show it while it is there
     */
    public record Finding(
            FaultCase fault,
            Map<Segment, List<String>> codes,
            List<String> silentSolenoids,
            List<Confirmation> confirmations) {}

    /** A cylinder that does too little; a balance test names it, never the reason. */
    public record WeakCylinder(int number, Cylinder cylinder) {}

    /**
     * @param fromConditions codes that come of how the test was run and not of a fault, by segment
     */
    public record Expectation(
            List<Finding> findings, List<WeakCylinder> weakCylinders, Map<Segment, List<String>> fromConditions) {
        public Expectation {
            findings = List.copyOf(findings);
            weakCylinders = List.copyOf(weakCylinders);
        }

        /** The same faults, with the codes that really came of how the tests were run. */
        public Expectation withFromConditions(Map<Segment, List<String>> codes) {
            return new Expectation(findings, weakCylinders, codes);
        }
    }

    /** With the conditions as they are at the start; {@link Bench#codesFromConditions} knows what came of later acts. */
    public static Expectation of(BenchSetup setup, Diagnosis diagnosis) {
        List<Finding> findings = setup.faults().stream()
                .map(each -> finding(setup, diagnosis, each))
                .toList();
        return new Expectation(findings, weakCylinders(setup.vehicle()), codes(setup, diagnosis, List.of()));
    }

    private static Finding finding(BenchSetup setup, Diagnosis diagnosis, FaultCase fault) {
        List<CircuitFault> alone = List.of(fault.circuitFault());
        Map<Segment, List<String>> codes = codes(setup, diagnosis, alone);
        codes(setup, diagnosis, List.of())
                .forEach((segment, anyway) -> codes.computeIfPresent(
                        segment, (same, all) -> all.equals(anyway) ? null : without(all, anyway)));
        List<String> silent = without(
                diagnosis.movingSolenoids(List.of(), setup.conditions()),
                diagnosis.movingSolenoids(alone, setup.conditions()));
        return new Finding(fault, codes, silent, confirmations(setup, fault));
    }

    private static List<String> without(List<String> all, List<String> some) {
        return all.stream().filter(each -> !some.contains(each)).toList();
    }

    private static Map<Segment, List<String>> codes(BenchSetup setup, Diagnosis diagnosis, List<CircuitFault> faults) {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        for (Segment segment : setup.format().segments()) {
            Phase phase = segment == Segment.RUNNING ? Phase.ENGINE_RUNNING : Phase.ENGINE_OFF;
            List<String> found =
                    setup.codeList().codesFor(diagnosis.conditions(faults, setup.conditions(), phase), segment);
            if (!found.isEmpty()) {
                codes.put(segment, found);
            }
        }
        return codes;
    }

    private static List<Confirmation> confirmations(BenchSetup setup, FaultCase fault) {
        Circuit circuit = setup.vehicle().circuit(fault.circuit());
        Harness faulty = Harness.of(setup.vehicle().with(fault.circuit(), fault.fault()), setup.conditions());
        Harness sound = Harness.of(setup.vehicle(), setup.conditions());
        List<Confirmation> telling = new ArrayList<>();
        for (Measurement measurement : Measurement.confirming(circuit)) {
            confirmation(measurement, false, faulty, sound).ifPresent(telling::add);
            if (circuit instanceof SolenoidCircuit && measurement.quantity() == Quantity.VOLTS) {
                confirmation(measurement, true, faulty.allSwitched(true), sound.allSwitched(true))
                        .ifPresent(telling::add);
            }
        }
        return telling;
    }

    private static Optional<Confirmation> confirmation(
            Measurement measurement, boolean outputsOn, Harness faulty, Harness sound) {
        double reading = measurement.reading(faulty);
        double expected = measurement.reading(sound);
        return differ(reading, expected)
                ? Optional.of(new Confirmation(measurement, outputsOn, reading, expected))
                : Optional.empty();
    }

    private static boolean differ(double reading, double expected) {
        if (Double.isInfinite(reading) || Double.isInfinite(expected)) {
            return reading != expected;
        }
        return Math.abs(reading - expected) > NOTHING + TELLING_SHARE * Math.abs(expected);
    }

    private static List<WeakCylinder> weakCylinders(Vehicle vehicle) {
        List<WeakCylinder> weak = new ArrayList<>();
        List<Cylinder> cylinders = vehicle.cylinders().byNumber();
        for (int i = 0; i < cylinders.size(); i++) {
            if (cylinders.get(i).weakness() != Weakness.NONE) {
                weak.add(new WeakCylinder(i + 1, cylinders.get(i)));
            }
        }
        return weak;
    }
}
