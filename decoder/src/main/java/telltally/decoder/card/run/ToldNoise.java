package telltally.decoder.card.run;

import java.util.OptionalDouble;
import telltally.decoder.lattice.KnownNoise;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.MissedFlashes;

/** Says of a channel what the probabilistic decoder can be told: clock, jitter, and how often flashes go missing or appear. */
final class ToldNoise {
    private ToldNoise() {}

    static KnownNoise of(ImpairmentChain channel) {
        OptionalDouble clock = OptionalDouble.empty();
        OptionalDouble jitter = OptionalDouble.empty();
        OptionalDouble missed = OptionalDouble.empty();
        OptionalDouble ghost = OptionalDouble.empty();
        for (Impairment each : channel.impairments()) {
            if (each instanceof ClockScale scale) {
                clock = OptionalDouble.of(clock.orElse(1) * scale.factor());
            } else if (each instanceof Jitter share) {
                jitter = OptionalDouble.of(share.share());
            } else if (each instanceof MissedFlashes unseen) {
                missed = OptionalDouble.of(unseen.probability());
            } else if (each instanceof GhostFlashes unsent) {
                ghost = OptionalDouble.of(unsent.probability());
            }
        }
        return new KnownNoise(clock, jitter, missed, ghost);
    }
}
