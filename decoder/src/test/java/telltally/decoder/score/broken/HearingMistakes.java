package telltally.decoder.score.broken;

import java.util.List;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Ways to hear a pulse train wrongly. */
final class HearingMistakes {
    private static final long MILLISECOND = 1_000_000L;

    private HearingMistakes() {}

    /** A border between two classes of gaps lies a little too low: some ends of a digit become ends of a code. */
    static PulseTrain gapBorderTooLow(PulseTrain train) {
        PulseTrain.Builder heard = PulseTrain.builder();
        for (Interval each : train.intervals()) {
            boolean atBorder =
                    !each.lit() && each.lengthNanos() > 2_100 * MILLISECOND && each.lengthNanos() < 2_250 * MILLISECOND;
            heard.stay(each.lit(), atBorder ? 4_000 * MILLISECOND : each.lengthNanos());
        }
        return heard.build();
    }

    /** Whoever dozed off in a dark spell of more than ten seconds misses the flash that ends it. */
    static PulseTrain firstFlashAfterLongPauseLost(PulseTrain train) {
        PulseTrain.Builder heard = PulseTrain.builder();
        long darkNanos = 0;
        for (Interval each : train.intervals()) {
            boolean lost = each.lit() && darkNanos > 10_000 * MILLISECOND;
            heard.stay(each.lit() && !lost, each.lengthNanos());
            darkNanos = each.lit() ? 0 : each.lengthNanos();
        }
        return heard.build();
    }

    /** The fast list that instruments read on the wire is taken for a slow one. */
    static PulseTrain fastListCounted(PulseTrain train) {
        PulseTrain.Builder heard = PulseTrain.builder();
        List<Interval> all = train.intervals();
        for (int i = 0; i < all.size(); i++) {
            heard.stay(all.get(i).lit(), all.get(i).lengthNanos() * (isWithinFastList(all, i) ? 100 : 1));
        }
        return heard.build();
    }

    /** Within six short flashes in a row, with short gaps between them; a bouncing contact gives five at most. */
    private static boolean isWithinFastList(List<Interval> all, int at) {
        int from = at;
        while (from > 0 && isFast(all.get(from - 1))) {
            from--;
        }
        int to = at;
        while (to < all.size() && isFast(all.get(to))) {
            to++;
        }
        return isFast(all.get(at)) && to - from >= 12;
    }

    private static boolean isFast(Interval each) {
        return each.lengthNanos() < (each.lit() ? 10 : 70) * MILLISECOND;
    }
}
