package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.format.Segment;
import telltally.simulator.vehicle.Circuit;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Harness;
import telltally.simulator.vehicle.Measurement;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.Vehicle;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** What a learner should find on this bench, and how it is confirmed before a part is replaced. All of it computed. */
public final class Debrief {
    /** A reading further off than this from that of a sound vehicle shows the fault. Common practice, no source. */
    private static final double TELLING_SHARE = 0.1;

    /** Readings this close to nothing are not compared by share. */
    private static final double NOTHING = 0.05;

    private Debrief() {}

    /** A reading that tells the faulty circuit from a sound one; infinite ohms are a meter over its range. */
    public record Confirmation(Measurement measurement, double reading, double soundReading) {}

    /**
     * A fault of a circuit.
     *
     * @param codes those that this fault alone sets, by segment, while it is there
     * @param confirmations readings that show it while it is there
     */
    public record Finding(FaultCase fault, Map<Segment, List<String>> codes, List<Confirmation> confirmations) {}

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
    }

    public static Expectation of(BenchSetup setup, Diagnosis diagnosis) {
        List<Finding> findings = new ArrayList<>();
        for (FaultCase each : setup.faults()) {
            findings.add(finding(setup, diagnosis, each));
        }
        return new Expectation(
                findings,
                weakCylinders(setup.vehicle()),
                codes(setup.codeList(), diagnosis, List.of(), setup.conditions()));
    }

    private static Finding finding(BenchSetup setup, Diagnosis diagnosis, FaultCase fault) {
        List<CircuitFault> alone = List.of(new CircuitFault(fault.circuit(), fault.fault()));
        Map<Segment, List<String>> with = codes(setup.codeList(), diagnosis, alone, setup.conditions());
        Map<Segment, List<String>> without = codes(setup.codeList(), diagnosis, List.of(), setup.conditions());
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        with.forEach((segment, list) -> {
            List<String> own = new ArrayList<>(list);
            own.removeAll(without.getOrDefault(segment, List.of()));
            if (!own.isEmpty()) {
                codes.put(segment, own);
            }
        });
        return new Finding(fault, codes, confirmations(setup, fault));
    }

    private static Map<Segment, List<String>> codes(
            CodeList codeList, Diagnosis diagnosis, List<CircuitFault> faults, Conditions conditions) {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        for (Segment segment : List.of(Segment.PRESENT, Segment.STORED, Segment.RUNNING, Segment.CODES)) {
            Phase phase = segment == Segment.RUNNING ? Phase.ENGINE_RUNNING : Phase.ENGINE_OFF;
            List<String> found = codeList.codesFor(diagnosis.conditions(faults, conditions, phase), segment);
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
            double reading = measurement.reading(faulty);
            double expected = measurement.reading(sound);
            if (differ(reading, expected)) {
                telling.add(new Confirmation(measurement, reading, expected));
            }
        }
        return telling;
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
