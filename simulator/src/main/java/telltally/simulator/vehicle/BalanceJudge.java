package telltally.simulator.vehicle;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Names the cylinders that do too little: those whose drop in speed is less than a share of the mean drop of the others.
 *
 * @param thresholdShare above 0, at most 1
 */
public record BalanceJudge(double thresholdShare) {
    /** A first test and its repeats, each more lenient than the one before. Common practice, no source. */
    private static final List<Double> THRESHOLDS = List.of(0.8, 0.5, 0.2);

    public BalanceJudge {
        if (!(thresholdShare > 0 && thresholdShare <= 1)) {
            throw new IllegalArgumentException("a threshold of " + thresholdShare + " is not above 0 and up to 1");
        }
    }

    /**
     * The judge of the first test (0) or of a repeat (1, 2, ...): a cylinder that only the first names is weak, one
     * that all of them name is dead. From the third test on the threshold stays.
     */
    public static BalanceJudge ofRepeat(int repeat) {
        return new BalanceJudge(THRESHOLDS.get(Math.min(repeat, THRESHOLDS.size() - 1)));
    }

    /** If the speed did not drop at all with one cylinder after the other cut, the readings are worth nothing. */
    public BalanceVerdict judge(Contributions rpm) {
        if (rpm.sum() <= 0) {
            return new BalanceVerdict(BalanceVerdict.Outcome.SPOILED, List.of(), rpm.drops());
        }
        List<Integer> weak = IntStream.rangeClosed(1, rpm.drops().size())
                .filter(cylinder -> rpm.drop(cylinder) < thresholdShare * rpm.meanOfOthers(cylinder))
                .boxed()
                .sorted(Comparator.comparing(rpm::drop))
                .toList();
        return new BalanceVerdict(
                weak.isEmpty() ? BalanceVerdict.Outcome.ALL_CONTRIBUTE : BalanceVerdict.Outcome.WEAK,
                weak,
                rpm.drops());
    }
}
