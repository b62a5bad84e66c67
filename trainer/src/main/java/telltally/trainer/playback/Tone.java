package telltally.trainer.playback;

import telltally.simulator.signal.PulseTrain;

/**
 * A pulse train as sound: a steady tone while it is lit. The tone swells and fades within a few milliseconds, because a
 * hard edge would click, and clicks are counted too.
 */
final class Tone {
    static final int SAMPLE_RATE = 44_100;

    private static final int RAMP_SAMPLES = SAMPLE_RATE * 5 / 1000;

    private final PulseTrain pulses;
    private final Voice voice;
    private int swell;

    Tone(PulseTrain pulses, Voice voice) {
        this.pulses = pulses;
        this.voice = voice;
    }

    /** One sample, from -32768 to 32767, for an instant of the train; call for one after the other. */
    short sample(long atNanos) {
        boolean lit = atNanos >= 0 && atNanos < pulses.endNanos() && pulses.litAt(atNanos);
        swell = lit ? Math.min(RAMP_SAMPLES, swell + 1) : Math.max(0, swell - 1);
        if (swell == 0) {
            return 0;
        }
        double turns = (double) atNanos * voice.hertz() / 1e9;
        double wave = StrictMath.sin(2 * StrictMath.PI * (turns - StrictMath.floor(turns)));
        return (short) StrictMath.round(Short.MAX_VALUE * voice.loudness() * swell / RAMP_SAMPLES * wave);
    }

    boolean silent() {
        return swell == 0;
    }
}
