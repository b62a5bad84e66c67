package telltally.decoder.capture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Boxes of a clip, built by hand: size in 32 bits, four letters, content (ISO/IEC 14496-12, clause 4.2); what the handler
 * and the sample description hold is in clauses 8.4.3.2 and 8.5.2.2.
 */
final class Boxes {
    private Boxes() {}

    static byte[] box(String type, byte[]... contents) {
        byte[] content = joined(contents);
        return sized(8 + content.length, type, content);
    }

    /** With any number for its size. */
    static byte[] sized(int size, String type, byte[] content) {
        return ByteBuffer.allocate(8 + content.length)
                .putInt(size)
                .put(letters(type))
                .put(content)
                .array();
    }

    /** With its size in 64 bits behind the letters. */
    static byte[] large(long size, String type, byte[] content) {
        return ByteBuffer.allocate(16 + content.length)
                .putInt(1)
                .put(letters(type))
                .putLong(size)
                .put(content)
                .array();
    }

    /** Version, flags, 4 bytes without use, type. */
    static byte[] handler(String type) {
        return box("hdlr", new byte[8], letters(type));
    }

    /** Version, flags, count of entries, and of the first entry the size and the coding. */
    static byte[] descriptions(String coding) {
        return box("stsd", new byte[12], letters(coding));
    }

    static byte[] track(byte[] handler, byte[] descriptions) {
        return box("trak", box("mdia", handler, box("minf", box("stbl", descriptions))));
    }

    static byte[] track(String handler, String coding) {
        return track(handler(handler), descriptions(coding));
    }

    static byte[] joined(byte[]... parts) {
        int length = 0;
        for (byte[] part : parts) {
            length += part.length;
        }
        ByteBuffer all = ByteBuffer.allocate(length);
        for (byte[] part : parts) {
            all.put(part);
        }
        return all.array();
    }

    static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
