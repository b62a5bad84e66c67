package telltally.trainer.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SlipFunctionTest {
    private static final double START = 50;
    private static final double SLOPE = 3.5;
    private static final double GRAIN = 0.01;
    private static final double QUANTILE = 0.589792;
    private static final double SHIFT = 0.00484354;

    /** QUEST's guess of 0.5 and lapse of 0.01, from the other side: a right answer there is a slip here. */
    private static final SlipFunction MIRRORED = new SlipFunction(0.01 * 0.5, 0.5);

    /**
     * The reference code's run (psychopy's quest.py, quantile method): start 50, sd 50, target 0.82, slope 3.5, guess 0.5,
     * lapse 0.01, grain 0.01, range 100. The levels are published to eight places.
     */
    @Test
    void with_the_grid_it_proposes_the_levels_of_the_published_run_of_quest() {
        double[] levels = {
            50,
            45.13971041,
            37.29108650,
            58.29741313,
            80.18296713,
            75.29525141,
            71.57627192,
            79.88168048,
            90.71231330,
            88.26580896
        };
        String answers = "1100110011";
        Grid grid = Grid.normal(0, GRAIN, 10_001, START, 50);
        for (int i = 0; i < levels.length; i++) {
            double level = i == 0 ? START : grid.quantile(QUANTILE);
            // The order of the quantile is known to six places, and levels lie on a grain of 0.01.
            assertThat(level).isCloseTo(levels[i], within(0.001));
            grid = grid.after(logLikelihoods(grid, Math.round(level / GRAIN) * GRAIN, answers.charAt(i) == '1'));
        }
        double[] points = new double[grid.points()];
        for (int i = 0; i < points.length; i++) {
            points[i] = grid.point(i);
        }
        assertThat(grid.expected(points)).isCloseTo(86.0772169427, within(0.001));
    }

    private static double[] logLikelihoods(Grid grid, double level, boolean right) {
        double[] logarithms = new double[grid.points()];
        for (int i = 0; i < logarithms.length; i++) {
            double logSlips = StrictMath.log(10) * SLOPE * (level - grid.point(i) + SHIFT);
            double missed = MIRRORED.chanceRight(logSlips);
            logarithms[i] = StrictMath.log(right ? 1 - missed : missed);
        }
        return logarithms;
    }
}
