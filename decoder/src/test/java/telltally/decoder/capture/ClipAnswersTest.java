package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

/** What a clip's frames are answered with, once it is decoded. */
class ClipAnswersTest {
    private static ClipFrames still(int frames, boolean damaged) {
        return new ClipFrames(HandMadeFrames.frames(3, 3, frames, (column, row, frame) -> 50), 3, damaged);
    }

    private static ClipFrames lamp(boolean damaged) {
        return new ClipFrames(
                HandMadeFrames.frames(
                        3,
                        3,
                        70,
                        (column, row, frame) -> column == 1 && row == 1 ? HandMadeFrames.blinking(frame) : 50),
                3,
                damaged);
    }

    @Test
    void seven_pictures_are_too_few_and_eight_are_looked_at() {
        assertThat(ClipCapture.of(still(7, false)))
                .isEqualTo(new NoPulses(Reason.TOO_FEW_SAMPLES, "the clip has only 7 pictures"));
        assertThat(ClipCapture.of(still(8, false)))
                .isEqualTo(new NoPulses(Reason.NO_BLINKING, "nothing in the clip blinks"));
    }

    @Test
    void of_a_damaged_clip_it_is_told_how_much_can_be_read() {
        assertThat(ClipCapture.of(still(7, true)))
                .isEqualTo(
                        new NoPulses(Reason.DAMAGED_CLIP, "the clip is damaged: only 7 of its pictures can be read"));
    }

    @Test
    void a_clip_without_pictures_in_a_coding_that_is_read_is_damaged() {
        CaptureResult none = ClipCapture.of(Boxes.box("moov", Boxes.track("vide", "avc1")));
        assertThat(((NoPulses) none).reason()).isEqualTo(Reason.DAMAGED_CLIP);
        assertThat(((NoPulses) none).text()).contains("only 0 of its pictures");
    }

    @Test
    void what_is_no_clip_is_refused_before_it_is_decoded() {
        assertThat(((NoPulses) ClipCapture.of(new byte[9])).reason()).isEqualTo(Reason.NO_CLIP);
    }

    /** Lit from the tenth frame on and dark from the twentieth on: edges lie half-way from the frames before. */
    @Test
    void a_lamp_becomes_pulses() {
        long half = HandMadeFrames.STEP_NANOS / 2;
        long[] edges = new long[6];
        Arrays.setAll(edges, i -> 10L * (i + 1) * HandMadeFrames.STEP_NANOS - half);
        Pulses pulses = (Pulses) ClipCapture.of(lamp(false));
        assertThat(Trains.worstSeconds(PulseTrain.of(false, 70 * HandMadeFrames.STEP_NANOS, edges), pulses.train()))
                .isLessThan(1e-6);
        assertThat(pulses.remarks()).hasSize(1);
    }

    @Test
    void that_a_clip_is_damaged_is_told_with_its_pulses() {
        assertThat(((Pulses) ClipCapture.of(lamp(true))).remarks())
                .contains("the clip is damaged; only what could be read of it was used");
    }

    /**
     * Of eight columns and four rows, the sixth and the second: their middles lie at 5.5 / 8 and at 1.5 / 4 of the
     * picture, rounded down. Light in the four cells at its corners and noise in all make this cell the leader.
     */
    @Test
    void the_place_of_the_spot_is_told_in_shares_of_the_picture() {
        Chance chance = Chance.of(2);
        ClipFrames clip = HandMadeFrames.clip(
                8,
                4,
                150,
                (column, row, frame) -> 50
                        + chance.nextNormal()
                        + ((column == 4 || column == 6) && (row == 0 || row == 2)
                                ? HandMadeFrames.blinking(frame) / 5
                                : 0));
        Pulses pulses = (Pulses) ClipCapture.of(clip);
        assertThat(pulses.remarks().get(0))
                .isEqualTo("the spot that blinks was found 68 % from the left and 37 % from the top of the picture");
    }
}
