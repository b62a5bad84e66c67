package telltally.simulator.selftest;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import telltally.simulator.chance.Chance;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.CylinderBalance;
import telltally.simulator.vehicle.Engine;
import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.Vehicle;

/** The engine when it runs, with the instants of the recording instead of its own. */
final class EngineBay {
    /** Below this a starter does not turn an engine over fast enough. Common practice, no source. */
    private static final double CRANKS_FROM_VOLTS = 10.5;

    private final Vehicle vehicle;
    private final Chance chance;
    private final SpeedRecord speeds = new SpeedRecord();
    private @Nullable Engine engine;
    private @Nullable CylinderBalance balance;
    private long startNanos;
    private int starts;

    EngineBay(Vehicle vehicle, Chance chance) {
        this.vehicle = vehicle;
        this.chance = chance;
    }

    boolean running() {
        return engine != null;
    }

    Optional<Engine> engine() {
        return Optional.ofNullable(engine);
    }

    /** Why the starter does not turn: the drive is engaged. */
    Optional<String> obstacle(Conditions conditions) {
        boolean free = conditions.gear() != Gear.ENGAGED
                || (vehicle.transmission() == Transmission.MANUAL && conditions.clutchDown());
        return free ? Optional.empty() : Optional.of("drive engaged");
    }

    boolean starts(Conditions conditions) {
        return conditions.battery().volts() >= CRANKS_FROM_VOLTS;
    }

    void start(long atNanos, Conditions conditions) {
        startNanos = atNanos;
        engine = Engine.idling(vehicle, conditions, chance.stream("engine/start/" + ++starts));
        speeds.begin(atNanos);
    }

    void stop() {
        if (engine != null) {
            speeds.take(engine.trace(), startNanos);
        }
        engine = null;
        balance = null;
    }

    void conditions(Conditions changed) {
        if (engine != null) {
            engine.throttle(changed.throttleShare());
            engine.load(vehicle.loadNewtonMetres(changed));
        }
    }

    /** A balance test takes the engine along until it is over. */
    void balancing(@Nullable CylinderBalance test) {
        balance = test;
    }

    void holdSpeed(double rpm) {
        if (engine != null) {
            engine.holdSpeed(rpm);
        }
    }

    /** Takes the engine along; true where it has stalled. */
    boolean advanceTo(long nanos) {
        if (engine == null) {
            return false;
        }
        if (balance != null) {
            balance.advanceTo(nanos - startNanos);
        } else {
            engine.advanceTo(nanos - startNanos);
        }
        if (engine.stalled()) {
            stop();
            return true;
        }
        return false;
    }

    /** The speeds so far, of every run of the engine. */
    SpeedRecord speeds() {
        SpeedRecord all = speeds.copy();
        if (engine != null) {
            all.take(engine.trace(), startNanos);
        }
        return all;
    }
}
