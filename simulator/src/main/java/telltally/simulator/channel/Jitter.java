package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * Unsteady timing: the length of every flash and gap times 1 + share * normal, each drawn afresh, never shorter than
 * {@value #LEAST_SHARE} of itself. The first and the last stretch keep their lengths, because how long the observer
 * watched before and after is not the sender's doing.
 *
 * @param share standard deviation as a share of each length, from 0 to 1
 */
public record Jitter(double share) implements Impairment {
    /** What is left of a stretch at least, so that no draw makes a flash vanish or time run backwards. */
    public static final double LEAST_SHARE = 0.2;

    public Jitter {
        Bounds.check("jitter", share, 0, 1);
    }

    @Override
    public String kind() {
        return "jitter";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        int count = train.edgeCount();
        if (share == 0 || count == 0) {
            return train;
        }
        long[] edges = new long[count];
        edges[0] = train.edgeNanos(0);
        for (int i = 1; i < count; i++) {
            long length = train.edgeNanos(i) - train.edgeNanos(i - 1);
            double stretch = Math.max(LEAST_SHARE, 1 + share * chance.nextNormal());
            edges[i] = edges[i - 1] + Math.max(1, StrictMath.round(length * stretch));
        }
        long tail = train.endNanos() - train.edgeNanos(count - 1);
        return PulseTrain.of(train.litAtStart(), edges[count - 1] + tail, edges);
    }
}
