package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/**
 * Flashes that nobody sent: a reflection in the instrument glass, another lamp. At most one in a gap; its length is
 * evenly spread between two limits, its place evenly over the gap, half its own length away from the true flashes. A
 * gap without room for it, less than about twice its length, stays dark.
 *
 * @param probability that a gap gets one; 0 changes nothing
 * @param shortestNanos the shortest ghost, at least 1
 * @param longestNanos the longest ghost
 */
public record GhostFlashes(double probability, long shortestNanos, long longestNanos) implements Impairment {
    public GhostFlashes {
        Bounds.check("probability of a ghost flash", probability, 0, 1);
        Bounds.checkPositive("a ghost flash", shortestNanos);
        if (longestNanos < shortestNanos) {
            throw new IllegalArgumentException(
                    "the longest ghost flash, " + longestNanos + " ns, is shorter than " + shortestNanos + " ns");
        }
    }

    /** Reflections of 40 to 150 ms; common practice, no source. */
    public static GhostFlashes ofReflections(double probability) {
        return new GhostFlashes(probability, 40_000_000, 150_000_000);
    }

    @Override
    public String kind() {
        return "ghost-flashes";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        if (probability == 0) {
            return train;
        }
        PulseTrain.Builder seen = PulseTrain.builder();
        for (Interval stretch : train.intervals()) {
            if (!stretch.lit() && chance.happens(probability)) {
                haunt(seen, stretch.lengthNanos(), chance);
            } else {
                seen.stay(stretch.lit(), stretch.lengthNanos());
            }
        }
        return seen.build();
    }

    private void haunt(PulseTrain.Builder seen, long gap, Chance chance) {
        long ghost = shortestNanos + (long) ((longestNanos - shortestNanos) * chance.nextUnit());
        long margin = ghost / 2 + 1;
        long room = gap - ghost - 2 * margin;
        if (room < 0) {
            seen.dark(gap);
            return;
        }
        long before = margin + (long) (room * chance.nextUnit());
        seen.dark(before).lit(ghost).dark(gap - before - ghost);
    }
}
