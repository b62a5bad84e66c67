package telltally.decoder.capture;

import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Three signs by which the level of the pauses is known; none alone holds in every format, two of three do. */
final class PauseEvidence {
    /** Cubes let the long stretches decide, however many flashes there are. */
    private static final double CUBES_CLEAR = 3;

    private static final double LONGEST_CLEAR = 1.25;
    private static final double RESTS = 2;

    private final List<Interval> all;
    /** Without the first and the last stretch, which begin or end with the recording. */
    private final List<Interval> inner;

    PauseEvidence(PulseTrain train) {
        all = train.intervals();
        inner = all.size() > 4 ? all.subList(1, all.size() - 1) : all;
    }

    /** From -3, the lit stretches are no pauses, to 3, they are. */
    int forLit() {
        return sign(cubedSeconds(true), cubedSeconds(false), CUBES_CLEAR)
                + sign(longest(true), longest(false), LONGEST_CLEAR)
                + rest();
    }

    private static int sign(double lit, double dark, double clear) {
        return lit > clear * dark ? 1 : dark > clear * lit ? -1 : 0;
    }

    /** The level that is held for long both before and after everything else. */
    private int rest() {
        Interval first = all.get(0);
        Interval last = all.get(all.size() - 1);
        double longNanos = RESTS
                * new Quantiles(inner.stream()
                                .mapToDouble(Interval::lengthNanos)
                                .toArray())
                        .median();
        boolean both = first.lit() == last.lit() && first.lengthNanos() >= longNanos && last.lengthNanos() >= longNanos;
        return !both ? 0 : first.lit() ? 1 : -1;
    }

    private double longest(boolean lit) {
        return inner.stream()
                .filter(stretch -> stretch.lit() == lit)
                .mapToDouble(Interval::lengthNanos)
                .max()
                .orElse(0);
    }

    private double cubedSeconds(boolean lit) {
        return inner.stream()
                .filter(stretch -> stretch.lit() == lit)
                .mapToDouble(stretch -> stretch.lengthNanos() / 1e9)
                .map(seconds -> seconds * seconds * seconds)
                .sum();
    }
}
