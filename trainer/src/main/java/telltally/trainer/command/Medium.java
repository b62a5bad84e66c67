package telltally.trainer.command;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What the first bytes of a file say that it is; what shows no signature is taken for text. */
enum Medium {
    TEXT(""),
    SOUND(""),
    CLIP(""),
    OTHER_SOUND("is a sound in a coding that is not read; record or convert it as WAV"),
    PICTURE("is a picture; what blinks takes a clip (H.264 in MP4 or MOV)"),
    PACKED("is packed; unpack it first");

    private static final int SECOND_BYTE_OF_SYNC = 0xe0;

    private final String refusal;

    Medium(String refusal) {
        this.refusal = refusal;
    }

    /** Why it is not read, and what to do; empty for what is. */
    Optional<String> refusal() {
        return Optional.of(refusal).filter(text -> !text.isEmpty());
    }

    static Medium of(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 12), StandardCharsets.ISO_8859_1);
        if (start.startsWith("RIFF")) {
            return start.startsWith("AVI ", 8) ? CLIP : SOUND;
        }
        if (isBox(start) || start.startsWith("\u001aE\u00df\u00a3")) {
            return start.startsWith("ftypM4A", 4) ? OTHER_SOUND : CLIP;
        }
        if (start.startsWith("PK\u0003\u0004") || start.startsWith("\u001f\u008b")) {
            return PACKED;
        }
        if (start.startsWith("\u0089PNG") || start.startsWith("\u00ff\u00d8\u00ff") || start.startsWith("GIF8")) {
            return PICTURE;
        }
        return isOtherSound(start) ? OTHER_SOUND : TEXT;
    }

    /** A box of ISO/IEC 14496-12 or of QuickTime that a clip may begin with: its size, then four letters. */
    private static boolean isBox(String start) {
        return start.length() >= 8
                && switch (start.substring(4, 8)) {
                    case "ftyp", "moov", "mdat", "wide", "skip", "free" -> start.charAt(0) == 0;
                    default -> false;
                };
    }

    private static boolean isOtherSound(String start) {
        boolean named = start.startsWith("ID3")
                || start.startsWith("OggS")
                || start.startsWith("fLaC")
                || start.startsWith("FORM")
                || start.startsWith("#!AMR");
        // Frames of MPEG sound begin with eleven bits set (ISO/IEC 11172-3, 2.4.2.3).
        return named
                || (start.length() > 1
                        && start.charAt(0) == 0xff
                        && (start.charAt(1) & SECOND_BYTE_OF_SYNC) == SECOND_BYTE_OF_SYNC
                        && start.charAt(1) != 0xfe
                        && start.charAt(1) != 0xff);
    }
}
