package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntBinaryOperator;
import java.util.stream.LongStream;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Rect;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

class ClipFramesTest {
    private static final Steadying.Shift STILL = new Steadying.Shift(0, 0);

    /** As the library stores it, less 128. */
    private static byte[] luma(int width, int height, IntBinaryOperator brightness) {
        byte[] luma = new byte[width * height];
        for (int i = 0; i < luma.length; i++) {
            luma[i] = (byte) (brightness.applyAsInt(i % width, i / width) - 128);
        }
        return luma;
    }

    private static Picture picture(int width, int height, IntBinaryOperator brightness) {
        Picture picture = Picture.create(width, height, ColorSpace.YUV420J);
        System.arraycopy(luma(width, height, brightness), 0, picture.getPlaneData(0), 0, width * height);
        return picture;
    }

    private static Picture plain(int brightness) {
        return picture(16, 16, (x, y) -> brightness);
    }

    private static ClipFrames.Waiting waiting(long... atNanos) {
        ClipFrames.Waiting waiting = new ClipFrames.Waiting();
        Arrays.stream(atNanos).forEach(each -> waiting.add(each, plain((int) each)));
        return waiting;
    }

    private static long[] times(ClipFrames.Waiting waiting) {
        return waiting.frames.stream().mapToLong(frame -> frame.atNanos).toArray();
    }

    @Test
    void pictures_are_put_in_the_order_of_their_times_with_what_they_show() {
        ClipFrames.Waiting waiting = waiting(10, 40, 20, 30);
        waiting.finish();
        assertThat(times(waiting)).containsExactly(10, 20, 30, 40);
        for (ClipFrames.Frame frame : waiting.frames) {
            assertThat(frame.cells).containsOnly((float) frame.atNanos);
        }
    }

    /** H.264, Annex A: at most 16 frames are kept for later; one is being decoded. */
    @Test
    void seventeen_pictures_may_go_ahead_of_an_earlier_one() {
        ClipFrames.Waiting waiting = waiting(LongStream.range(100, 117).toArray());
        assertThat(waiting.frames).isEmpty();
        waiting.add(50, plain(50));
        assertThat(times(waiting)).containsExactly(50);
        waiting.add(49, plain(49));
        waiting.add(200, plain(200));
        waiting.finish();
        // 49 came too late.
        assertThat(times(waiting))
                .containsExactly(LongStream.concat(
                                LongStream.of(50), LongStream.concat(LongStream.range(100, 117), LongStream.of(200)))
                        .toArray());
    }

    @Test
    void of_two_pictures_of_the_same_time_one_is_used() {
        ClipFrames.Waiting waiting = waiting(10, 20, 20, 30);
        waiting.finish();
        assertThat(times(waiting)).containsExactly(10, 20, 30);
    }

    @Test
    void pictures_of_another_size_than_the_first_are_left_out() {
        ClipFrames.Waiting waiting = waiting(10);
        waiting.add(20, picture(24, 16, (x, y) -> 9));
        waiting.add(30, picture(16, 24, (x, y) -> 9));
        waiting.add(40, plain(9));
        waiting.finish();
        assertThat(times(waiting)).containsExactly(10, 40);
    }

    @Test
    void what_is_cut_off_at_the_rims_does_not_count() {
        Picture picture = picture(32, 32, (x, y) -> x >= 6 && x < 22 && y >= 4 && y < 12 ? 10 * (1 + x / 14) : 250);
        picture.setCrop(new Rect(6, 4, 16, 8));
        ClipFrames.Waiting waiting = new ClipFrames.Waiting();
        waiting.add(0, picture);
        waiting.finish();
        assertThat(waiting.frames.get(0).cells).containsExactly(10, 20);
    }

    /** Noise without features on one scale would not tell where the picture went: blocks of 2 by 2 pixels. */
    @Test
    void the_grid_moves_with_the_picture() {
        Chance chance = Chance.of(8);
        int[] blocks = new int[60 * 60];
        Arrays.setAll(blocks, i -> chance.below(200));
        IntBinaryOperator scene = (x, y) -> blocks[(y + 20) / 2 * 60 + (x + 20) / 2];
        ClipFrames.Waiting waiting = new ClipFrames.Waiting();
        waiting.add(0, picture(64, 64, scene));
        waiting.add(1, picture(64, 64, (x, y) -> scene.applyAsInt(x - 4, y + 3)));
        waiting.finish();
        float[] first = waiting.frames.get(0).cells;
        float[] moved = waiting.frames.get(1).cells;
        for (int row = 1; row < 7; row++) {
            for (int column = 0; column < 7; column++) {
                assertThat(moved[row * 8 + column]).isEqualTo(first[row * 8 + column]);
            }
        }
    }

    @Test
    void a_cell_holds_the_mean_of_its_pixels_and_at_the_rim_of_those_that_are_there() {
        ClipFrames.Grid grid = new ClipFrames.Grid(20, 12);
        assertThat(grid.columns).isEqualTo(3);
        // Rising by 1 to the right and by 10 downwards: means lie half-way between the first pixel and the last.
        float[] cells = grid.brightness(luma(20, 12, (x, y) -> x + 10 * y), STILL);
        assertThat(cells).containsExactly(3.5f + 35, 11.5f + 35, 17.5f + 35, 3.5f + 95, 11.5f + 95, 17.5f + 95);
    }

    @Test
    void cells_that_moved_out_of_the_picture_hold_what_lies_next_to_them() {
        ClipFrames.Grid grid = new ClipFrames.Grid(16, 16);
        byte[] rising = luma(16, 16, (x, y) -> x + 10 * y);
        assertThat(grid.brightness(rising, new Steadying.Shift(10, -20))).containsExactly(12.5f, 15, 12.5f, 15);
        assertThat(grid.brightness(rising, new Steadying.Shift(-10, 20)))
                .containsExactly(150, 2.5f + 150, 150, 2.5f + 150);
    }

    /** In 1600 cells at most, of sides that are multiples of 8. */
    @Test
    void larger_pictures_have_larger_cells() {
        assertThat(cells(320, 320)).isEqualTo(40 * 40);
        assertThat(cells(328, 320)).isEqualTo(21 * 20);
        assertThat(cells(640, 480)).isEqualTo(40 * 30);
        assertThat(new ClipFrames.Grid(640, 480).columns).isEqualTo(40);
        // The root of 1920 * 1080 / 1600 is 36.
        assertThat(cells(1920, 1080)).isEqualTo(48 * 27);
    }

    private static int cells(int width, int height) {
        return new ClipFrames.Grid(width, height).brightness(new byte[width * height], STILL).length;
    }

    @Test
    void bytes_that_are_no_clip_are_damaged_and_hold_no_frame() {
        ClipFrames none = ClipFrames.of(new byte[100]);
        assertThat(none.damaged).isTrue();
        assertThat(none.frames).isEmpty();
    }
}
