package telltally.simulator.trace;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** Reads RIFF WAVE chunk by chunk. Problems say at which byte, counted from 0, since there are no lines. */
final class WavReader {
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    /** The encoding is then the first two bytes of a longer identifier. */
    private static final int EXTENSIBLE = 0xFFFE;

    private static final int RIFF_BYTES = 12;
    private static final int CHUNK_BYTES = 8;
    private static final int FORMAT_BYTES = 16;
    private static final int EXTENDED_BYTES = 26;
    private static final int SUBFORMAT = 24;

    private final String name;
    private final ByteBuffer bytes;

    /** Where the contents of the two chunks begin; 0 until they were found. */
    private int formatAt;

    private int formatBytes;
    private int dataAt;
    private int dataBytes;

    WavReader(String name, byte[] bytes) {
        this.name = name;
        this.bytes = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    Sound read(int channel) throws ProblemException {
        findChunks();
        int channels = unsigned(formatAt + 2);
        int sampleRateHz = sampleRateHz();
        int encoding = encoding();
        int bits = unsigned(formatAt + 14);
        boolean readable = encoding == PCM ? bits == 8 || bits == 16 || bits == 24 || bits == 32 : bits == 32;
        if (!readable) {
            String expected = encoding == PCM ? "8, 16, 24 or 32" : "32 for floating point";
            throw problem(formatAt + 14, "has " + bits + " bits a sample; expected " + expected);
        }
        int frameBytes = channels * bits / 8;
        if (channels == 0 || unsigned(formatAt + 12) != frameBytes) {
            throw problem(
                    formatAt + 12,
                    "has frames of " + unsigned(formatAt + 12) + " bytes; expected those of " + channels
                            + " channels of " + bits + " bits");
        }
        if (channel < 1) {
            throw problem(formatAt + 2, "has " + channels + " channels; expected one counted from 1, not " + channel);
        }
        if (channel > channels) {
            throw problem(formatAt + 2, "has " + channels + " channels; expected at least " + channel);
        }
        return Sound.of(sampleRateHz, samples(frameBytes, (channel - 1) * bits / 8, encoding, bits));
    }

    private void findChunks() throws ProblemException {
        if (bytes.limit() < RIFF_BYTES || !tag(0).equals("RIFF") || !tag(8).equals("WAVE")) {
            throw problem(0, "is no RIFF WAVE file; expected it to begin with RIFF, four bytes of size, WAVE");
        }
        long at = RIFF_BYTES;
        while (at + CHUNK_BYTES <= bytes.limit() && (formatAt == 0 || dataAt == 0)) {
            int content = (int) at + CHUNK_BYTES;
            long size = bytes.getInt((int) at + 4) & 0xFFFFFFFFL;
            int there = (int) Math.min(size, bytes.limit() - content);
            String tag = tag((int) at);
            if (tag.equals("fmt ") && formatAt == 0) {
                formatAt = content;
                formatBytes = there;
            } else if (tag.equals("data") && dataAt == 0) {
                dataAt = content;
                dataBytes = there;
            }
            at = content + size + size % 2;
        }
        if (formatAt == 0) {
            throw problem(RIFF_BYTES, "has no format; expected a chunk called \"fmt \"");
        }
        if (formatBytes < FORMAT_BYTES) {
            throw problem(formatAt, "has a format of " + formatBytes + " bytes; expected at least " + FORMAT_BYTES);
        }
        if (dataAt == 0) {
            throw problem(bytes.limit(), "has no sound; expected a chunk called \"data\"");
        }
    }

    private int sampleRateHz() throws ProblemException {
        long sampleRateHz = bytes.getInt(formatAt + 4) & 0xFFFFFFFFL;
        if (sampleRateHz < 1 || sampleRateHz > Sound.MOST_HZ) {
            throw problem(
                    formatAt + 4, "has a sampling rate of " + sampleRateHz + " Hz; expected 1 to " + Sound.MOST_HZ);
        }
        return (int) sampleRateHz;
    }

    private int encoding() throws ProblemException {
        int tag = unsigned(formatAt);
        int encoding = tag == EXTENSIBLE && formatBytes >= EXTENDED_BYTES ? unsigned(formatAt + SUBFORMAT) : tag;
        if (encoding != PCM && encoding != FLOAT) {
            throw problem(formatAt, "is encoded by method " + encoding + "; expected 1 (PCM) or 3 (floating point)");
        }
        return encoding;
    }

    private float[] samples(int frameBytes, int offset, int encoding, int bits) throws ProblemException {
        // What is there counts, not what the header says: a cut-off file claims more than it has.
        float[] samples = new float[dataBytes / frameBytes];
        if (samples.length == 0) {
            throw problem(dataAt, "has no samples; expected at least one");
        }
        for (int i = 0; i < samples.length; i++) {
            int at = dataAt + i * frameBytes + offset;
            samples[i] = encoding == FLOAT ? bytes.getFloat(at) : pcm(at, bits);
            if (!Float.isFinite(samples[i])) {
                throw problem(at, "has a sample that is no number; expected finite ones only");
            }
        }
        return samples;
    }

    private float pcm(int at, int bits) {
        return switch (bits) {
            case 8 -> ((bytes.get(at) & 0xFF) - 128) * 0x1p-7f;
            case 16 -> bytes.getShort(at) * 0x1p-15f;
            case 24 -> ((bytes.get(at + 2) << 16) | unsigned(at)) * 0x1p-23f;
            default -> bytes.getInt(at) * 0x1p-31f;
        };
    }

    private String tag(int at) {
        return new String(bytes.array(), at, 4, StandardCharsets.ISO_8859_1);
    }

    private int unsigned(int at) {
        return bytes.getShort(at) & 0xFFFF;
    }

    private ProblemException problem(int atByte, String text) {
        return new ProblemException(Problem.of(name, "at byte " + atByte + ": " + text));
    }
}
