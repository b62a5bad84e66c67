package telltally.simulator.recording;

import java.util.List;
import java.util.Optional;
import telltally.simulator.selftest.BenchEvent;
import telltally.simulator.selftest.Debrief.Expectation;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * What a simulation leaves.
 *
 * @param scenarioId the lesson it was made from
 * @param lamp what the lamp shows
 * @param pin the self-test output; level 1 is pulled low, lamp lit
 * @param speedRpm crankshaft speed, a mean for each cycle; empty where no engine ran
 * @param benchEvents what happened on the bench; none where codes were given outright
 * @param expectation what a learner should find; empty where codes were given outright
 */
public record Recording(
        String scenarioId,
        long seed,
        int generatorVersion,
        PulseTrain lamp,
        PulseTrain pin,
        Truth truth,
        Optional<SampledSignal> speedRpm,
        List<BenchEvent> benchEvents,
        Optional<Expectation> expectation) {
    public Recording {
        benchEvents = List.copyOf(benchEvents);
    }

    /** A recording of codes that were given outright. */
    public Recording(String scenarioId, long seed, int generatorVersion, PulseTrain lamp, PulseTrain pin, Truth truth) {
        this(scenarioId, seed, generatorVersion, lamp, pin, truth, Optional.empty(), List.of(), Optional.empty());
    }
}
