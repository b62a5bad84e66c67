package telltally.simulator;

import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.Truth;
import telltally.simulator.scenario.Scenario;

/** Plays a scenario. The same scenario, seed and generator version give the same recording, everywhere. */
public final class Simulation {
    /** Raised whenever generated output changes on purpose; digests in seed sets hold it. */
    public static final int GENERATOR_VERSION = 1;

    private static final long MILLISECOND = 1_000_000L;

    private Simulation() {}

    public static Recording run(Scenario scenario, long seed) {
        Chance chance = Chance.of(seed).stream("scenario/" + scenario.id());
        // Nobody can know when the first flash comes, so that it has to be waited for as on a vehicle.
        long leadNanos = (2_000 + chance.stream("lead").below(3_000)) * MILLISECOND;
        Pacing usual = Pacing.usual();
        Pacing pacing = new Pacing(leadNanos, usual.tailNanos(), scenario.loops());
        Transmission sent = new Encoder(scenario.format()).encode(scenario.message(), pacing);
        Truth truth = new Truth(scenario.format().id(), sent.codes(), sent.groups());
        return new Recording(scenario.id(), seed, GENERATOR_VERSION, sent.lamp(), sent.wire(), truth);
    }
}
