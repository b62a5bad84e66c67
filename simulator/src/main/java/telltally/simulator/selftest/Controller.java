package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.Segment;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Engine;
import telltally.simulator.vehicle.Phase;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** The controller on the bench: its stage, its memory, and what it can see and switch. */
final class Controller {
    private final BenchSetup setup;
    private final Diagnosis diagnosis;
    private final Chance chance;
    private final OutputLine output;
    private final StoredCodes stored = new StoredCodes();
    private final List<BenchEvent> events = new ArrayList<>();
    private final EngineBay engineBay;

    private Stage stage = new Stages.Off(0);
    private Conditions conditions;
    private List<CircuitFault> faults = List.of();
    private boolean jumper;
    private long nowNanos;
    private int balanceTests;

    Controller(BenchSetup setup, Diagnosis diagnosis, Chance chance) {
        this.setup = setup;
        this.diagnosis = diagnosis;
        this.chance = chance;
        this.output = new OutputLine(setup.lampVisible());
        this.conditions = setup.conditions();
        this.engineBay = new EngineBay(setup.vehicle(), chance);
        if (!conditions.battery().disconnectedSinceDrive()) {
            rememberEarlierDrives();
        }
    }

    /** What earlier drives left: every fault that was there then, one at a time, as it was found. */
    private void rememberEarlierDrives() {
        for (FaultCase each : setup.faults()) {
            if (each.presence().remembered()) {
                store(List.of(new CircuitFault(each.circuit(), each.fault())), false);
            }
        }
    }

    // What stages use.

    long nowNanos() {
        return nowNanos;
    }

    BenchSetup setup() {
        return setup;
    }

    Encoder encoder() {
        return new Encoder(setup.format());
    }

    OutputLine output() {
        return output;
    }

    EngineBay engineBay() {
        return engineBay;
    }

    Conditions conditions() {
        return conditions;
    }

    boolean jumper() {
        return jumper;
    }

    boolean segmented() {
        return setup.format().sessions().isPresent();
    }

    void event(Kind kind, String detail) {
        events.add(new BenchEvent(nowNanos, kind, detail));
    }

    void enter(Stage next) {
        stage = next;
    }

    List<String> storedCodes() {
        return stored.all();
    }

    /** What the controller sees this instant, as codes of a segment. */
    List<String> codesNow(Segment segment, Phase phase) {
        return setup.codeList().codesFor(diagnosis.conditions(faults, conditions, phase), segment);
    }

    /** The code for something that no circuit tells, such as a prompt that nobody answered. */
    List<String> codesFor(String condition, Segment segment) {
        return setup.codeList().codesFor(List.of(condition), segment);
    }

    List<String> movingSolenoids() {
        return diagnosis.movingSolenoids(faults, conditions);
    }

    boolean awake() {
        return diagnosis.awake(faults, conditions);
    }

    void eraseByInterruption() {
        stored.eraseByInterruption();
        event(Kind.STORED_ERASED, "interrupted");
    }

    int nextBalanceTest() {
        return balanceTests++;
    }

    Chance chance() {
        return chance;
    }

    /** Whether the lamp lights because a circuit is open this instant and somebody is looking for just that. */
    boolean intermittentShows() {
        return stage.wiggleCheck() && jumper && intermittentNow();
    }

    private boolean intermittentNow() {
        return faults.size() > hardFaults();
    }

    private int hardFaults() {
        return (int) setup.faults().stream()
                .filter(each -> each.presence() instanceof Presence.Hard)
                .count();
    }

    // What the bench does to it.

    Stage stage() {
        return stage;
    }

    List<BenchEvent> events() {
        return List.copyOf(events);
    }

    /** Goes on to an instant, with no fault or act changing before it. */
    void advanceTo(long nanos) {
        while (nowNanos < nanos || stage.untilNanos() <= nowNanos) {
            long next = Math.min(nanos, Math.max(nowNanos, stage.untilNanos()));
            stage.paint(output, this, next);
            nowNanos = next;
            if (engineBay.advanceTo(next)) {
                event(Kind.ENGINE_STALLS, "");
                stage.interrupted(this);
                enter(new Stages.Waiting(nowNanos));
            } else if (stage.untilNanos() <= nowNanos) {
                stage.elapsed(this);
            }
        }
    }

    void faults(List<CircuitFault> now) {
        boolean more = now.size() > faults.size();
        faults = now;
        if (more && keyIsOn() && awake()) {
            store(now, true);
        }
    }

    private void store(List<CircuitFault> seen, boolean now) {
        Phase phase = engineBay.running() ? Phase.ENGINE_RUNNING : Phase.ENGINE_OFF;
        Set<String> found = new LinkedHashSet<>(diagnosis.conditions(seen, conditions, phase));
        for (String code : setup.codeList().codesFor(found, Segment.STORED)) {
            if (stored.store(code) && now) {
                event(Kind.CODE_STORED, code);
            }
        }
    }

    void conditions(Conditions changed) {
        double before = conditions.throttleShare();
        conditions = changed;
        engineBay.conditions(changed);
        if (before != changed.throttleShare()) {
            stage.throttle(this, before, changed.throttleShare());
        }
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

    boolean keyIsOn() {
        return !(stage instanceof Stages.Off);
    }

    void key(boolean on) {
        if (on == keyIsOn()) {
            return;
        }
        event(on ? Kind.KEY_ON : Kind.KEY_OFF, "");
        if (!on) {
            stage.interrupted(this);
            engineBay.stop();
            enter(new Stages.Off(nowNanos));
        } else if (awake()) {
            event(Kind.BULB_CHECK, "");
            enter(new Stages.BulbCheck(nowNanos));
        } else {
            event(Kind.NO_SUPPLY, "");
            enter(new Stages.Dead(nowNanos));
        }
    }

    void crank() {
        key(true);
        if (engineBay.running()) {
            event(Kind.STARTER_GRINDS, "");
            return;
        }
        Optional<String> obstacle = engineBay.obstacle(conditions);
        if (obstacle.isPresent()) {
            event(Kind.STARTER_BLOCKED, obstacle.get());
            return;
        }
        stage.interrupted(this);
        if (!engineBay.starts(conditions) || stage instanceof Stages.Dead) {
            event(Kind.DOES_NOT_START, "battery");
            enter(new Stages.Waiting(nowNanos));
            return;
        }
        engineBay.start(nowNanos, conditions);
        event(Kind.ENGINE_STARTS, "");
        enter(new Stages.Starting(nowNanos));
    }

    void batteryOff() {
        stored.eraseByBattery();
        event(Kind.STORED_ERASED, "battery");
        boolean wasOn = keyIsOn();
        engineBay.stop();
        enter(new Stages.Off(nowNanos));
        conditions = conditions.withBattery(conditions.battery().disconnected());
        if (wasOn) {
            key(true);
        }
    }

    Optional<Engine> engine() {
        return engineBay.engine();
    }
}
