package telltally.simulator.trace;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import telltally.simulator.document.ProblemException;

/** Sound as RIFF WAVE: PCM of 8, 16, 24 or 32 bits and 32-bit floating point read, mono PCM of 8 or 16 bits written. */
public final class Wav {
    private static final int HEADER_BYTES = 44;

    private Wav() {}

    /**
     * Reads the first channel.
     *
     * @param name the file's, as the user named it
     * @throws ProblemException as {@link #read(String, byte[], int)} does
     */
    public static Sound read(String name, byte[] bytes) throws ProblemException {
        return read(name, bytes, 1);
    }

    /**
     * Reads one channel. Chunks of other kinds are passed over; where the file was cut off, what is there is read.
     *
     * @param name the file's, as the user named it
     * @param channel counted from 1
     * @throws ProblemException if the bytes are no such sound, or have no such channel; the text says at which byte
     */
    public static Sound read(String name, byte[] bytes, int channel) throws ProblemException {
        return new WavReader(name, bytes).read(channel);
    }

    /**
     * The bytes of a file: a header of 44, then the samples, rounded to the nearest step and limited to what the steps
     * reach, which is -1 to one step below 1.
     *
     * @param bits 8 (unsigned) or 16 (signed)
     * @throws IllegalArgumentException if bits is neither
     */
    public static byte[] bytes(Sound sound, int bits) {
        if (bits != 8 && bits != 16) {
            throw new IllegalArgumentException("8 or 16 bits are written, not " + bits);
        }
        int width = bits / 8;
        int dataBytes = Math.multiplyExact(sound.size(), width);
        int padBytes = dataBytes % 2;
        ByteBuffer out = ByteBuffer.allocate(Math.addExact(HEADER_BYTES + padBytes, dataBytes));
        out.order(ByteOrder.LITTLE_ENDIAN);
        out.put(ascii("RIFF")).putInt(out.capacity() - 8).put(ascii("WAVE"));
        out.put(ascii("fmt ")).putInt(16).putShort((short) 1).putShort((short) 1);
        out.putInt(sound.sampleRateHz()).putInt(sound.sampleRateHz() * width);
        out.putShort((short) width).putShort((short) bits);
        out.put(ascii("data")).putInt(dataBytes);
        for (int i = 0; i < sound.size(); i++) {
            int step = step(sound.sample(i), bits);
            if (bits == 8) {
                out.put((byte) (step + 128));
            } else {
                out.putShort((short) step);
            }
        }
        // An odd chunk is followed by one byte that its own size leaves out; the buffer holds 0 there.
        return out.array();
    }

    private static int step(float sample, int bits) {
        int full = 1 << (bits - 1);
        return Math.max(-full, Math.min(full - 1, Math.round(sample * full)));
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
