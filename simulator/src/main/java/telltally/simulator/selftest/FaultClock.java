package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.vehicle.Vehicle.CircuitFault;

/** Which faults are there at which instant: some come and go by themselves, some while a connector is moved. */
final class FaultClock {
    /** A loose contact does not open for as long as it is moved, but by fits and starts; the lengths are ours. */
    private static final double SHORTEST_OPENING_SECONDS = 0.3;

    private static final double LONGEST_OPENING_SECONDS = 0.9;
    private static final double SHORTEST_REST_SECONDS = 0.2;
    private static final double LONGEST_REST_SECONDS = 0.8;

    /** A stretch of time in which a moved connector is open. */
    private record Opening(String connector, long startNanos, long endNanos) {
        boolean holds(String moved, long nanos) {
            return connector.equals(moved) && startNanos <= nanos && nanos < endNanos;
        }
    }

    private final List<FaultCase> faults;
    private final Chance wiggling;
    private final List<Opening> openings = new ArrayList<>();

    FaultClock(List<FaultCase> faults, Chance wiggling) {
        this.faults = faults;
        this.wiggling = wiggling;
    }

    /** A connector is moved from now on for a while. */
    void wiggle(String connector, long nowNanos, long lengthNanos) {
        long at = nowNanos;
        while (true) {
            long start = at + nanosBetween(SHORTEST_REST_SECONDS, LONGEST_REST_SECONDS);
            long end = start + nanosBetween(SHORTEST_OPENING_SECONDS, LONGEST_OPENING_SECONDS);
            if (end > nowNanos + lengthNanos) {
                return;
            }
            openings.add(new Opening(connector, start, end));
            at = end;
        }
    }

    private long nanosBetween(double fromSeconds, double toSeconds) {
        return Math.round(wiggling.between(fromSeconds, toSeconds) * 1e9);
    }

    List<CircuitFault> at(long nanos) {
        List<CircuitFault> active = new ArrayList<>();
        for (FaultCase each : faults) {
            boolean now = each.presence() instanceof Presence.Wiggled wiggled
                    ? openings.stream().anyMatch(opening -> opening.holds(wiggled.connector(), nanos))
                    : each.presence().activeAt(nanos);
            if (now) {
                active.add(each.circuitFault());
            }
        }
        return active;
    }

    /** The next instant at which a fault may come or go; {@code Long.MAX_VALUE} where none does by itself. */
    long nextChangeAfter(long nanos) {
        long next = Long.MAX_VALUE;
        for (FaultCase each : faults) {
            if (each.presence() instanceof Presence.Recurring recurring) {
                next = Math.min(next, recurring.changeAfter(nanos));
            }
        }
        for (Opening opening : openings) {
            if (opening.startNanos > nanos) {
                next = Math.min(next, opening.startNanos);
            }
            if (opening.endNanos > nanos) {
                next = Math.min(next, opening.endNanos);
            }
        }
        return next;
    }
}
