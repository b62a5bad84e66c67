package telltally.trainer.trial;

import telltally.simulator.chance.Chance;

/** How somebody counts flashes, feels gaps and holds codes: the formulas, for whatever learner. */
final class Counting {
    /** Slips add a flash this much as often as they lose one. Assumed. */
    private static final double ADDED = 0.3;

    /** Light is seen as separate flashes from about 150 ms on (Jurado et al. 2021); the slope is assumed. */
    private static final double MERGING_S = 0.150;

    private static final double MERGING_SLOPE_S = 0.020;

    /** Below about 250 ms there is no time to count in words, and the number is estimated; the slope is assumed. */
    private static final double WORDS_S = 0.25;

    private static final double WORDS_SLOPE_S = 0.03;

    /** Estimates follow n^0.83 (Journal of Vision abstract 2771326); their spread is from memory. */
    private static final double ESTIMATE_POWER = 0.83;

    private static final double ESTIMATE_SPREAD = 0.15;

    /** Fitted to 80 % of three letters held after 3 s and 10 % after 18 s (Peterson and Peterson 1959). */
    private static final double HELD_S = 9.5;

    private static final double HELD_POWER = 1.3;

    private Counting() {}

    /** The chance to count so many slow flashes rightly; slips that cancel each other are ignored. */
    static double chanceRight(int flashes, double slip) {
        return power(1 - slip, flashes - 1) * power(1 - ADDED * slip, flashes);
    }

    /** What somebody counts. */
    static int counted(int flashes, double onsetToOnsetS, double slip, Chance chance) {
        if (chance.happens(falling(onsetToOnsetS, WORDS_S, WORDS_SLOPE_S))) {
            double mean = StrictMath.pow(flashes, ESTIMATE_POWER);
            return (int) Math.max(1, StrictMath.round(mean + ESTIMATE_SPREAD * mean * chance.nextNormal()));
        }
        double seen = (1 - falling(onsetToOnsetS, MERGING_S, MERGING_SLOPE_S)) * (1 - slip);
        int count = 1;
        for (int flash = 1; flash < flashes; flash++) {
            count += chance.happens(seen) ? 1 : 0;
        }
        for (int flash = 0; flash < flashes; flash++) {
            count += chance.happens(ADDED * slip) ? 1 : 0;
        }
        return count;
    }

    /** The chance that a gap is taken for the kind so many times as long or as short. */
    static double gapMisread(double ratio, double spread) {
        return Normal.below(-StrictMath.log(ratio) / (2 * spread));
    }

    /** The chance that the longer of two gaps is felt to be the shorter. */
    static double gapsSwapped(double ratio, double spread) {
        return Normal.below(-StrictMath.log(ratio) / (spread * Math.sqrt(2)));
    }

    /** The chance to keep a code in mind for so many seconds of further counting. */
    static double held(double seconds, double load) {
        return StrictMath.exp(-StrictMath.pow(load * seconds / HELD_S, HELD_POWER));
    }

    /** What is left of a surplus after practice: from first to last, exponentially. */
    static double practised(double first, double last, double digits, double scale) {
        return last + (first - last) * StrictMath.exp(-digits / scale);
    }

    private static double falling(double seconds, double middle, double slope) {
        return 1 / (1 + StrictMath.exp((seconds - middle) / slope));
    }

    static double power(double base, int exponent) {
        double product = 1;
        for (int i = 0; i < exponent; i++) {
            product *= base;
        }
        return product;
    }
}
