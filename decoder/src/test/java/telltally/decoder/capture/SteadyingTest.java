package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import telltally.decoder.capture.Steadying.Shift;
import telltally.simulator.chance.Chance;

/** Pictures of 60 by 48 pixels: the reach, a sixth, is 10 to either side and 8 up or down. */
class SteadyingTest {
    private static final int WIDTH = 60;
    private static final int HEIGHT = 48;

    /** What lies before the camera, larger than the picture: strips of light and shade, as of a dash and a window. */
    private static final class Scene {
        private final int[] across = new int[200];
        private final int[] down = new int[200];

        Scene(long seed) {
            Chance chance = Chance.of(seed);
            Arrays.setAll(across, i -> chance.below(50));
            Arrays.setAll(down, i -> chance.below(50));
        }

        /** As it looks once it has moved to the right and downwards in the picture. */
        byte[] moved(int right, int down, int brighter) {
            byte[] luma = new byte[WIDTH * HEIGHT];
            for (int i = 0; i < luma.length; i++) {
                luma[i] = (byte) (across[100 + i % WIDTH - right] + this.down[100 + i / WIDTH - down] + brighter - 100);
            }
            return luma;
        }

        byte[] moved(int right, int down) {
            return moved(right, down, 0);
        }
    }

    private static final Scene SCENE = new Scene(1);

    private static Steadying steadying() {
        return new Steadying(WIDTH, HEIGHT);
    }

    @Test
    void the_first_picture_has_not_moved() {
        assertThat(steadying().next(SCENE.moved(0, 0))).isEqualTo(new Shift(0, 0));
    }

    @Test
    void a_move_is_seen_to_either_side_up_and_down_as_far_as_a_sixth_of_the_picture() {
        Steadying steadying = steadying();
        steadying.next(SCENE.moved(0, 0));
        assertThat(steadying.next(SCENE.moved(3, -2))).isEqualTo(new Shift(3, -2));
        assertThat(steadying.next(SCENE.moved(-1, 5))).isEqualTo(new Shift(-1, 5));
        assertThat(steadying.next(SCENE.moved(10, 8))).isEqualTo(new Shift(10, 8));
        assertThat(steadying.next(SCENE.moved(-10, -8))).isEqualTo(new Shift(-10, -8));
        assertThat(steadying.next(SCENE.moved(0, 0))).isEqualTo(new Shift(0, 0));
    }

    @Test
    void a_change_of_exposure_is_no_move_and_hides_none() {
        Steadying steadying = steadying();
        steadying.next(SCENE.moved(0, 0));
        assertThat(steadying.next(SCENE.moved(0, 0, 60))).isEqualTo(new Shift(0, 0));
        assertThat(steadying.next(SCENE.moved(4, -4, 60))).isEqualTo(new Shift(4, -4));
    }

    @Test
    void small_pictures_are_searched_three_pixels_far() {
        Steadying steadying = new Steadying(12, 12);
        byte[] first = new byte[144];
        byte[] second = new byte[144];
        int[] strips = {0, 50, 20, 90, 10, 70, 0, 40, 80, 10, 60, 30, 0, 90, 40};
        for (int i = 0; i < 144; i++) {
            first[i] = (byte) strips[i % 12 + 3];
            second[i] = (byte) strips[i % 12];
        }
        steadying.next(first);
        assertThat(steadying.next(second)).isEqualTo(new Shift(3, 0));
    }

    /**
     * A lamp of 4 by 4 pixels, so many steps brighter than a plain dash: over 48 rows it is 4 / 48 of that in the mean,
     * and six of the 40 places that are compared with the one 3 pixels before differ by that, six more by 4 / 13 of it,
     * since 13 columns are averaged for what is taken out. From a mean of 0.6 on it is a landmark: from 37 steps on, and
     * likewise from 40 on up and down.
     */
    @Test
    void a_faint_lamp_alone_is_no_landmark() {
        assertThat(lampMoved(35)).isEqualTo(new Shift(0, 0));
        assertThat(lampMoved(41)).isEqualTo(new Shift(3, 3));
    }

    private static Shift lampMoved(int steps) {
        Steadying steadying = steadying();
        steadying.next(lamp(28, 22, steps));
        return steadying.next(lamp(31, 25, steps));
    }

    private static byte[] lamp(int left, int top, int steps) {
        byte[] luma = new byte[WIDTH * HEIGHT];
        for (int i = 0; i < 16; i++) {
            luma[(top + i / 4) * WIDTH + left + i % 4] = (byte) steps;
        }
        return luma;
    }

    /** The first of the new scene is taken for a move or not; the mean, a tenth of each picture, then learns it. */
    @Test
    void what_is_seen_for_long_becomes_what_moves_are_measured_by() {
        Steadying steadying = steadying();
        steadying.next(SCENE.moved(0, 0));
        Scene other = new Scene(2);
        Shift rest = steadying.next(other.moved(0, 0));
        for (int i = 0; i < 40; i++) {
            rest = steadying.next(other.moved(0, 0));
        }
        int right = rest.right() > 0 ? -2 : 2;
        int down = rest.down() > 0 ? -3 : 3;
        assertThat(steadying.next(other.moved(right, down)))
                .isEqualTo(new Shift(rest.right() + right, rest.down() + down));
    }

    @Test
    void one_picture_of_something_else_is_not_enough_to_forget_the_scene() {
        Steadying steadying = steadying();
        steadying.next(SCENE.moved(0, 0));
        steadying.next(new Scene(2).moved(0, 0));
        assertThat(steadying.next(SCENE.moved(2, 1))).isEqualTo(new Shift(2, 1));
    }
}
