package telltally.decoder.capture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/**
 * How a clip's pictures are coded, as its boxes say: size, four letters, content, boxes within boxes (ISO/IEC 14496-12,
 * clauses 4.2, 8.4.3 and 8.5.2). MOV is alike.
 */
final class ClipContainer {
    private static final Set<String> WITHIN = Set.of("moov", "trak", "mdia", "minf", "stbl");
    private static final int HANDLER_TYPE_AT = 8;
    private static final int FIRST_ENTRY_TYPE_AT = 12;

    private String handler = "";
    private String coding = "";

    private ClipContainer() {}

    /** Four letters, such as {@code avc1}; empty if there is no picture track or these are no such boxes. */
    static Optional<String> coding(byte[] bytes) {
        ClipContainer container = new ClipContainer();
        container.look(ByteBuffer.wrap(bytes));
        return container.coding.isEmpty() ? Optional.empty() : Optional.of(container.coding);
    }

    private void look(ByteBuffer boxes) {
        while (boxes.remaining() >= 8 && coding.isEmpty()) {
            int start = boxes.position();
            long size = boxes.getInt() & 0xffffffffL;
            String type = fourLetters(boxes, boxes.position());
            boxes.position(boxes.position() + 4);
            if (size == 1 && boxes.remaining() >= 8) {
                size = boxes.getLong();
            }
            long left = boxes.limit() - (long) start;
            // 0 is "to the end"; a box that was cut off ends with the file.
            long length = size == 0 || size > left ? left : size;
            if (length < boxes.position() - start) {
                return;
            }
            int end = start + (int) length;
            ByteBuffer content = boxes.slice(boxes.position(), end - boxes.position());
            boxes.position(end);
            take(type, content);
        }
    }

    private void take(String type, ByteBuffer content) {
        if (WITHIN.contains(type)) {
            look(content);
        } else if (type.equals("hdlr") && content.limit() >= HANDLER_TYPE_AT + 4) {
            String found = fourLetters(content, HANDLER_TYPE_AT);
            // MOV has a second handler, of data, behind the one of the medium.
            handler = found.equals("alis") || found.equals("url ") ? handler : found;
        } else if (type.equals("stsd") && handler.equals("vide") && content.limit() >= FIRST_ENTRY_TYPE_AT + 4) {
            coding = fourLetters(content, FIRST_ENTRY_TYPE_AT);
        }
    }

    private static String fourLetters(ByteBuffer bytes, int at) {
        byte[] letters = new byte[4];
        bytes.get(at, letters);
        return new String(letters, StandardCharsets.ISO_8859_1);
    }
}
