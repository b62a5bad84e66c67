package telltally.simulator.channel;

import telltally.simulator.chance.Chance;

/**
 * How a person follows a lamp with a key.
 *
 * @param lagNanos mean time from what is seen to what the finger does
 * @param spreadNanos standard deviation of that time, normal, but a finger is never ahead of the lamp
 * @param missed probability that a flash gets no tap
 * @param doubled probability that a tap slips and becomes two
 */
public record Finger(long lagNanos, long spreadNanos, double missed, double doubled) {
    public Finger {
        Bounds.checkNotNegative("the finger's lag", lagNanos);
        Bounds.checkNotNegative("the finger's spread", spreadNanos);
        Bounds.check("probability of a missed tap", missed, 0, 1);
        Bounds.check("probability of a double tap", doubled, 0, 1);
    }

    /**
     * Someone who taps when they see it: 231 ms (mean simple reaction time to light of 1469 people; Woods and others,
     * Frontiers in Human Neuroscience 9:131, 2015), spread 45 ms (30 to 60 ms within a person, from memory).
     */
    public static Finger reacting() {
        return new Finger(231_000_000, 45_000_000, 0, 0);
    }

    long delayNanos(Chance chance) {
        return Math.max(0, lagNanos + StrictMath.round(spreadNanos * chance.nextNormal()));
    }
}
