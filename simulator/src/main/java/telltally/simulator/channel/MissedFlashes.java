package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * An observer who looks away: a flash is not seen at all, and the gaps on both sides become one.
 *
 * @param probability that a flash is missed, each for itself; 0 changes nothing
 */
public record MissedFlashes(double probability) implements Impairment {
    public MissedFlashes {
        Bounds.check("probability of a missed flash", probability, 0, 1);
    }

    @Override
    public String kind() {
        return "missed-flashes";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        if (probability == 0) {
            return train;
        }
        PulseTrain.Builder seen = PulseTrain.builder();
        for (Interval stretch : train.intervals()) {
            boolean lit = stretch.lit() && !chance.happens(probability);
            seen.stay(lit, stretch.lengthNanos());
        }
        return seen.build();
    }
}
