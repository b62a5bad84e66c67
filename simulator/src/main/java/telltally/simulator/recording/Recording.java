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
 * @param lamp what the lamp shows to whoever watches, behind the lesson's channel
 * @param pin the self-test output; level 1 is pulled low, lamp lit
 * @param speedRpm crankshaft speed, a mean for each cycle; empty where no engine ran
 * @param benchEvents what happened on the bench; none where codes were given outright
 * @param expectation what a learner should find; empty where codes were given outright
 * @param batteryVolts what lamp and wire were supplied with
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
        Optional<Expectation> expectation,
        double batteryVolts) {
    /** Charged and at rest. Common practice, no source. */
    private static final double CHARGED_VOLTS = 12.6;

    public Recording {
        benchEvents = List.copyOf(benchEvents);
    }

    /** A recording of codes that were given outright. */
    public Recording(String scenarioId, long seed, int generatorVersion, PulseTrain lamp, PulseTrain pin, Truth truth) {
        this(
                scenarioId,
                seed,
                generatorVersion,
                lamp,
                pin,
                truth,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                CHARGED_VOLTS);
    }

    /** The same recording with another view of the lamp. */
    public Recording withLamp(PulseTrain seen) {
        return new Recording(
                scenarioId, seed, generatorVersion, seen, pin, truth, speedRpm, benchEvents, expectation, batteryVolts);
    }
}
