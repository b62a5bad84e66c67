package telltally.simulator.channel;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** What is heard of a train: a tone while it is lit, or a relay at every change. */
public sealed interface Sounder permits RelayClick, Tone {
    /**
     * The sound from the start, evenly spaced, in -1 to 1.
     *
     * @param samplesPerSecond at least twice the frequency of the sound, or it is not the sound that comes out
     */
    SampledSignal sound(PulseTrain drive, double samplesPerSecond);
}
