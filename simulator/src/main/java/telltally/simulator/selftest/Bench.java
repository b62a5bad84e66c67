package telltally.simulator.selftest;

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

    private final BenchSetup setup;
    private final FaultClock faultClock;
    private final Controller controller;
    private List<CircuitFault> faults = List.of();
    private long nowNanos;

    /** @param diagnosis of the setup's vehicle; may be used again for the next bench with the same setup */
    public Bench(BenchSetup setup, Diagnosis diagnosis, Chance chance) {
        this.setup = setup;
        this.faultClock = new FaultClock(setup.faults(), chance.stream("bench/wiggle"));
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
            long change = faultClock.nextChangeAfter(nowNanos);
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
        return controller.codes().fromConditions();
    }

    /** What the controller remembers this instant. */
    public List<String> storedCodes() {
        return controller.codes().stored();
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

    void wiggle(String connector, long lengthNanos) {
        faultClock.wiggle(connector, nowNanos, lengthNanos);
    }

    private void refreshFaults() {
        List<CircuitFault> now = faultClock.at(nowNanos);
        if (!now.equals(faults)) {
            faults = now;
            controller.faults(now);
        }
    }
}
