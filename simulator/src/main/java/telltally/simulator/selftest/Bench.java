package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/**
 * The vehicle on the bench. It can be stepped live: the same acts at the same instants give the same result as a list
 * of acts. Not for sharing between threads.
 */
public final class Bench {
    /** A condition of code lists that no circuit tells: the running test asked for the throttle in vain. */
    public static final String PROMPT_NOT_ANSWERED = "prompt-not-answered";

    private static final double SHORTEST_OPENING_SECONDS = 0.3;
    private static final double LONGEST_OPENING_SECONDS = 0.9;

    /** A stretch of time in which a wiggled circuit is faulty. */
    private record Opening(String connector, long startNanos, long endNanos) {}

    private final BenchSetup setup;
    private final Chance wiggling;
    private final Controller controller;
    private final List<Opening> openings = new ArrayList<>();
    private List<CircuitFault> faults = List.of();
    private long nowNanos;

    /** @param diagnosis of the setup's vehicle; may be used again for the next bench with the same setup */
    public Bench(BenchSetup setup, Diagnosis diagnosis, Chance chance) {
        this.setup = setup;
        this.wiggling = chance.stream("bench/wiggle");
        this.controller = new Controller(setup, diagnosis, chance);
        refreshFaults();
    }

    public Bench(BenchSetup setup, Chance chance) {
        this(setup, new Diagnosis(setup.vehicle()), chance);
    }

    public long nowNanos() {
        return nowNanos;
    }

    /**
     * @throws IllegalArgumentException if that instant has passed
     */
    public void advanceTo(long nanos) {
        if (nanos < nowNanos) {
            throw new IllegalArgumentException("already at " + nowNanos + " ns, not before " + nanos);
        }
        while (nowNanos < nanos) {
            long change = nextFaultChange();
            boolean changing = change <= nanos;
            long next = Math.min(nanos, change);
            controller.advanceTo(next);
            nowNanos = next;
            if (changing) {
                refreshFaults();
            }
        }
    }

    /**
     * Goes on to the act's instant and does it.
     *
     * @throws IllegalArgumentException if that instant has passed, or the vehicle offers no such act
     */
    public void act(OperatorAct act) {
        if (!act.possibleWith(setup.vehicle().transmission())) {
            throw new IllegalArgumentException("this vehicle offers no " + act);
        }
        advanceTo(act.atNanos());
        act.applyTo(this);
        controller.advanceTo(nowNanos);
    }

    /** Whether the output was pulled low up to this instant, lamp lit. */
    public boolean lit() {
        return controller.output().lit();
    }

    /** What the lamp showed so far; dark all along where it cannot be seen. Time must have passed. */
    public PulseTrain lamp() {
        return controller.output().lamp();
    }

    /** What the self-test output did so far; level 1 is pulled low. Time must have passed. */
    public PulseTrain pin() {
        return controller.output().wire();
    }

    /** Crankshaft speed in revolutions per minute, a mean for each cycle; empty where no engine ran. */
    public Optional<SampledSignal> speedRpm() {
        return controller.engineBay().speedRpm();
    }

    /** Mean speed of the last whole cycle; 0 where the engine stands. */
    public double rpmNow() {
        return controller.engineBay().rpmNow();
    }

    public List<BenchEvent> events() {
        return controller.events();
    }

    /** Every group of flashes that was sent whole, and every light that is no flash. */
    public List<SentGroup> groups() {
        return controller.output().groups();
    }

    /** The codes that were sent whole, each once per segment. */
    public Map<Segment, List<String>> codes() {
        return controller.output().codes();
    }

    /** The codes that came of how the tests were run and not of a fault of a circuit, by segment. */
    public Map<Segment, List<String>> codesFromConditions() {
        return controller.fromConditions();
    }

    /** What the controller remembers this instant. */
    public List<String> storedCodes() {
        return controller.storedCodes();
    }

    public boolean engineRuns() {
        return controller.engineBay().running();
    }

    // What acts do.

    void jumper(boolean in) {
        controller.jumper(in);
    }

    void key(boolean on) {
        controller.key(on);
    }

    void crank() {
        controller.crank();
    }

    void throttle(double share) {
        controller.conditions(controller.senses().conditions().withThrottleShare(share));
    }

    void clutch(boolean down) {
        controller.conditions(controller.senses().conditions().withClutchDown(down));
    }

    void shift(Gear gear) {
        controller.conditions(controller.senses().conditions().withGear(gear));
    }

    void airConditioning(boolean on) {
        controller.conditions(controller.senses().conditions().withAirConditioningOn(on));
    }

    void batteryOff() {
        controller.batteryOff();
    }

    /** A loose contact does not open for as long as it is moved, but by fits and starts. */
    void wiggle(String connector, long lengthNanos) {
        long at = nowNanos;
        long end = nowNanos + lengthNanos;
        while (true) {
            long start = at + Math.round(wiggling.between(0.2, 0.8) * 1e9);
            long stop = start + Math.round(wiggling.between(SHORTEST_OPENING_SECONDS, LONGEST_OPENING_SECONDS) * 1e9);
            if (stop > end) {
                return;
            }
            openings.add(new Opening(connector, start, stop));
            at = stop;
        }
    }

    private void refreshFaults() {
        List<CircuitFault> now = faultsAt(nowNanos);
        if (!now.equals(faults)) {
            faults = now;
            controller.faults(now);
        }
    }

    private List<CircuitFault> faultsAt(long nanos) {
        List<CircuitFault> active = new ArrayList<>();
        for (FaultCase each : setup.faults()) {
            boolean now = each.presence() instanceof Presence.Wiggled wiggled
                    ? openAt(wiggled.connector(), nanos)
                    : each.presence().activeAt(nanos);
            if (now) {
                active.add(each.circuitFault());
            }
        }
        return active;
    }

    private boolean openAt(String connector, long nanos) {
        return openings.stream()
                .anyMatch(opening -> opening.connector().equals(connector)
                        && opening.startNanos() <= nanos
                        && nanos < opening.endNanos());
    }

    private long nextFaultChange() {
        long next = Long.MAX_VALUE;
        for (FaultCase each : setup.faults()) {
            if (each.presence() instanceof Presence.Recurring recurring) {
                next = Math.min(next, recurring.changeAfter(nowNanos));
            }
        }
        for (Opening opening : openings) {
            if (opening.startNanos() > nowNanos) {
                next = Math.min(next, opening.startNanos());
            }
            if (opening.endNanos() > nowNanos) {
                next = Math.min(next, opening.endNanos());
            }
        }
        return next;
    }
}
