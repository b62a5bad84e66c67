package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import telltally.simulator.chance.Chance;

class BlinkingSpotTest {
    private static final int FRAMES = 150;
    private static final int ROWS = 3;
    private static final int COLUMNS = 9;

    /** One lamp in the middle of three cells by three. */
    private static Optional<BlinkingSpot.Found> lamp(IntToDoubleFunction brightness) {
        return BlinkingSpot.in(HandMadeFrames.clip(
                3,
                3,
                FRAMES,
                (column, row, frame) -> 50 + (column == 1 && row == 1 ? brightness.applyAsDouble(frame) : 0)));
    }

    /** Whether the left one of two lamps, so far apart that no cell is next to both, leads. */
    private static boolean leftLeads(IntToDoubleFunction left, IntToDoubleFunction right) {
        ClipFrames clip = HandMadeFrames.clip(
                COLUMNS,
                ROWS,
                FRAMES,
                (column, row, frame) -> 50
                        + (row != 1
                                ? 0
                                : column == 1
                                        ? left.applyAsDouble(frame)
                                        : column == 7 ? right.applyAsDouble(frame) : 0));
        int column = BlinkingSpot.in(clip).orElseThrow().leader() % COLUMNS;
        assertThat(column <= 2 || column >= 6).isTrue();
        return column <= 2;
    }

    /** Either way round, so that the order of the cells does not decide. */
    private static void assertLeads(IntToDoubleFunction better, IntToDoubleFunction worse) {
        assertThat(leftLeads(better, worse)).isTrue();
        assertThat(leftLeads(worse, better)).isFalse();
    }

    /** From edge to edge by turns, dark at first. */
    private static IntToDoubleFunction edges(int... frames) {
        return frame -> IntStream.of(frames).filter(edge -> edge <= frame).count() % 2 == 1 ? 40 : 0;
    }

    /** Whether two cells touch, at least at a corner, or are the same. */
    private static boolean near(int columns, int a, int b) {
        return Math.abs(a % columns - b % columns) <= 1 && Math.abs(a / columns - b / columns) <= 1;
    }

    @Test
    void a_spot_is_taken_with_all_eight_cells_around_it() {
        Chance chance = Chance.of(1);
        double[] noise = new double[9 * FRAMES];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = chance.nextNormal();
        }
        // Light in the four corners only: all of it is near the middle cell alone.
        ClipFrames clip = HandMadeFrames.clip(
                3,
                3,
                FRAMES,
                (column, row, frame) -> 50
                        + noise[9 * frame + 3 * row + column]
                        + (column != 1 && row != 1 ? HandMadeFrames.blinking(frame) / 5 : 0));
        BlinkingSpot.Found found = BlinkingSpot.in(clip).orElseThrow();
        assertThat(found.leader()).isEqualTo(4);
        assertThat(found.cells()).isEqualTo(9);
        for (int frame = 0; frame < FRAMES; frame++) {
            double sum = 0;
            for (float cell : clip.frames.get(frame).cells) {
                sum += cell;
            }
            assertThat(found.brightness().value(frame)).isEqualTo(sum);
            assertThat(found.brightness().atNanos(frame)).isEqualTo(frame * 40_000_000L);
        }
    }

    @Test
    void the_cells_at_the_rim_have_fewer_around_them_and_none_of_the_next_row() {
        for (int lamp = 0; lamp < 12; lamp++) {
            int lit = lamp;
            ClipFrames clip = HandMadeFrames.clip(4, 3, FRAMES, (column, row, frame) -> {
                int cell = 4 * row + column;
                return 10 * cell + (cell == lit ? HandMadeFrames.blinking(frame) : 0);
            });
            BlinkingSpot.Found found = BlinkingSpot.in(clip).orElseThrow();
            int leader = found.leader();
            assertThat(near(4, leader, lamp)).isTrue();
            int[] around =
                    IntStream.range(0, 12).filter(cell -> near(4, leader, cell)).toArray();
            assertThat(found.cells()).isEqualTo(around.length);
            // In the first frame all is dark.
            assertThat(found.brightness().value(0))
                    .isEqualTo(10 * IntStream.of(around).sum());
            assertThat(found.brightness().value(10))
                    .isEqualTo(10 * IntStream.of(around).sum() + 40);
        }
    }

    /** The fewer others a cell is taken with, the less noise: the one in the corner with three of them. */
    @Test
    void in_even_noise_a_lamp_in_a_corner_leads_by_its_own_cell() {
        Chance chance = Chance.of(4);
        ClipFrames clip = HandMadeFrames.clip(
                3,
                3,
                FRAMES,
                (column, row, frame) ->
                        50 + 3 * chance.nextNormal() + (column == 0 && row == 2 ? HandMadeFrames.blinking(frame) : 0));
        assertThat(BlinkingSpot.in(clip).orElseThrow().leader()).isEqualTo(6);
    }

    /** Pearson's correlation by a library (Apache Commons Math); within three seconds nothing counts as a slow change. */
    @Test
    void cells_farther_off_that_go_with_the_leader_are_added() {
        int frames = 75;
        Chance chance = Chance.of(3);
        double[] noise = new double[COLUMNS * ROWS * frames];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = chance.nextNormal();
        }
        // A clean lamp in the second column; from the fifth on light from it under more and more noise.
        ClipFrames clip = HandMadeFrames.clip(COLUMNS, ROWS, frames, (column, row, frame) -> {
            double light = HandMadeFrames.blinking(frame) / 10;
            double grain = noise[(frame * ROWS + row) * COLUMNS + column];
            return 50
                    + (column == 1 && row == 1
                            ? 10 * light
                            : column < 4 ? 0 : light + (0.8 + 0.2 * (3 * (column - 4) + row)) * grain);
        });
        BlinkingSpot.Found found = BlinkingSpot.in(clip).orElseThrow();
        double[] expected = new double[frames];
        double[] lamp = new double[frames];
        for (int i = 0; i < frames; i++) {
            lamp[i] = HandMadeFrames.blinking(i);
        }
        int count = 0;
        for (int cell = 0; cell < COLUMNS * ROWS; cell++) {
            int each = cell;
            double[] values = IntStream.range(0, frames)
                    .mapToDouble(frame -> clip.frames.get(frame).cells[each])
                    .toArray();
            if (near(COLUMNS, found.leader(), cell)
                    || (cell % COLUMNS >= 4 && new PearsonsCorrelation().correlation(lamp, values) >= 0.7)) {
                count++;
                for (int i = 0; i < frames; i++) {
                    expected[i] += values[i];
                }
            }
        }
        assertThat(found.leader() % COLUMNS).isLessThanOrEqualTo(2);
        // Some of the fifteen are added and some are not; near the leader are four to nine.
        assertThat(count).isBetween(10, 18);
        assertThat(found.cells()).isEqualTo(count);
        for (int i = 0; i < frames; i++) {
            assertThat(found.brightness().value(i)).isEqualTo(expected[i]);
        }
    }

    /** A rise of 45 steps in 18 s under a lamp of 10 steps: with the rise left in, the correlation would be 0.36. */
    @Test
    void a_slow_change_hides_nothing_that_goes_along() {
        ClipFrames clip = HandMadeFrames.clip(
                COLUMNS,
                ROWS,
                3 * FRAMES,
                (column, row, frame) -> row != 1
                        ? 0
                        : column == 1
                                ? HandMadeFrames.blinking(frame)
                                : column == 7 ? HandMadeFrames.blinking(frame) / 4 + 0.1 * frame : 0);
        BlinkingSpot.Found found = BlinkingSpot.in(clip).orElseThrow();
        int[] near = IntStream.range(0, COLUMNS * ROWS)
                .filter(cell -> near(COLUMNS, found.leader(), cell))
                .toArray();
        assertThat(found.cells()).isEqualTo(near.length + 1);
    }

    @Test
    void what_blinks_the_other_way_round_is_not_added() {
        ClipFrames clip = HandMadeFrames.clip(
                COLUMNS,
                ROWS,
                FRAMES,
                (column, row, frame) -> row != 1
                        ? 0
                        : column == 1
                                ? HandMadeFrames.blinking(frame)
                                : column == 7 ? 40 - HandMadeFrames.blinking(frame) : 0);
        BlinkingSpot.Found found = BlinkingSpot.in(clip).orElseThrow();
        int around = (int) IntStream.range(0, COLUMNS * ROWS)
                .filter(cell -> near(COLUMNS, found.leader(), cell))
                .count();
        assertThat(found.cells()).isEqualTo(around);
    }

    @Test
    void nothing_blinks_in_a_still_picture() {
        assertThat(lamp(frame -> 0)).isEmpty();
    }

    @Test
    void less_than_three_steps_of_brightness_are_no_lamp() {
        assertThat(lamp(frame -> HandMadeFrames.blinking(frame) * 2.9 / 40)).isEmpty();
        assertThat(lamp(frame -> HandMadeFrames.blinking(frame) * 3.1 / 40)).isPresent();
    }

    @Test
    void one_flash_is_enough_but_one_edge_is_not() {
        assertThat(lamp(edges(50, 65))).isPresent();
        assertThat(lamp(edges(75))).isEmpty();
    }

    @Test
    void what_is_dark_once_was_walked_past() {
        IntToDoubleFunction once = edges(50, 65);
        assertThat(lamp(frame -> 40 - once.applyAsDouble(frame))).isEmpty();
    }

    @Test
    void what_blinks_more_often_leads() {
        assertLeads(HandMadeFrames::blinking, frame -> frame / 15 % 2 == 1 ? 40 : 0);
    }

    /** A step between at each edge of a lamp of 14 edges: half of an edge's samples. */
    @Test
    void what_is_more_sudden_leads() {
        assertLeads(
                HandMadeFrames::blinking,
                frame -> (HandMadeFrames.blinking(frame) + HandMadeFrames.blinking(frame + 1)) / 2);
    }

    @Test
    void what_stands_out_of_less_noise_leads() {
        Chance chance = Chance.of(6);
        double[] noise =
                IntStream.range(0, FRAMES).mapToDouble(i -> chance.nextNormal()).toArray();
        assertLeads(HandMadeFrames::blinking, frame -> HandMadeFrames.blinking(frame) + 4 * noise[frame]);
    }

    /** Alike but for lit and dark: a lamp flashes, what walks by darkens. */
    @Test
    void what_rests_dark_leads() {
        IntToDoubleFunction flashes = edges(40, 45, 50, 55, 60, 65, 100, 105);
        assertLeads(flashes, frame -> 40 - flashes.applyAsDouble(frame));
    }

    /**
     * Edges of 14 steps in between, 8 of them well off both levels: 1 in 9 is too slow. Of 8 steps 4 are: 1 in 5 is not.
     */
    @Test
    void what_brightens_slowly_is_no_lamp() {
        assertThat(lamp(ramps(14))).isEmpty();
        assertThat(lamp(ramps(8))).isPresent();
    }

    /** Up from frame 30 on and down from frame 90 on, in so many steps between the levels. */
    private static IntToDoubleFunction ramps(int between) {
        return frame -> {
            double up = Math.min(1, Math.max(0, (frame - 30.0) / (between + 1)));
            double down = Math.min(1, Math.max(0, (frame - 90.0) / (between + 1)));
            return 60 * (up - down);
        };
    }
}
