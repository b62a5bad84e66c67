package telltally.decoder.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;

/** From a clip of a blinking lamp (H.264 in MP4 or MOV) to pulses. */
public final class ClipCapture {
    private static final int FEWEST_FRAMES = 8;

    private ClipCapture() {}

    /** Every file is answered; none raises an exception. Decoding takes most of the time, about as long as the clip. */
    public static CaptureResult of(byte[] bytes) {
        Optional<NoPulses> refusal = ClipCoding.refusal(bytes);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        return of(ClipFrames.of(bytes));
    }

    static CaptureResult of(ClipFrames clip) {
        if (clip.frames.size() < FEWEST_FRAMES) {
            return clip.damaged
                    ? new NoPulses(
                            Reason.DAMAGED_CLIP,
                            "the clip is damaged: only " + clip.frames.size() + " of its pictures can be read")
                    : new NoPulses(Reason.TOO_FEW_SAMPLES, "the clip has only " + clip.frames.size() + " pictures");
        }
        return BlinkingSpot.in(clip)
                .map(spot -> pulses(clip, spot))
                .orElse(new NoPulses(Reason.NO_BLINKING, "nothing in the clip blinks"));
    }

    private static CaptureResult pulses(ClipFrames clip, BlinkingSpot.Found spot) {
        CaptureResult result = SampleCapture.of(spot.brightness(), Polarity.HIGH_IS_LIT);
        if (!(result instanceof Pulses pulses)) {
            return result;
        }
        List<String> remarks = new ArrayList<>();
        remarks.add("the spot that blinks was found " + where(clip, spot.leader()));
        if (clip.damaged) {
            remarks.add("the clip is damaged; only what could be read of it was used");
        }
        remarks.addAll(pulses.remarks());
        return new Pulses(pulses.train(), pulses.quality(), remarks);
    }

    private static String where(ClipFrames clip, int cell) {
        int columns = clip.columns;
        int rows = clip.frames.get(0).cells.length / columns;
        int across = percent(cell % columns, columns);
        int down = percent(cell / columns, rows);
        return across + " % from the left and " + down + " % from the top of the picture";
    }

    /** To the middle of a column or row. */
    private static int percent(int place, int of) {
        return (100 * place + 50) / of;
    }
}
