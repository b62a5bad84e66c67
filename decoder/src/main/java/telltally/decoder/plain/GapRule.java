package telltally.decoder.plain;

import java.util.Arrays;

/** How long a gap at some place of the grammar is; lengths are logarithms at nominal clock. */
final class GapRule {
    private final double[] nominal;
    private final double shortest;
    private final double most;

    private GapRule(double[] nominal, double shortest, double most) {
        this.nominal = nominal;
        this.shortest = shortest;
        this.most = most;
    }

    /** As one of the nominal lengths, however far the nearest is. */
    static GapRule near(double... nominal) {
        return new GapRule(nominal.clone(), Double.POSITIVE_INFINITY, Double.MAX_VALUE);
    }

    /** Any length from this one on. */
    static GapRule atLeast(double shortest) {
        return new GapRule(new double[0], shortest, Double.MAX_VALUE);
    }

    /** Any length at all. */
    static GapRule any() {
        return atLeast(Double.NEGATIVE_INFINITY);
    }

    /** The same, or any length from this one on. */
    GapRule orAtLeast(double from) {
        return new GapRule(nominal, from, most);
    }

    /** The same, but even a length that breaks the rule costs no more than this. */
    GapRule atMost(double nats) {
        return new GapRule(nominal, shortest, nats);
    }

    double cost(double length) {
        double cheapest = most;
        for (double each : nominal) {
            cheapest = Math.min(cheapest, Cost.of(length, each));
        }
        if (length >= shortest) {
            return Math.min(cheapest, Cost.CHANCE);
        }
        return shortest == Double.POSITIVE_INFINITY
                ? cheapest
                : Math.min(cheapest, Cost.CHANCE + Cost.of(length, shortest));
    }

    /** Whether a length is allowed because any from some length on is. */
    boolean open(double length) {
        return length >= shortest;
    }

    /** How far a length is off the nominal one that it was taken for; not a number where it was taken for none. */
    double off(double length) {
        double nearest = Double.NaN;
        for (double each : nominal) {
            if (Double.isNaN(nearest) || Math.abs(length - each) < Math.abs(nearest)) {
                nearest = length - each;
            }
        }
        return nearest;
    }

    /** Whether this nominal length is one of the rule's own, or longer than its shortest. */
    boolean allows(double other) {
        return other >= shortest || Arrays.stream(nominal).anyMatch(each -> Math.abs(each - other) < Cost.SPREAD / 2);
    }
}
