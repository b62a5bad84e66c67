package telltally.simulator.recording;

import telltally.simulator.signal.PulseTrain;

/**
 * What a simulation leaves.
 *
 * @param scenarioId the lesson it was made from
 * @param lamp what the lamp shows
 * @param pin the self-test output; level 1 is pulled low, lamp lit
 */
public record Recording(
        String scenarioId, long seed, int generatorVersion, PulseTrain lamp, PulseTrain pin, Truth truth) {}
