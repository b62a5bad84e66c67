package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** A lamp driven by the controller's output: lit level means current on. Draws nothing. */
public sealed interface Lamp extends Impairment permits FilamentLamp, Led {
    /** When an observer sees the lamp lit. */
    PulseTrain visible(PulseTrain drive);

    /**
     * The light, from the start, evenly spaced.
     *
     * @param samplesPerSecond from 0.001 to ten million
     * @return level relative to the lamp at its rated voltage, 0 dark
     */
    SampledSignal light(PulseTrain drive, double samplesPerSecond);

    @Override
    default PulseTrain applyTo(PulseTrain train, Chance chance) {
        return visible(train);
    }
}
