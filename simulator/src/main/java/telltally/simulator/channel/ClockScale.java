package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * A sender whose clock is off: every instant, the end of the recording included, times a factor. 1.02 makes everything
 * last 2 % longer. Draws nothing.
 *
 * @param factor from 0.1 to 10; 1 changes nothing
 */
public record ClockScale(double factor) implements Impairment {
    public ClockScale {
        Bounds.check("clock factor", factor, 0.1, 10);
    }

    @Override
    public String kind() {
        return "clock-scale";
    }

    @Override
    public PulseTrain applyTo(PulseTrain train, Chance chance) {
        return factor == 1 ? train : Warp.of(train, nanos -> StrictMath.round(nanos * factor));
    }
}
