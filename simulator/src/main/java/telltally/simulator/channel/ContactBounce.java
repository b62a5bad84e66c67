package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A contact that bounces: after an edge the level falls back and comes again a few times, and ends at the right level.
 * The number of times is evenly spread from none to the most, and so is the time they take, up to the longest. All is
 * over within the first half of the stretch that the edge begins, so that it never reaches the next edge.
 *
 * @param longestNanos how long a contact may bounce; 0 changes nothing
 * @param mostContacts how often the level may fall back, up to 50; 0 changes nothing
 */
public record ContactBounce(long longestNanos, int mostContacts) implements Impairment {
    public ContactBounce {
        Bounds.checkNotNegative("bounce", longestNanos);
        Bounds.check("contacts", mostContacts, 0, 50);
    }

    @Override
    public String kind() {
        return "contact-bounce";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        int count = train.edgeCount();
        if (longestNanos == 0 || mostContacts == 0 || count == 0) {
            return train;
        }
        PulseTrain.Builder bounced = PulseTrain.builder().stay(train.litAtStart(), train.edgeNanos(0));
        double[] weights = new double[2 * mostContacts];
        for (int i = 0; i < count; i++) {
            long next = i + 1 < count ? train.edgeNanos(i + 1) : train.endNanos();
            boolean lit = train.litAtStart() ^ (i % 2 == 0);
            bounce(bounced, lit, next - train.edgeNanos(i), weights, chance);
            bounced.stay(lit, next - bounced.nowNanos());
        }
        return bounced.build();
    }

    private void bounce(PulseTrain.Builder bounced, boolean lit, long stretch, double[] weights, Chance chance) {
        int changes = 2 * chance.below(mostContacts + 1);
        double lasting = Math.min(longestNanos * (1 - chance.nextUnit()), stretch / 2.0);
        double sum = 0;
        for (int k = 0; k < changes; k++) {
            // Unequal, but none so short that it would not be a contact at all.
            weights[k] = chance.between(0.2, 1);
            sum += weights[k];
        }
        if (lasting < 10 * changes) {
            return; // no room for alternations of a nanosecond or more
        }
        for (int k = 0; k < changes; k++) {
            bounced.stay(lit ^ (k % 2 == 1), (long) (lasting * weights[k] / sum));
        }
    }
}
