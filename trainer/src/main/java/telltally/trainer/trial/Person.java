package telltally.trainer.trial;

import telltally.simulator.chance.Chance;
import telltally.trainer.trial.Assumptions.Value;

/**
 * How one simulated learner differs from another.
 *
 * @param slip a factor on the slips of the beginning
 * @param pace a factor on the digits that practice takes
 * @param glances a factor on glances away
 * @param gaps a factor on the spread of felt gaps
 * @param capacity how many codes are held at once
 */
record Person(double slip, double pace, double glances, double gaps, int capacity) {
    private static final double HARD_FACTOR = 3;
    private static final int FEWEST = 2;
    private static final int MOST = 6;

    static Person drawn(Assumptions assumed, Chance chance) {
        double spread = assumed.of(Value.PEOPLE_SPREAD);
        double slip = factor(spread, chance) * (chance.happens(assumed.of(Value.HARD_SHARE)) ? HARD_FACTOR : 1);
        double pace = factor(spread, chance);
        double glances = factor(spread, chance);
        double gaps = factor(spread, chance);
        long capacity = Math.round(assumed.of(Value.CAPACITY) + chance.nextNormal());
        return new Person(slip, pace, glances, gaps, (int) Math.min(Math.max(capacity, FEWEST), MOST));
    }

    private static double factor(double spread, Chance chance) {
        return StrictMath.exp(spread * chance.nextNormal());
    }
}
