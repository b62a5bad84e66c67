package telltally.decoder.score;

import java.util.List;
import java.util.Optional;
import telltally.simulator.Simulation;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Transmission;
import telltally.simulator.recording.Recording;
import telltally.simulator.recording.Truth;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.signal.PulseTrain;

/**
 * Makes the cases of a seed set. The same set, seed and generator version give the same cases, everywhere. Not for
 * sharing between threads.
 */
public final class SeedCases {
    /** Apart from every stream that a simulation draws from. */
    private static final String STREAM = "seeds";

    private final SeedSet set;
    private final List<Lesson> lessons;

    public SeedCases(SeedSet set) {
        this.set = set;
        this.lessons = set.source() instanceof SeedSource.Scenarios source
                ? source.scenarios().stream().map(Lesson::new).toList()
                : List.of();
    }

    /** A lesson and its simulation, which works out once what is the same for every seed. */
    private record Lesson(Scenario scenario, Simulation simulation) {
        Lesson(Scenario scenario) {
            this(scenario, new Simulation(scenario));
        }
    }

    /** The cases of one seed: one for each lesson, else one. */
    public List<SeedCase> of(long seed) {
        if (set.source() instanceof SeedSource.Messages messages) {
            return List.of(message(messages.recipe(), seed));
        }
        if (set.source() instanceof SeedSource.Decoys decoys) {
            return List.of(decoy(decoys, seed));
        }
        if (set.source() instanceof SeedSource.Recordings recordings) {
            return List.of(frozen(recordings.frozen().get((int) seed - 1), seed));
        }
        return lessons.stream().map(each -> played(each, seed)).toList();
    }

    private static SeedCase frozen(SeedSource.Frozen frozen, long seed) {
        return new SeedCase(
                seed,
                frozen.name(),
                frozen.format(),
                frozen.train(),
                frozen.train(),
                frozen.truth(),
                ImpairmentChain.of());
    }

    private SeedCase decoy(SeedSource.Decoys decoys, long seed) {
        Chance chance = Chance.of(seed).stream(STREAM).stream("decoy");
        Decoy decoy = LegalCodes.oneOf(decoys.kinds(), chance.stream("kind"));
        Decoy.Shown shown = decoy.drawnFrom(chance.stream(decoy.kind()));
        return spoiled(
                new SeedCase(
                        seed,
                        decoy.kind(),
                        Optional.empty(),
                        shown.lamp(),
                        shown.pin(),
                        Truth.nothing(),
                        ImpairmentChain.of()),
                chance);
    }

    private SeedCase played(Lesson lesson, long seed) {
        Scenario scenario = lesson.scenario();
        Recording recording = lesson.simulation().run(seed);
        SeedCase sent = new SeedCase(
                seed,
                scenario.id(),
                Optional.of(scenario.format()),
                recording.lamp(),
                recording.pin(),
                recording.truth(),
                ImpairmentChain.of());
        return spoiled(sent, Chance.of(seed).stream(STREAM).stream("scenario/" + scenario.id()));
    }

    private SeedCase message(MessageRecipe recipe, long seed) {
        Chance chance = Chance.of(seed).stream(STREAM).stream("message");
        MessageRecipe.Drawn drawn = recipe.drawnFrom(chance);
        FlashFormat format = drawn.format();
        Transmission sent = drawn.sent();
        Truth truth = new Truth(format.id(), sent.codes(), sent.groups());
        return spoiled(
                new SeedCase(
                        seed,
                        "random message",
                        Optional.of(format),
                        sent.lamp(),
                        sent.wire(),
                        truth,
                        ImpairmentChain.of()),
                chance);
    }

    /** The sender has one clock, so strengths are settled once; what happens at the lamp does not happen at the pin. */
    private SeedCase spoiled(SeedCase sent, Chance chance) {
        Chance channel = chance.stream("channel");
        ImpairmentChain chain = set.channel().drawnFrom(channel);
        PulseTrain lamp = chain.applyTo(sent.lamp(), channel.stream("lamp"));
        PulseTrain pin = chain.applyTo(sent.pin(), channel.stream("pin"));
        return new SeedCase(sent.seed(), sent.origin(), sent.format(), lamp, pin, sent.truth(), chain);
    }
}
