package telltally.decoder.capture;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Reason;

/** Which clips are read, and what a user with another one can do. */
final class ClipCoding {
    private static final String WHAT_WORKS =
            "H.264 in MP4 or MOV is read: set the phone's camera to its most compatible format, or convert the clip";

    private ClipCoding() {}

    /** Nothing for a clip that is read. */
    static Optional<NoPulses> refusal(byte[] bytes) {
        Optional<String> coding = ClipContainer.coding(bytes);
        if (coding.isPresent()) {
            String name = name(coding.get());
            return name.equals("H.264") ? Optional.empty() : refusal(Reason.UNREADABLE_CODING, "the clip is " + name);
        }
        return refusal(Reason.NO_CLIP, container(bytes));
    }

    private static Optional<NoPulses> refusal(Reason reason, String what) {
        return Optional.of(new NoPulses(reason, what + "; " + WHAT_WORKS));
    }

    private static String name(String coding) {
        return switch (coding) {
            case "avc1", "avc3" -> "H.264";
            case "hvc1", "hev1", "dvh1", "dvhe" -> "HEVC (H.265)";
            case "av01" -> "AV1";
            case "vp08", "vp09" -> "VP8 or VP9";
            case "mp4v", "s263" -> "MPEG-4 part 2 or H.263";
            case "jpeg", "mjpa", "mjpb" -> "motion JPEG";
            default -> "coded as \"" + printable(coding) + "\"";
        };
    }

    private static String printable(String coding) {
        return coding.replaceAll("[^ -~]", "?");
    }

    private static String container(byte[] bytes) {
        if (bytes.length >= 4 && bytes[0] == 0x1a && bytes[1] == 0x45 && (bytes[2] & 0xff) == 0xdf) {
            return "the clip is WebM or Matroska";
        }
        if (bytes.length >= 12 && new String(bytes, 8, 4, StandardCharsets.ISO_8859_1).equals("AVI ")) {
            return "the clip is AVI";
        }
        return "this is no MP4 or MOV clip with a picture track";
    }
}
