package telltally.simulator.selftest;

import telltally.simulator.vehicle.Gear;
import telltally.simulator.vehicle.Transmission;

/** Something the operator does at an instant. Each act knows what it changes; a new one has to say so. */
public sealed interface OperatorAct {
    /** From the start of the recording. */
    long atNanos();

    /** Called by the bench when the instant has come. */
    void applyTo(Bench bench);

    /** Whether a vehicle with this transmission offers it at all: no clutch pedal, no act on it. */
    default boolean possibleWith(Transmission transmission) {
        return true;
    }

    /** The self-test input is joined to the signal return. */
    record JumperIn(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.jumper(true);
        }
    }

    record JumperOut(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.jumper(false);
        }
    }

    record KeyOn(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.key(true);
        }
    }

    record KeyOff(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.key(false);
        }
    }

    /** Turns the key on, if it is not, and holds it at start until the engine runs or plainly will not. */
    record Crank(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.crank();
        }
    }

    /** @param share 0 closed, 1 to the floor */
    record Throttle(long atNanos, double share) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.throttle(share);
        }
    }

    record Clutch(long atNanos, boolean down) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.clutch(down);
        }

        @Override
        public boolean possibleWith(Transmission transmission) {
            return transmission == Transmission.MANUAL;
        }
    }

    record Shift(long atNanos, Gear gear) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.shift(gear);
        }

        @Override
        public boolean possibleWith(Transmission transmission) {
            return transmission == Transmission.AUTOMATIC || gear != Gear.PARK;
        }
    }

    record AirConditioning(long atNanos, boolean on) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.airConditioning(on);
        }
    }

    /** Moves a connector and the harness beside it for a while. */
    record Wiggle(long atNanos, String connector, long lengthNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.wiggle(connector, lengthNanos);
        }
    }

    /** Takes the battery's lead off and puts it back. */
    record BatteryOff(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            bench.batteryOff();
        }
    }

    /** Does nothing until this instant; the last act of a list says how long the recording goes on. */
    record Wait(long atNanos) implements OperatorAct {
        @Override
        public void applyTo(Bench bench) {
            // What happens while one waits, the bench knows by itself.
        }
    }
}
