package telltally.trainer.playback;

/**
 * How a sounder sounds.
 *
 * @param hertz 100 to 4000
 * @param loudness share of full scale, from 0 to 1
 */
public record Voice(int hertz, double loudness) {
    public Voice {
        if (hertz < 100 || hertz > 4000) {
            throw new IllegalArgumentException("a pitch is between 100 and 4000 Hz, not " + hertz);
        }
        if (!(loudness >= 0 && loudness <= 1)) {
            throw new IllegalArgumentException("loudness is between 0 and 1, not " + loudness);
        }
    }

    /** Loud enough over a workshop radio, quiet enough for headphones. */
    public static Voice usual() {
        return new Voice(660, 0.4);
    }
}
