package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * Sun on the instruments for one stretch of time, in which no flash is seen. The stretch lies anywhere within the
 * recording, every place equally likely.
 *
 * @param lengthNanos how long; 0 changes nothing, as long as the recording or longer hides all of it
 */
public record Glare(long lengthNanos) implements Impairment {
    public Glare {
        Bounds.checkNotNegative("glare", lengthNanos);
    }

    @Override
    public String kind() {
        return "glare";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        long end = train.endNanos();
        long length = Math.min(lengthNanos, end);
        long from = (long) ((end - length) * chance.nextUnit());
        return new Watch(train)
                .lookUntil(from)
                .lookAwayUntil(from + length)
                .lookUntil(end)
                .seen();
    }
}
