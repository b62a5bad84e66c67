package telltally.trainer.playback;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Where sound goes. */
interface SoundLine {
    /** Takes a chunk of the feed, waiting until there is room for it. */
    void write(byte[] chunk);

    /** Samples that were written and are not heard yet. */
    int queuedSamples();

    void close();

    /** Gives a line that is open and running. */
    interface Opener {
        /**
         * @throws LineUnavailableException if somebody else has the device
         * @throws IllegalArgumentException if there is no device at all: that is how the Java library tells it
         */
        SoundLine open() throws LineUnavailableException;
    }

    /** The usual output of this computer, with as little sound waiting in it as runs smoothly. */
    static SoundLine usual() throws LineUnavailableException {
        AudioFormat format = new AudioFormat(Tone.SAMPLE_RATE, 16, 1, true, false);
        SourceDataLine line = AudioSystem.getSourceDataLine(format);
        line.open(format, 2 * 5 * SoundFeed.CHUNK_SAMPLES);
        line.start();
        return new SoundLine() {
            @Override
            public void write(byte[] chunk) {
                line.write(chunk, 0, chunk.length);
            }

            @Override
            public int queuedSamples() {
                return (line.getBufferSize() - line.available()) / 2;
            }

            @Override
            public void close() {
                line.stop();
                line.close();
            }
        };
    }
}
