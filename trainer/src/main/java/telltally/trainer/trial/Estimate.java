package telltally.trainer.trial;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import telltally.simulator.chance.Chance;

/**
 * A figure over simulated learners with its 95 % bootstrap percentile interval (Efron 1979), 2000 resamples of learners.
 */
public record Estimate(double value, double low, double high) {
    private static final int RESAMPLES = 2000;

    /**
     * @param learners how many there are
     * @param figure of a choice of learners, by their numbers
     */
    static Estimate of(int learners, ToDoubleFunction<int[]> figure, Chance chance) {
        int[] all = new int[learners];
        Arrays.setAll(all, i -> i);
        double[] again = new double[RESAMPLES];
        for (int i = 0; i < RESAMPLES; i++) {
            int[] drawn = new int[learners];
            Arrays.setAll(drawn, each -> chance.below(learners));
            again[i] = figure.applyAsDouble(drawn);
        }
        Arrays.sort(again);
        return new Estimate(figure.applyAsDouble(all), again[RESAMPLES / 40], again[RESAMPLES - 1 - RESAMPLES / 40]);
    }
}
