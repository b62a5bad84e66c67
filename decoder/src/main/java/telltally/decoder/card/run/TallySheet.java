package telltally.decoder.card.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import telltally.decoder.card.Calibration;
import telltally.decoder.card.Counts;
import telltally.decoder.card.Tally;
import telltally.decoder.score.Outcome.Failure;

/** Counts up a tally, session by session. */
final class TallySheet {
    private Counts counts = Counts.NOTHING;
    private final TreeMap<String, Long> readAs = new TreeMap<>();
    private final Map<Failure, Long> failures = new EnumMap<>(Failure.class);
    private final long[] codes = new long[Calibration.BINS];
    private final long[] right = new long[Calibration.BINS];
    private final long[] millionths = new long[Calibration.BINS];

    void add(Mark mark) {
        counts = counts.plus(mark.counts());
        readAs.merge(mark.readAs(), 1L, Long::sum);
        mark.failure().ifPresent(failure -> failures.merge(failure, 1L, Long::sum));
        for (Mark.Claim claim : mark.claims()) {
            int bin = Calibration.bin(claim.millionths());
            codes[bin]++;
            right[bin] += claim.right() ? 1 : 0;
            millionths[bin] += claim.millionths();
        }
    }

    Tally tally() {
        List<Calibration.Bin> bins = new ArrayList<>();
        for (int i = 0; i < Calibration.BINS; i++) {
            bins.add(new Calibration.Bin(codes[i], right[i], millionths[i]));
        }
        return new Tally(counts, readAs, failures, new Calibration(bins));
    }
}
