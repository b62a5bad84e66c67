package telltally.simulator.vehicle;

import java.util.Optional;

/** One thing wrong with one circuit. Whether a circuit can have it: {@link Circuit#admits}. */
public sealed interface Fault {

    /** Something wrong with the way the current takes; it may sit in the part or in any wire. */
    sealed interface Electrical extends Fault {
        Place place();

        /** What the sound way of this many ohms has become. */
        default double seriesOhms(double soundOhms) {
            return soundOhms;
        }

        /** What the place touches and should not. */
        default Optional<Node> bridgedTo() {
            return Optional.empty();
        }
    }

    /** Something wrong with what the part or the controller's output does, the ways being sound. */
    sealed interface Functional extends Fault {}

    record Open(Place place) implements Electrical {
        @Override
        public double seriesOhms(double soundOhms) {
            return Double.POSITIVE_INFINITY;
        }
    }

    record ShortToGround(Place place) implements Electrical {
        @Override
        public Optional<Node> bridgedTo() {
            return Optional.of(Node.GROUND);
        }
    }

    /** To battery voltage, not to the sensors' reference. */
    record ShortToSupply(Place place) implements Electrical {
        @Override
        public Optional<Node> bridgedTo() {
            return Optional.of(Node.BATTERY_POSITIVE);
        }
    }

    /** A corroded terminal or a chafed wire: so many ohms more than there should be. */
    record HighResistance(Place place, double ohms) implements Electrical {
        public HighResistance {
            if (!(ohms > 0 && Double.isFinite(ohms))) {
                throw new IllegalArgumentException("more resistance than there should be, not " + ohms + " ohms");
            }
        }

        @Override
        public double seriesOhms(double soundOhms) {
            return soundOhms + ohms;
        }
    }

    /** A temperature sensor that answers as if it were this much warmer. */
    record DriftedByKelvin(double kelvin) implements Functional {
        public DriftedByKelvin {
            if (!Double.isFinite(kelvin)) {
                throw new IllegalArgumentException("a drift of " + kelvin + " K");
            }
        }
    }

    /** A position sensor that answers as if it were further along by this share of its track. */
    record DriftedByShare(double share) implements Functional {
        public DriftedByShare {
            if (!(share >= -1 && share <= 1)) {
                throw new IllegalArgumentException("a drift by a share of " + share + " is not within -1 to 1");
            }
        }
    }

    /** A switch that no longer follows what moves it. */
    enum Stuck implements Functional {
        OPEN,
        CLOSED
    }

    /** A controller's output that no longer switches on. */
    enum DeadOutput implements Functional {
        DEAD_OUTPUT
    }
}
