package telltally.decoder.lattice;

import java.util.Arrays;
import telltally.simulator.signal.PulseTrain;

/**
 * The flashes of a train, cleaned of pulses far shorter than any flash and of dark gaps far shorter than any gap.
 * Parallel arrays, instants in nanoseconds and seconds.
 */
final class Flashes {
    final int count;
    final long[] startNanos;
    final long[] endNanos;
    final double[] start;
    final double[] end;
    final double leadSeconds;
    final double tailSeconds;
    /** The recording began, or ended, within a flash. */
    final boolean cutAtStart;

    final boolean cutAtEnd;
    final int dropped;
    final long firstDroppedNanos;
    /** Whether there were more than could be taken. */
    final boolean more;

    private final boolean lit;
    private final long shortestLitNanos;
    private final long shortestDarkNanos;

    private Flashes(
            boolean lit,
            long[] starts,
            long[] ends,
            int count,
            long trainEnd,
            int dropped,
            long firstDropped,
            boolean more) {
        this.lit = lit;
        this.count = count;
        this.startNanos = starts;
        this.endNanos = ends;
        this.start = new double[count];
        this.end = new double[count];
        long shortestLit = Long.MAX_VALUE;
        long shortestDark = Long.MAX_VALUE;
        for (int i = 0; i < count; i++) {
            start[i] = starts[i] * 1e-9;
            end[i] = ends[i] * 1e-9;
            shortestLit = Math.min(shortestLit, ends[i] - starts[i]);
            shortestDark = i == 0 ? shortestDark : Math.min(shortestDark, starts[i] - ends[i - 1]);
        }
        this.shortestLitNanos = shortestLit;
        this.shortestDarkNanos = shortestDark;
        this.leadSeconds = count == 0 ? trainEnd * 1e-9 : start[0];
        this.tailSeconds = count == 0 ? trainEnd * 1e-9 : (trainEnd - ends[count - 1]) * 1e-9;
        this.cutAtStart = count > 0 && starts[0] == 0;
        this.cutAtEnd = count > 0 && ends[count - 1] == trainEnd;
        this.dropped = dropped;
        this.firstDroppedNanos = firstDropped;
        this.more = more;
    }

    /**
     * @param lit the level that counts as a flash
     * @param leastLitNanos lit pulses shorter than this are left out, first
     * @param leastDarkNanos dark gaps shorter than this are closed, then
     * @param most no more flashes than this are taken
     */
    static Flashes of(PulseTrain train, boolean lit, long leastLitNanos, long leastDarkNanos, int most) {
        int edges = train.edgeCount();
        int room = Math.min(most, edges / 2 + 1);
        long[] starts = new long[Math.min(room, 256)];
        long[] ends = new long[starts.length];
        int count = 0;
        int dropped = 0;
        long firstDropped = -1;
        boolean more = false;
        int first = train.litAtStart() == lit ? 0 : 1;
        for (int interval = first; interval <= edges; interval += 2) {
            long from = interval == 0 ? 0 : train.edgeNanos(interval - 1);
            long to = interval == edges ? train.endNanos() : train.edgeNanos(interval);
            // What the end of the recording cuts off after a gap far too short belongs to the flash before it.
            boolean cut = interval == edges && count > 0 && from - ends[count - 1] < leastDarkNanos;
            if (to - from < leastLitNanos && !cut) {
                firstDropped = dropped++ == 0 ? from : firstDropped;
            } else if (count > 0 && from - ends[count - 1] < leastDarkNanos) {
                firstDropped = dropped++ == 0 ? from : firstDropped;
                ends[count - 1] = to;
            } else if (count == most) {
                more = true;
                break;
            } else {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, Math.min(room, 2 * count));
                    ends = Arrays.copyOf(ends, starts.length);
                }
                starts[count] = from;
                ends[count++] = to;
            }
        }
        return new Flashes(lit, starts, ends, count, train.endNanos(), dropped, firstDropped, more);
    }

    /** Whether the same flashes come out with these thresholds. */
    boolean sameFor(boolean level, long leastLitNanos, long leastDarkNanos) {
        return level == lit && dropped == 0 && leastLitNanos <= shortestLitNanos && leastDarkNanos <= shortestDarkNanos;
    }

    /** The flashes from one index to before another, seen alone. */
    Flashes slice(int from, int to) {
        return from == 0 && to == count ? this : new Flashes(this, from, to);
    }

    private Flashes(Flashes whole, int from, int to) {
        this.lit = whole.lit;
        this.count = to - from;
        this.startNanos = Arrays.copyOfRange(whole.startNanos, from, to);
        this.endNanos = Arrays.copyOfRange(whole.endNanos, from, to);
        this.start = Arrays.copyOfRange(whole.start, from, to);
        this.end = Arrays.copyOfRange(whole.end, from, to);
        this.leadSeconds = from == 0 ? whole.leadSeconds : start[0] - whole.end[from - 1];
        this.tailSeconds = to == whole.count ? whole.tailSeconds : whole.start[to] - end[count - 1];
        this.cutAtStart = from == 0 && whole.cutAtStart;
        this.cutAtEnd = to == whole.count && whole.cutAtEnd;
        this.dropped = 0;
        this.firstDroppedNanos = -1;
        this.more = false;
        this.shortestLitNanos = whole.shortestLitNanos;
        this.shortestDarkNanos = whole.shortestDarkNanos;
    }

    double lit(int flash) {
        return end[flash] - start[flash];
    }
}
