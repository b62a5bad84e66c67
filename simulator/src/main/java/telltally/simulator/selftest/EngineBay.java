package telltally.simulator.selftest;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.vehicle.BalanceJudge;
import telltally.simulator.vehicle.BalancePlan;
import telltally.simulator.vehicle.BalanceVerdict;
import telltally.simulator.vehicle.Battery;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.CylinderBalance;
import telltally.simulator.vehicle.Engine;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.Vehicle;

/** The engine when it runs, with the instants of the recording instead of its own. */
final class EngineBay {
    /** What a starter draws, typical, from memory; below so many volts under it an engine does not start: common practice. */
    private static final double STARTER_AMPERE = 200;

    private static final double CRANKS_FROM_VOLTS = 9.6;

    /** That an engine has stalled is noticed at one of these instants, whoever looks how often. */
    private static final long BETWEEN_CHECKS_NANOS = 100_000_000L;

    /** A balance test ends at a rounded instant; a second more and it is over for certain. */
    private static final long MARGIN_NANOS = 1_000_000_000L;

    private final Vehicle vehicle;
    private final Chance chance;
    private final SpeedRecord speeds = new SpeedRecord();
    private @Nullable Engine engine;
    private @Nullable CylinderBalance balance;
    private long startNanos;
    private long nextCheckNanos = Stage.NEVER;
    private int starts;
    private int balanceTests;

    EngineBay(Vehicle vehicle, Chance chance) {
        this.vehicle = vehicle;
        this.chance = chance;
    }

    boolean running() {
        return engine != null;
    }

    /** Whether the starter is let turn: out of gear, or with the clutch held down. */
    boolean driveFree(Conditions conditions) {
        boolean clutch = vehicle.transmission() == Transmission.MANUAL && conditions.clutchDown();
        return conditions.gear() != Gear.ENGAGED || clutch;
    }

    /** Whether the engine of a vehicle that is held cannot turn on. */
    boolean stallsAgainstTheBrake(Conditions conditions) {
        return vehicle.transmission() == Transmission.MANUAL && !driveFree(conditions);
    }

    boolean batteryTurnsStarter(Battery battery) {
        return battery.volts() - STARTER_AMPERE * battery.internalOhms() >= CRANKS_FROM_VOLTS;
    }

    void start(long atNanos, Conditions conditions) {
        startNanos = atNanos;
        nextCheckNanos = atNanos + BETWEEN_CHECKS_NANOS;
        engine = Engine.idling(vehicle, conditions, chance.stream("engine/start/" + ++starts));
        speeds.stands(atNanos);
    }

    /** Does nothing to an engine that stands. */
    void stop(long atNanos) {
        if (engine != null) {
            speeds.take(engine.trace(), startNanos);
            speeds.stands(atNanos);
        }
        engine = null;
        balance = null;
        nextCheckNanos = Stage.NEVER;
    }

    void conditions(Conditions changed) {
        if (engine != null) {
            engine.throttle(changed.throttleShare());
            engine.load(vehicle.loadNewtonMetres(changed));
        }
    }

    void holdSpeed(double rpm) {
        if (engine != null) {
            engine.holdSpeed(rpm);
        }
    }

    /** The next balance test is a first one again. */
    void forgetBalanceTests() {
        balanceTests = 0;
    }

    /**
     * Each test that is run to its end makes the next one more lenient.
     *
     * @return how long it takes, nanoseconds
     * @throws IllegalStateException if the engine stands
     */
    long beginBalance() {
        if (engine == null) {
            throw new IllegalStateException("no balance test without a running engine");
        }
        BalancePlan plan = BalancePlan.usual();
        balance = new CylinderBalance(engine, plan, BalanceJudge.ofRepeat(balanceTests));
        return Math.round(plan.seconds(engine.cylinders().count()) * 1e9) + MARGIN_NANOS;
    }

    /** What the finished test has the lamp send; empty where it was spoiled. */
    OptionalInt endBalance() {
        OptionalInt flashes = Optional.ofNullable(balance)
                .flatMap(CylinderBalance::verdict)
                .map(BalanceVerdict::flashes)
                .orElse(OptionalInt.empty());
        balance = null;
        if (flashes.isPresent()) {
            balanceTests++;
        }
        return flashes;
    }

    /** Ends a test that has not run to its end; every injector works again. */
    void dropBalance() {
        balance = null;
        if (engine != null) {
            for (int cylinder = 1; cylinder <= engine.cylinders().count(); cylinder++) {
                engine.restore(cylinder);
            }
            engine.holdSpeed(engine.make().idleRpm());
        }
    }

    /** The next instant at which {@link #advanceTo} has to stop. */
    long nextCheckNanos() {
        return nextCheckNanos;
    }

    /** Takes the engine along, no further than to the next check; true where it has stalled. */
    boolean advanceTo(long nanos) {
        if (engine == null) {
            return false;
        }
        if (balance != null) {
            balance.advanceTo(nanos - startNanos);
        } else {
            engine.advanceTo(nanos - startNanos);
        }
        if (nanos < nextCheckNanos) {
            return false;
        }
        nextCheckNanos += BETWEEN_CHECKS_NANOS;
        return engine.stalled();
    }

    /** Mean speed of the last whole cycle; 0 where the engine stands. */
    double rpmNow() {
        if (engine == null || engine.trace().size() == 0) {
            return 0;
        }
        return engine.trace().rpm(engine.trace().size() - 1);
    }

    /** The speeds so far, of every run of the engine; empty where it never ran. */
    Optional<SampledSignal> speedRpm() {
        return engine == null
                ? speeds.signal()
                : speeds.with(engine.trace(), startNanos).signal();
    }
}
