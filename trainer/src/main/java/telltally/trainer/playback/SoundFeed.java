package telltally.trainer.playback;

import telltally.simulator.signal.PulseTrain;

/**
 * Cuts the tone of a train into pieces for a sound line. Two clocks are at work, that of the program and that of the
 * sound card; the feed follows the program's, and mends the difference in silence where it can.
 */
final class SoundFeed {
    static final int CHUNK_SAMPLES = Tone.SAMPLE_RATE / 100;

    /** Beyond this the tone is moved while it sounds; a flash a fiftieth of a second off is still the same flash. */
    private static final long MOST_OFF_NANOS = 20_000_000L;

    private final Tone tone;
    private long sentSamples;
    private long baseNanos;
    private boolean begun;
    private long worstOffNanos;

    SoundFeed(PulseTrain pulses, Voice voice) {
        this.tone = new Tone(pulses, voice);
    }

    /**
     * Ten milliseconds of sound, 16 bit, little endian, one channel.
     *
     * @param positionNanos where in the train the clock is now
     * @param queuedSamples what the line still holds, to be heard before this
     */
    byte[] next(long positionNanos, int queuedSamples) {
        long heardNanos = positionNanos + nanos(queuedSamples);
        long offNanos = Math.abs(heardNanos - nextNanos());
        if (!begun || tone.silent() || offNanos > MOST_OFF_NANOS) {
            worstOffNanos = begun ? Math.max(worstOffNanos, tone.silent() ? 0 : offNanos) : 0;
            baseNanos = heardNanos;
            sentSamples = 0;
            begun = true;
        }
        byte[] chunk = new byte[2 * CHUNK_SAMPLES];
        for (int i = 0; i < CHUNK_SAMPLES; i++) {
            short sample = tone.sample(nextNanos());
            chunk[2 * i] = (byte) sample;
            chunk[2 * i + 1] = (byte) (sample >> 8);
            sentSamples++;
        }
        return chunk;
    }

    /** The farthest that a sounding tone was found from where it should have been. */
    long worstOffNanos() {
        return worstOffNanos;
    }

    private long nextNanos() {
        return baseNanos + nanos(sentSamples);
    }

    private static long nanos(long samples) {
        return samples * 1_000_000_000L / Tone.SAMPLE_RATE;
    }
}
