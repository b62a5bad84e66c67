package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A connector that loses contact now and then: the level is dark meanwhile. Contact begins good; the time until it is
 * lost and the time until it is back are exponential, each drawn afresh.
 *
 * @param perSecond how often contact is lost per second of good contact, up to 100; 0 changes nothing
 * @param meanNanos mean length of a loss; 0 changes nothing
 */
public record LooseContact(double perSecond, long meanNanos) implements Impairment {
    public LooseContact {
        Bounds.check("losses of contact per second", perSecond, 0, 100);
        Bounds.checkNotNegative("a loss of contact", meanNanos);
    }

    @Override
    public String kind() {
        return "loose-contact";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        if (perSecond == 0 || meanNanos == 0) {
            return train;
        }
        Watch watch = new Watch(train);
        double nowNanos = 0;
        while (!watch.over()) {
            nowNanos += 1 + chance.nextExponential() * 1e9 / perSecond;
            watch.lookUntil((long) nowNanos);
            nowNanos += 1 + chance.nextExponential() * meanNanos;
            watch.lookAwayUntil((long) nowNanos);
        }
        return watch.seen();
    }
}
