package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A sender whose clock changes while it sends, as it warms up: the pace is right at instant 0 and changes by the same
 * share of itself every minute, until it is half or double; from there it stays. Draws nothing.
 *
 * @param sharePerMinute from -1 to 1; 0.01 means that after a minute everything lasts 1 % longer; 0 changes nothing
 */
public record ClockDrift(double sharePerMinute) implements Impairment {
    private static final double NANOS_PER_MINUTE = 60e9;
    private static final double SLOWEST = 2;
    private static final double FASTEST = 0.5;

    public ClockDrift {
        Bounds.check("clock drift per minute", sharePerMinute, -1, 1);
    }

    @Override
    public String kind() {
        return "clock-drift";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        return sharePerMinute == 0 ? train : Warp.of(train, this::drifted);
    }

    /** The integral of the pace, 1 + share * minutes. */
    private long drifted(long nanos) {
        double share = sharePerMinute / NANOS_PER_MINUTE;
        double limit = share > 0 ? SLOWEST : FASTEST;
        double drifting = Math.min((double) nanos, (limit - 1) / share);
        return StrictMath.round(drifting * (1 + share * drifting / 2) + (nanos - drifting) * limit);
    }
}
