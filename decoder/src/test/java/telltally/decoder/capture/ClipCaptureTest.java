package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

class ClipCaptureTest {
    /** Exposure of a frame: 20 ms, during which the lamp may change. */
    private static final long EXPOSURE_NANOS = 20_000_000;

    private static final PulseTrain TRAIN = Trains.code34(1);

    private static byte[] lamp;
    private static ClipFrames frames;

    @BeforeAll
    static void film() {
        lamp = Clips.of(times(TRAIN.endNanos()), new Scene(TRAIN, 1));
        frames = ClipFrames.of(lamp);
    }

    /** About 25 frames a second, each up to 5 ms late, as phones take them. */
    private static long[] times(long endNanos) {
        Chance chance = Chance.of(7);
        long[] times = new long[(int) (endNanos * 25 / 1_000_000_000L)];
        for (int i = 1; i < times.length; i++) {
            times[i] = i * 40_000_000L + chance.below(50) * 100_000L;
        }
        return times;
    }

    /**
     * A dash with a lamp of 9 pixels, in a shaking hand, with noise, a window, someone walking by, slow exposure.
     *
     * @param unrest how much the hand shakes: 1 is up to three pixels
     */
    private record Scene(PulseTrain train, double unrest) implements Clips.Painter {
        @Override
        public int brightness(double second, int x, int y) {
            int sway = (int) Math.round(unrest * (2 * Math.sin(second * 5) + Math.sin(second * 11)));
            int px = x + sway;
            int py = y - sway;
            double exposure = 1 + 0.25 * Math.sin(second / 3);
            long mixed = (x + 1000L * y + 1_000_000L * Math.round(second * 1e4)) * 0x9E3779B97F4A7C15L;
            long grain = (mixed >>> 60) - 7;
            double light = 50 + 30 * Math.sin(px / 9.0) + (py < 30 && px > 110 ? 190 : 0);
            double walker = 20 * second - 60;
            if (second % 14 > 6 && Math.abs(px - walker % 160) < 15 && py > 80) {
                light = 20;
            }
            int dx = px - 52;
            int dy = py - 61;
            if (dx * dx + dy * dy <= 20) {
                light += 120 * litShare(second);
            }
            return (int) Math.round(light * exposure + grain);
        }

        private double litShare(double second) {
            long from = Math.round(second * 1e9);
            return (double) train.litNanosBetween(from, from + EXPOSURE_NANOS) / EXPOSURE_NANOS;
        }
    }

    @Test
    void a_lamp_in_a_shaking_hand_is_found_and_every_edge_with_it() {
        Pulses pulses = (Pulses) ClipCapture.of(lamp);
        // Half a frame of 40 ms, up to 5 ms late, and half of the exposure.
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.035);
        assertThat(pulses.remarks().get(0)).contains("% from the left");
    }

    @Test
    void the_grid_moves_with_a_hand_that_shakes_by_more_than_two_cells() {
        // Up to 18 of 160 pixels either way.
        byte[] restless = Clips.of(times(TRAIN.endNanos()), new Scene(TRAIN, 6));
        Pulses pulses = (Pulses) ClipCapture.of(restless);
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(0.035);
    }

    @Test
    void the_spot_is_where_the_lamp_is() {
        BlinkingSpot.Found spot = BlinkingSpot.in(frames).orElseThrow();
        int columns = Clips.WIDTH / 8;
        // The lamp's middle is at 52, 61, moved by the hand by up to three pixels: in cells of 8, 5 to 6 and 7 to 8.
        assertThat(spot.leader() % columns).isBetween(5, 6);
        assertThat(spot.leader() / columns).isBetween(6, 8);
    }

    @Test
    void frames_keep_their_own_times() {
        assertThat(frames.frames)
                .extracting(frame -> frame.atNanos / 100_000)
                .containsExactly(Arrays.stream(times(TRAIN.endNanos()))
                        .mapToObj(nanos -> nanos / 100_000)
                        .toArray(Long[]::new));
    }

    @Test
    void a_scene_without_a_lamp_does_not_blink() {
        byte[] still = Clips.of(times(5_000_000_000L), new Scene(PulseTrain.of(false, TRAIN.endNanos()), 1));
        assertThat(reason(still)).isEqualTo(Reason.NO_BLINKING);
    }

    @Test
    void a_clip_that_was_cut_off_is_told_without_an_exception() {
        CaptureResult cut = ClipCapture.of(Arrays.copyOf(lamp, lamp.length / 2));
        assertThat(((NoPulses) cut).reason()).isIn(Reason.NO_CLIP, Reason.DAMAGED_CLIP);
    }

    @Test
    void damage_within_the_pictures_raises_no_exception() {
        byte[] damaged = lamp.clone();
        Chance chance = Chance.of(3);
        for (int i = 0; i < 200; i++) {
            damaged[1000 + chance.below(damaged.length / 2)] = (byte) chance.below(256);
        }
        assertThat(ClipCapture.of(damaged)).isNotNull();
    }

    @Test
    void a_clip_in_another_coding_is_named_with_what_works() {
        byte[] hevc = lamp.clone();
        replace(hevc, "avc1", "hvc1");
        NoPulses refused = (NoPulses) ClipCapture.of(hevc);
        assertThat(refused.reason()).isEqualTo(Reason.UNREADABLE_CODING);
        assertThat(refused.text()).startsWith("the clip is HEVC (H.265); H.264 in MP4 or MOV is read: ");
    }

    @Test
    void a_webm_clip_is_named_too() {
        byte[] webm = ByteBuffer.allocate(100).putInt(0x1a45dfa3).array();
        NoPulses refused = (NoPulses) ClipCapture.of(webm);
        assertThat(refused.reason()).isEqualTo(Reason.NO_CLIP);
        assertThat(refused.text()).startsWith("the clip is WebM or Matroska; ");
    }

    @Test
    void what_is_no_clip_is_refused() {
        assertThat(reason(new byte[0])).isEqualTo(Reason.NO_CLIP);
        assertThat(reason(new byte[1000])).isEqualTo(Reason.NO_CLIP);
        assertThat(reason("time_s,value\n0,1\n".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Reason.NO_CLIP);
    }

    private static Reason reason(byte[] bytes) {
        return ((NoPulses) ClipCapture.of(bytes)).reason();
    }

    private static void replace(byte[] bytes, String from, String to) {
        String all = new String(bytes, StandardCharsets.ISO_8859_1);
        for (int at = all.indexOf(from); at >= 0; at = all.indexOf(from, at + 4)) {
            System.arraycopy(to.getBytes(StandardCharsets.ISO_8859_1), 0, bytes, at, 4);
        }
    }
}
