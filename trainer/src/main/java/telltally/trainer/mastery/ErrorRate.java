package telltally.trainer.mastery;

import telltally.trainer.drill.Level;

/**
 * What is believed of how many errors somebody would make in a drill at full level: a distribution over a grid, moved by
 * every answer. This is the method of QUEST (Watson and Pelli 1983, Perception and Psychophysics 33:113-120): a right
 * answer is one without any slip, and slips come as often as there is occasion for them.
 *
 * <p>QUEST knows no learning. Here every answer fades: with each further one it counts {@value #KEPT} of what it counted,
 * so that about the latest {@code 1/(1 - KEPT)} say what is believed. It takes neither learning nor its absence for
 * granted: somebody who stays as good is believed at what they do, somebody who learns is followed a few answers late.
 */
public record ErrorRate(Grid logErrors) {
    private static final int POINTS = 48;
    private static final double LEAST_LOG = -4.6;
    private static final double MOST_LOG = 2.1;
    private static final double STEP = (MOST_LOG - LEAST_LOG) / (POINTS - 1);
    private static final SlipFunction ANSWERED = new SlipFunction(0.01, 0.01);

    /** Beginners are taken to get most drills at full level right, with great doubt, so that the full level is tried first. Common practice, no source. */
    private static final double BEGINNERS_LOG = -1.6;

    private static final double BEGINNERS_SPREAD = 1.5;

    private static final Grid BEGINNERS = Grid.normal(LEAST_LOG, STEP, POINTS, BEGINNERS_LOG, BEGINNERS_SPREAD);

    /** How much of its weight an answer keeps with each further one. Common practice, no source. */
    private static final double KEPT = 0.94;

    /** How much less occasion for slips the easiest level gives. The last level adds only repeats. */
    private static final double LEAST_EXPOSURE = 0.15;

    private static final double[][] CHANCES = chances();
    private static final double[][] LOG_RIGHT = logarithms(1);
    private static final double[][] LOG_WRONG = logarithms(-1);

    /** Of somebody who has not answered yet. */
    public static ErrorRate ofBeginners() {
        return new ErrorRate(BEGINNERS);
    }

    public ErrorRate after(Level level, boolean right) {
        double[] seen = (right ? LOG_RIGHT : LOG_WRONG)[index(level)];
        return new ErrorRate(logErrors.fadedAfter(BEGINNERS, KEPT, seen));
    }

    /** The chance of a right answer. */
    public double chanceRight(Level level) {
        return Math.min(logErrors.expected(CHANCES[index(level)]), 1);
    }

    private static int index(Level level) {
        return level.value() - Level.LOWEST;
    }

    private static double[][] chances() {
        double[][] chances = new double[Level.HIGHEST - Level.LOWEST + 1][POINTS];
        for (int level = 0; level < chances.length; level++) {
            double share = Math.min(1, (double) level / (chances.length - 2));
            double exposure = LEAST_EXPOSURE + (1 - LEAST_EXPOSURE) * share;
            for (int i = 0; i < POINTS; i++) {
                chances[level][i] = ANSWERED.chanceRight(BEGINNERS.point(i) + StrictMath.log(exposure));
            }
        }
        return chances;
    }

    /** @param sign 1 for the chances of a right answer, -1 for those of a wrong one */
    private static double[][] logarithms(int sign) {
        double[][] logarithms = new double[CHANCES.length][POINTS];
        for (int level = 0; level < CHANCES.length; level++) {
            for (int i = 0; i < POINTS; i++) {
                double right = CHANCES[level][i];
                logarithms[level][i] = StrictMath.log(sign > 0 ? right : 1 - right);
            }
        }
        return logarithms;
    }
}
