package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Reason;

class ClipCodingTest {
    private static final byte[] WEBM = {0x1a, 0x45, (byte) 0xdf, (byte) 0xa3};

    private static NoPulses refused(byte[] bytes) {
        return ClipCoding.refusal(bytes).orElseThrow();
    }

    private static String what(byte[] bytes) {
        NoPulses refused = refused(bytes);
        assertThat(refused.reason()).isEqualTo(Reason.NO_CLIP);
        assertThat(refused.text())
                .endsWith("; H.264 in MP4 or MOV is read: set the phone's camera to its most compatible format, "
                        + "or convert the clip");
        return refused.text().substring(0, refused.text().indexOf(';'));
    }

    @Test
    void h264_is_read() {
        assertThat(ClipCoding.refusal(Boxes.box("moov", Boxes.track("vide", "avc1"))))
                .isEmpty();
        assertThat(ClipCoding.refusal(Boxes.box("moov", Boxes.track("vide", "avc3"))))
                .isEmpty();
    }

    /** Names of codings as registered at the MP4 registration authority (mp4ra.org) and in QuickTime, from memory. */
    @ParameterizedTest
    @CsvSource({
        "hvc1,HEVC (H.265)",
        "hev1,HEVC (H.265)",
        "dvh1,HEVC (H.265)",
        "av01,AV1",
        "vp09,VP8 or VP9",
        "mp4v,MPEG-4 part 2 or H.263",
        "jpeg,motion JPEG",
        "zz\u0001\u00e9,'coded as \"zz??\"'"
    })
    void another_coding_is_named(String letters, String name) {
        NoPulses refused = refused(Boxes.box("moov", Boxes.track("vide", letters)));
        assertThat(refused.reason()).isEqualTo(Reason.UNREADABLE_CODING);
        assertThat(refused.text()).startsWith("the clip is " + name + "; H.264 in MP4 or MOV is read: ");
    }

    /** The first bytes of EBML (RFC 8794, section 11.2.1), with which both begin. */
    @Test
    void webm_and_matroska_are_known_by_their_first_bytes() {
        assertThat(what(WEBM)).isEqualTo("the clip is WebM or Matroska");
        for (int i = 0; i < 3; i++) {
            byte[] other = WEBM.clone();
            other[i]++;
            assertThat(what(other)).isEqualTo("this is no MP4 or MOV clip with a picture track");
        }
        assertThat(what(Arrays.copyOf(WEBM, 3))).isEqualTo("this is no MP4 or MOV clip with a picture track");
    }

    @Test
    void avi_is_known_by_its_letters_behind_the_first_eight_bytes() {
        assertThat(what(Boxes.letters("RIFF1234AVI "))).isEqualTo("the clip is AVI");
        assertThat(what(Boxes.letters("RIFF1234WAVE"))).isEqualTo("this is no MP4 or MOV clip with a picture track");
        assertThat(what(Boxes.letters("RIFF1234AVI"))).isEqualTo("this is no MP4 or MOV clip with a picture track");
    }
}
