package telltally.decoder.card.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Many tests at once: of twenty, one falls below 0.05 by chance alone. Holm's step-down procedure (Holm 1979, Scandinavian
 * Journal of Statistics 6:65-70) raises the values so that a false alarm in any of them is as rare as in one.
 */
public final class HolmCorrection {
    private HolmCorrection() {}

    /** The values raised, each at its old place; none falls below a smaller one's, none is above 1. */
    public static List<Double> adjusted(List<Double> pValues) {
        int count = pValues.size();
        double[] raised = new double[count];
        double most = 0;
        int[] ascending = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(pValues::get))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int rank = 0; rank < count; rank++) {
            most = Math.max(most, Math.min(1, (count - rank) * pValues.get(ascending[rank])));
            raised[ascending[rank]] = most;
        }
        return IntStream.range(0, count).mapToObj(i -> raised[i]).toList();
    }
}
