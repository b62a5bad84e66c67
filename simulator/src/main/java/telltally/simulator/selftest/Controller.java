package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** The controller on the bench: its stage, its memory, and what it can see and switch. */
final class Controller {
    private final BenchSetup setup;
    private final Encoder encoder;
    private final OutputLine output;
    private final Senses senses;
    private final EngineBay engineBay;
    private final CodeMemory codes;
    private final List<BenchEvent> events = new ArrayList<>();

    private Stage stage = new Off(0);
    private boolean jumper;
    private long nowNanos;

    Controller(BenchSetup setup, Diagnosis diagnosis, Chance chance) {
        this.setup = setup;
        this.encoder = new Encoder(setup.format());
        this.output = new OutputLine(setup.lampVisible(), segmented() ? Segment.PRESENT : Segment.CODES);
        this.senses = new Senses(setup, diagnosis);
        this.engineBay = new EngineBay(setup.vehicle(), chance);
        this.codes = new CodeMemory(setup, diagnosis, senses);
    }

    // What stages use.

    long nowNanos() {
        return nowNanos;
    }

    BenchSetup setup() {
        return setup;
    }

    Encoder encoder() {
        return encoder;
    }

    OutputLine output() {
        return output;
    }

    Senses senses() {
        return senses;
    }

    EngineBay engineBay() {
        return engineBay;
    }

    CodeMemory codes() {
        return codes;
    }

    boolean jumper() {
        return jumper;
    }

    /** Whether the format tells present, stored and running codes apart. */
    boolean segmented() {
        return setup.format().sessions().isPresent();
    }

    void event(Kind kind, String detail) {
        events.add(new BenchEvent(nowNanos, kind, detail));
    }

    void enter(Stage next) {
        stage = next;
    }

    /** The test is over before its end; the engine, if it runs, goes on idling. */
    void returnToIdle() {
        if (engineBay.running()) {
            engineBay.dropBalance();
            enter(new Idling(nowNanos));
        } else {
            enter(new Waiting(nowNanos));
        }
    }

    void eraseByInterruption() {
        codes.eraseByInterruption();
        event(Kind.STORED_ERASED, "interrupted");
    }

    // What the bench asks.

    List<BenchEvent> events() {
        return List.copyOf(events);
    }

    // What happens to it.

    /** Goes on to an instant, with no fault or act changing before it. */
    void advanceTo(long nanos) {
        while (nowNanos < nanos || stage.untilNanos() <= nowNanos) {
            long next = Math.max(nowNanos, Math.min(stage.untilNanos(), engineBay.nextCheckNanos()));
            next = Math.min(nanos, next);
            if (next > nowNanos) {
                stage.paint(output, this, next);
                nowNanos = next;
            }
            if (engineBay.advanceTo(next)) {
                engineStalls();
            } else if (stage.untilNanos() <= nowNanos) {
                stage.elapsed(this);
            }
        }
    }

    private void engineStalls() {
        event(Kind.ENGINE_STALLS, "");
        stage.interrupted(this);
        engineBay.stop(nowNanos);
        enter(new Waiting(nowNanos));
    }

    void faults(List<CircuitFault> now) {
        double before = senses.throttleShare();
        senses.faults(now);
        if (stage.keyIsOn()) {
            supplyChanged();
            storeIntermittents();
            stage.circuitsChanged(this);
            throttleSeen(stage, before);
        }
    }

    void conditions(Conditions changed) {
        double before = senses.throttleShare();
        boolean pedal = senses.conditions().throttleShare() != changed.throttleShare();
        senses.conditions(changed);
        engineBay.conditions(changed);
        if (engineBay.running() && engineBay.stallsAgainstTheBrake(changed)) {
            engineStalls();
        }
        Stage was = stage;
        if (pedal) {
            was.pedal(this, changed.throttleShare());
        }
        throttleSeen(was, before);
    }

    /** A stage that has just begun does not see the movement that began it. */
    private void throttleSeen(Stage was, double before) {
        double now = senses.throttleShare();
        if (before != now && was.equals(stage)) {
            stage.throttle(this, before, now);
        }
    }

    private void supplyChanged() {
        boolean awake = senses.awake();
        if (stage instanceof NoSupply) {
            if (awake) {
                enter(BulbCheck.begin(this));
            }
        } else if (!awake) {
            event(Kind.NO_SUPPLY, "");
            stage.interrupted(this);
            engineBay.stop(nowNanos);
            enter(new NoSupply(nowNanos));
        }
    }

    /** What comes while the controller watches is remembered. */
    private void storeIntermittents() {
        if (stage instanceof NoSupply) {
            return;
        }
        Phase phase = engineBay.running() ? Phase.ENGINE_RUNNING : Phase.ENGINE_OFF;
        codes.store(senses.newConditions(phase)).forEach(code -> event(Kind.CODE_STORED, code));
    }

    void jumper(boolean in) {
        if (jumper == in) {
            return;
        }
        jumper = in;
        event(in ? Kind.JUMPER_IN : Kind.JUMPER_OUT, "");
        if (in) {
            stage.jumperIn(this);
        } else {
            stage.jumperOut(this);
        }
    }

    void key(boolean on) {
        if (on == stage.keyIsOn()) {
            return;
        }
        event(on ? Kind.KEY_ON : Kind.KEY_OFF, "");
        if (on) {
            wake();
        } else {
            stage.interrupted(this);
            engineBay.stop(nowNanos);
            enter(new Off(nowNanos));
        }
    }

    private void wake() {
        if (senses.awake()) {
            enter(BulbCheck.begin(this));
            storeIntermittents();
        } else {
            event(Kind.NO_SUPPLY, "");
            enter(new NoSupply(nowNanos));
        }
    }

    void crank() {
        key(true);
        Conditions conditions = senses.conditions();
        if (engineBay.running()) {
            event(Kind.STARTER_GRINDS, "");
        } else if (!engineBay.driveFree(conditions)) {
            event(Kind.STARTER_BLOCKED, "drive engaged");
        } else if (stage instanceof NoSupply) {
            event(Kind.DOES_NOT_START, "supply");
        } else {
            event(Kind.STARTER_ON, "");
            stage.interrupted(this);
            turnStarter(conditions);
        }
    }

    /** A starter that cannot turn draws the volts down so far that the controller begins anew. */
    private void turnStarter(Conditions conditions) {
        if (engineBay.batteryTurnsStarter(conditions.battery())) {
            engineBay.start(nowNanos, conditions);
            event(Kind.ENGINE_STARTS, "");
            enter(Starting.begin(this));
        } else {
            event(Kind.DOES_NOT_START, "battery");
            wake();
        }
    }

    void batteryOff() {
        event(Kind.BATTERY_OFF, "");
        codes.eraseByBattery();
        event(Kind.STORED_ERASED, "battery");
        engineBay.stop(nowNanos);
        senses.conditions(
                senses.conditions().withBattery(senses.conditions().battery().disconnected()));
        if (stage.keyIsOn()) {
            wake();
        }
    }
}
