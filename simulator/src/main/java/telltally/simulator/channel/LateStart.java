package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * An observer who starts to watch midway: the beginning is lost, and the recording starts with whatever level was there
 * then. The last tenth of a recording is always seen, so that something is left. Draws nothing.
 *
 * @param lostNanos how much of the beginning is lost; 0 changes nothing
 */
public record LateStart(long lostNanos) implements Impairment {
    public LateStart {
        Bounds.checkNotNegative("the lost beginning", lostNanos);
    }

    @Override
    public String kind() {
        return "late-start";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        long end = train.endNanos();
        long from = Math.min(lostNanos, end - Math.max(1, end / 10));
        return from == 0
                ? train
                : new Watch(train).skipUntil(from).lookUntil(end).seen();
    }
}
