package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * An observer who stops too early: the end is lost. The first tenth of a recording is always seen, so that something is
 * left. Draws nothing.
 *
 * @param lostNanos how much of the end is lost; 0 changes nothing
 */
public record EarlyStop(long lostNanos) implements Impairment {
    public EarlyStop {
        Bounds.checkNotNegative("the lost end", lostNanos);
    }

    @Override
    public String kind() {
        return "early-stop";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        long end = train.endNanos();
        long until = Math.max(end - lostNanos, Math.max(1, end / 10));
        return until == end ? train : new Watch(train).lookUntil(until).seen();
    }
}
