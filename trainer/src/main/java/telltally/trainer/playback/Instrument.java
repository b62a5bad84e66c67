package telltally.trainer.playback;

import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.FilamentLamp;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.signal.PulseTrain;

/** Something that a learner watches in place of the controller's bare output. */
public sealed interface Instrument {
    /** What it shows of a train that drives it. */
    DisplaySignal showing(PulseTrain drive);

    /** At once at full light, at once dark. */
    record Diode() implements Instrument {
        @Override
        public DisplaySignal showing(PulseTrain drive) {
            return (fromNanos, toNanos) -> (double) drive.litNanosBetween(fromNanos, toNanos) / (toNanos - fromNanos);
        }
    }

    /**
     * A bulb, which takes time to warm up and to cool. Its light counts as 1 on a charged battery; on less it stays dimmer.
     *
     * @param supplyVolts what it gets while lit; at least 1
     */
    record Filament(Bulb bulb, double supplyVolts) implements Instrument {
        /** Charged and at rest. Common practice, no source. */
        private static final double CHARGED_VOLTS = 12.6;

        @Override
        public DisplaySignal showing(PulseTrain drive) {
            FilamentLamp lamp = FilamentLamp.of(bulb, supplyVolts);
            double whole = supplyVolts == CHARGED_VOLTS
                    ? lamp.steadyLight()
                    : FilamentLamp.of(bulb, CHARGED_VOLTS).steadyLight();
            return new SampledDisplay(lamp.light(drive, SampledDisplay.SAMPLES_PER_SECOND), whole);
        }
    }

    /** A meter in the lamp's place. */
    record Needle(MeterNeedle needle) implements Instrument {
        @Override
        public DisplaySignal showing(PulseTrain drive) {
            return new SampledDisplay(needle.deflection(drive, SampledDisplay.SAMPLES_PER_SECOND), 1);
        }
    }
}
