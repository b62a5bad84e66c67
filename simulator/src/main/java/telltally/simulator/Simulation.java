package telltally.simulator;

import java.util.Optional;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.Truth;
import telltally.simulator.scenario.Content;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.selftest.Bench;
import telltally.simulator.selftest.Debrief;
import telltally.simulator.selftest.Debrief.Expectation;
import telltally.simulator.selftest.Diagnosis;
import telltally.simulator.signal.PulseTrain;

/**
 * Plays a scenario. The same scenario, seed and generator version give the same recording, everywhere. One simulation
 * may be run with many seeds; what a vehicle's circuits give is worked out once. Not for sharing between threads.
 */
public final class Simulation {
    /** Raised whenever generated output changes on purpose; digests in seed sets hold it. */
    public static final int GENERATOR_VERSION = 1;

    private static final long MILLISECOND = 1_000_000L;

    private final Scenario scenario;
    private final Optional<Diagnosis> diagnosis;
    private Optional<Expectation> expectation = Optional.empty();

    public Simulation(Scenario scenario) {
        this.scenario = scenario;
        this.diagnosis = scenario.content() instanceof Content.Caused caused
                ? Optional.of(new Diagnosis(caused.setup().vehicle()))
                : Optional.empty();
    }

    /** Plays a scenario once. */
    public static Recording run(Scenario scenario, long seed) {
        return new Simulation(scenario).run(seed);
    }

    public Recording run(long seed) {
        Chance chance = Chance.of(seed).stream("scenario/" + scenario.id());
        Recording sent = scenario.content() instanceof Content.Caused caused
                ? caused(caused, seed, chance)
                : outright(((Content.Outright) scenario.content()).message(), seed, chance);
        return scenario.channel().steps().isEmpty() ? sent : sent.withLamp(seen(sent.lamp(), chance.stream("channel")));
    }

    /** What the lesson's channel leaves of the lamp. */
    private PulseTrain seen(PulseTrain lamp, Chance chance) {
        return scenario.channel().drawnFrom(chance).applyTo(lamp, chance);
    }

    private Recording outright(Message message, long seed, Chance chance) {
        // Nobody can know when the first flash comes, so that it has to be waited for as on a vehicle.
        long leadNanos = (2_000 + chance.stream("lead").below(3_000)) * MILLISECOND;
        Pacing pacing = new Pacing(leadNanos, Pacing.usual().tailNanos(), scenario.loops());
        Transmission sent = new Encoder(scenario.format()).encode(message, pacing);
        Truth truth = new Truth(scenario.format().id(), sent.codes(), sent.groups());
        return new Recording(scenario.id(), seed, GENERATOR_VERSION, sent.lamp(), sent.wire(), truth);
    }

    private Recording caused(Content.Caused caused, long seed, Chance chance) {
        Diagnosis circuits = diagnosis.orElseThrow();
        Bench bench = new Bench(caused.setup(), circuits, chance);
        caused.acts().forEach(bench::act);
        Truth truth = new Truth(scenario.format().id(), bench.codes(), bench.groups());
        return new Recording(
                scenario.id(),
                seed,
                GENERATOR_VERSION,
                bench.lamp(),
                bench.pin(),
                truth,
                bench.speedRpm(),
                bench.events(),
                Optional.of(expectation(caused, circuits).withFromConditions(bench.codesFromConditions())),
                caused.setup().conditions().battery().volts());
    }

    /** The same for every seed but for what comes of the acts, so it is worked out once. */
    private Expectation expectation(Content.Caused caused, Diagnosis circuits) {
        if (expectation.isEmpty()) {
            expectation = Optional.of(Debrief.of(caused.setup(), circuits));
        }
        return expectation.get();
    }
}
