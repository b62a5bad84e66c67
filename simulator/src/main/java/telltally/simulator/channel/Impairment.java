package telltally.simulator.channel;

import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/**
 * One thing that spoils a pulse train between the controller and whoever reads it. Values: the same train and the same
 * stream of chance always give the same result. Where there is a strength that can be nothing, nothing gives the train
 * back equal; instruments (lamp, needle, camera, short taps) have their way with every train.
 */
public sealed interface Impairment
        permits CameraFrames,
                ClockDrift,
                ClockScale,
                ContactBounce,
                EarlyStop,
                GhostFlashes,
                Glare,
                Jitter,
                Lamp,
                LateStart,
                LooseContact,
                MeterNeedle,
                MissedFlashes,
                ShortTaps,
                TapAlong {
    /** The name of the kind, and of the stream it draws from in an {@link ImpairmentChain}. */
    String kind();

    /**
     * @param train what comes in; never changed
     * @param chance a stream of this impairment's own
     */
    PulseTrain applyTo(PulseTrain train, Chance chance);
}
