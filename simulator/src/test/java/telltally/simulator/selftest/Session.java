package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import telltally.simulator.chance.Chance;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinder;
import telltally.simulator.vehicle.Cylinder.Weakness;
import telltally.simulator.vehicle.Fault;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Place;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;
import telltally.simulator.vehicle.Vehicle;

/** Any vehicle with any faults in any format, and anything that somebody may do to it, in any order. */
record Session(BenchSetup setup, List<OperatorAct> acts, long seed) {
    /** What is done and how long after the act before, as it is drawn; the instant comes of adding up. */
    private record Step(double afterSeconds, int what) {}

    /** How a session begins in good order, so that the disorder after it meets every stage. */
    private record Opening(double untilSeconds, List<OperatorAct> acts) {
        static Arbitrary<Opening> any() {
            List<OperatorAct> keyOn = List.of(new OperatorAct.JumperIn(1), new OperatorAct.KeyOn(2));
            List<OperatorAct> started = List.of(new OperatorAct.JumperIn(1), new OperatorAct.Crank(2));
            List<OperatorAct> balancing = new ArrayList<>(started);
            balancing.add(new OperatorAct.Throttle(Workshop.nanos(57), 0.3));
            balancing.add(new OperatorAct.Throttle(Workshop.nanos(58), 0));
            balancing.add(new OperatorAct.Throttle(Workshop.nanos(155), 0.5));
            balancing.add(new OperatorAct.Throttle(Workshop.nanos(156), 0));
            return Arbitraries.of(
                    new Opening(1, List.of()),
                    new Opening(20, keyOn),
                    new Opening(90, keyOn),
                    new Opening(57, started),
                    new Opening(160, balancing));
        }
    }

    static Arbitrary<Session> any() {
        Arbitrary<Integer> cylinders = Arbitraries.of(2, 2, 4, 10);
        Arbitrary<Transmission> transmission = Arbitraries.of(Transmission.class);
        Arbitrary<String> format = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(4, Arbitraries.just("pair-even")),
                net.jqwik.api.Tuple.of(
                        3, Arbitraries.of("pair-loop", "long-short", "pair-thrice", "quad-lead", "triple-even")));
        Arbitrary<List<FaultCase>> faults = fault().list().ofMaxSize(2);
        Arbitrary<List<Step>> steps = step().list().ofMinSize(1).ofMaxSize(12);
        return Combinators.combine(
                        cylinders,
                        transmission,
                        format,
                        faults,
                        steps,
                        Arbitraries.longs(),
                        batteryVolts(),
                        Opening.any())
                .as(Session::of);
    }

    private static Arbitrary<Double> batteryVolts() {
        return Arbitraries.of(12.6, 12.6, 12.6, 12.6, 12.6, 12.6, 12.6, 8.5, 5.0);
    }

    private static Arbitrary<Step> step() {
        // Short waits fall into the middle of something, long ones let it end.
        Arbitrary<Double> after = Arbitraries.of(0.0, 0.3, 1.0, 2.0, 3.7, 8.0, 20.0, 60.0, 120.0, 200.0);
        return Combinators.combine(after, Arbitraries.integers().between(0, 21)).as(Step::new);
    }

    private static Arbitrary<FaultCase> fault() {
        Arbitrary<Presence> presence = Arbitraries.of(
                new Presence.Hard(),
                new Presence.Remembered(),
                new Presence.Wiggled("coolant-sensor", false),
                new Presence.Recurring(Workshop.nanos(17), Workshop.nanos(2.3), true),
                new Presence.Recurring(Workshop.nanos(90), Workshop.nanos(40), false));
        Arbitrary<FaultCase> electrical = Combinators.combine(
                        Arbitraries.of("coolant", "air", "throttle", "purge-solenoid", "supply", "neutral-switch"),
                        presence)
                .as((circuit, when) -> new FaultCase(circuit, faultOf(circuit), when));
        return electrical;
    }

    private static Fault faultOf(String circuit) {
        return switch (circuit) {
            case "supply" -> new Fault.Open(Place.SUPPLY_WIRE);
            case "air" -> new Fault.ShortToGround(Place.SIGNAL_WIRE);
            case "throttle" -> new Fault.ShortToSupply(Place.SIGNAL_WIRE);
            default -> new Fault.Open(Place.SIGNAL_WIRE);
        };
    }

    private static Session of(
            int cylinders,
            Transmission transmission,
            String format,
            List<FaultCase> faults,
            List<Step> steps,
            long seed,
            double volts,
            Opening opening) {
        Vehicle sound = UsualVehicle.of(cylinders, transmission);
        Vehicle vehicle =
                seed % 3 == 0 ? sound.with(sound.cylinders().with(1, new Cylinder(0, Weakness.SPARK))) : sound;
        String list = format.equals("quad-lead") ? "ladder" : format.equals("triple-even") ? "trestle" : "plank";
        BenchSetup setup = new BenchSetup(
                vehicle,
                Conditions.warm().withBattery(Battery.charged().withVolts(volts)),
                faults,
                seed % 5 != 0,
                Workshop.formatCalled(format),
                Workshop.LISTS.find(list).orElseThrow(),
                seed % 2 != 0);
        List<OperatorAct> acts = new ArrayList<>(opening.acts);
        long at = Workshop.nanos(opening.untilSeconds);
        for (Step step : steps) {
            at += Workshop.nanos(step.afterSeconds());
            OperatorAct act = act(step.what(), at);
            if (act.possibleWith(transmission)) {
                acts.add(act);
            }
        }
        acts.add(new OperatorAct.Wait(at + Workshop.nanos(100)));
        return new Session(setup, acts, seed);
    }

    /** Jumper, key and starter more often than the rest, or most sessions would never come to a test. */
    private static OperatorAct act(int what, long at) {
        return switch (what) {
            case 0, 1, 2 -> new OperatorAct.JumperIn(at);
            case 3 -> new OperatorAct.JumperOut(at);
            case 4, 5 -> new OperatorAct.KeyOn(at);
            case 6 -> new OperatorAct.KeyOff(at);
            case 7, 8 -> new OperatorAct.Crank(at);
            case 9, 10 -> new OperatorAct.Throttle(at, 0.5);
            case 11 -> new OperatorAct.Throttle(at, 1);
            case 12, 13 -> new OperatorAct.Throttle(at, 0);
            case 14 -> new OperatorAct.Clutch(at, true);
            case 15 -> new OperatorAct.Clutch(at, false);
            case 16 -> new OperatorAct.Shift(at, Gear.NEUTRAL);
            case 17 -> new OperatorAct.Shift(at, Gear.ENGAGED);
            case 18 -> new OperatorAct.AirConditioning(at, true);
            case 19, 20 -> new OperatorAct.Wiggle(at, "coolant-sensor", Workshop.nanos(6));
            default -> new OperatorAct.BatteryOff(at);
        };
    }

    Bench freshBench() {
        return new Bench(setup, Chance.of(seed));
    }

    Bench played() {
        Bench bench = freshBench();
        acts.forEach(bench::act);
        return bench;
    }

    @Override
    public String toString() {
        return setup.format().id() + ", " + setup.vehicle().cylinders().count() + " cylinders, "
                + setup.vehicle().transmission() + ", "
                + setup.conditions().battery().volts() + " V, "
                + setup.faults() + ", seed " + seed + ", " + acts;
    }
}
