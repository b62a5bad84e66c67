package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static telltally.decoder.capture.Boxes.box;
import static telltally.decoder.capture.Boxes.descriptions;
import static telltally.decoder.capture.Boxes.handler;
import static telltally.decoder.capture.Boxes.joined;
import static telltally.decoder.capture.Boxes.large;
import static telltally.decoder.capture.Boxes.letters;
import static telltally.decoder.capture.Boxes.sized;
import static telltally.decoder.capture.Boxes.track;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ClipContainerTest {
    private static final byte[] PICTURES = track("vide", "avc1");

    @Test
    void the_coding_is_that_of_the_picture_track() {
        byte[] clip = joined(box("ftyp", letters("isom")), box("moov", track("soun", "mp4a"), PICTURES));
        assertThat(ClipContainer.coding(clip)).contains("avc1");
    }

    @Test
    void of_two_picture_tracks_the_first_counts() {
        assertThat(ClipContainer.coding(box("moov", track("vide", "hvc1"), PICTURES)))
                .contains("hvc1");
    }

    @Test
    void a_clip_without_a_picture_track_has_no_coding() {
        assertThat(ClipContainer.coding(box("moov", track("soun", "mp4a")))).isEmpty();
        assertThat(ClipContainer.coding(new byte[0])).isEmpty();
    }

    @Test
    void boxes_that_hold_no_boxes_are_passed_over() {
        assertThat(ClipContainer.coding(box("mdat", PICTURES))).isEmpty();
    }

    @Test
    void what_comes_behind_a_box_is_read_even_if_the_box_is_empty() {
        byte[] moov = box("moov", PICTURES);
        assertThat(ClipContainer.coding(joined(box("free", new byte[5]), moov))).contains("avc1");
        assertThat(ClipContainer.coding(joined(box("free"), moov))).contains("avc1");
    }

    /** QuickTime names the medium first, then, in another such box, how its data are referred to. */
    @Test
    void a_second_handler_of_data_does_not_hide_the_medium() {
        for (String data : new String[] {"alis", "url "}) {
            byte[] minf = box("minf", handler(data), box("stbl", descriptions("avc1")));
            assertThat(ClipContainer.coding(box("trak", box("mdia", handler("vide"), minf))))
                    .contains("avc1");
        }
    }

    @Test
    void a_size_in_64_bits_is_read() {
        byte[] moov = large(16 + PICTURES.length, "moov", PICTURES);
        assertThat(ClipContainer.coding(joined(large(16, "free", new byte[0]), moov)))
                .contains("avc1");
    }

    @Test
    void a_size_of_0_reaches_to_the_end() {
        assertThat(ClipContainer.coding(sized(0, "moov", PICTURES))).contains("avc1");
    }

    @Test
    void a_box_that_was_cut_off_ends_with_the_file() {
        assertThat(ClipContainer.coding(sized(5000, "moov", PICTURES))).contains("avc1");
        // Sizes have no sign.
        assertThat(ClipContainer.coding(sized(-16, "moov", PICTURES))).contains("avc1");
    }

    @Test
    void a_size_smaller_than_size_and_letters_is_no_box() {
        byte[] moov = box("moov", PICTURES);
        assertThat(ClipContainer.coding(joined(sized(7, "free", new byte[0]), moov)))
                .isEmpty();
        assertThat(ClipContainer.coding(joined(large(15, "free", new byte[0]), moov)))
                .isEmpty();
        assertThat(ClipContainer.coding(sized(1, "free", new byte[7]))).isEmpty();
    }

    @Test
    void a_handler_or_a_description_that_is_too_short_says_nothing() {
        byte[] shortHandler = box("hdlr", new byte[8], letters("vid"));
        byte[] shortDescription = box("stsd", new byte[12], letters("avc"));
        assertThat(ClipContainer.coding(track(shortHandler, descriptions("avc1"))))
                .isEmpty();
        assertThat(ClipContainer.coding(track(handler("vide"), shortDescription)))
                .isEmpty();
    }

    @Test
    void no_piece_of_a_clip_raises_an_exception() {
        byte[] clip = joined(box("ftyp", letters("isom")), box("moov", track("soun", "mp4a"), PICTURES));
        for (int length = 0; length < clip.length; length++) {
            // The last byte is that of the four letters.
            assertThat(ClipContainer.coding(Arrays.copyOf(clip, length))).isEmpty();
        }
    }
}
