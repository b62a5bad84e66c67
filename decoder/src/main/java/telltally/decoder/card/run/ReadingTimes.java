package telltally.decoder.card.run;

import java.util.Arrays;

/**
 * How long a decoder took for a session, as the clock on the wall has it. Kept apart from the card: no two runs agree.
 * Lengths are sorted into bins an eighth of an octave wide.
 */
public final class ReadingTimes {
    private static final int PER_OCTAVE = 8;

    private final long[] bins = new long[Long.SIZE * PER_OCTAVE];
    private long sessions;
    private long totalNanos;
    private long longestNanos;

    void add(long nanos) {
        bins[bin(Math.max(1, nanos))]++;
        sessions++;
        totalNanos += nanos;
        longestNanos = Math.max(longestNanos, nanos);
    }

    void add(ReadingTimes other) {
        Arrays.setAll(bins, i -> bins[i] + other.bins[i]);
        sessions += other.sessions;
        totalNanos += other.totalNanos;
        longestNanos = Math.max(longestNanos, other.longestNanos);
    }

    public long sessions() {
        return sessions;
    }

    public long totalNanos() {
        return totalNanos;
    }

    public long longestNanos() {
        return longestNanos;
    }

    /**
     * The length that this share of the sessions does not exceed, at most an eighth too great.
     *
     * @param percent 0 to 100
     */
    public long quantileNanos(int percent) {
        long before = 0;
        for (int i = 0; i < bins.length; i++) {
            before += bins[i];
            if (before * 100 >= sessions * percent && before > 0) {
                return Math.min(longestNanos, end(i));
            }
        }
        return 0;
    }

    /** Octave by the leading bit, eighths by the three bits after it. */
    private static int bin(long nanos) {
        int octave = Long.SIZE - 1 - Long.numberOfLeadingZeros(nanos);
        long rest = octave >= 3 ? nanos >>> (octave - 3) : nanos << (3 - octave);
        return octave * PER_OCTAVE + (int) (rest - PER_OCTAVE);
    }

    private static long end(int bin) {
        int octave = bin / PER_OCTAVE;
        long rest = bin % PER_OCTAVE + PER_OCTAVE + 1L;
        return octave >= 3 ? rest << (octave - 3) : rest >> (3 - octave);
    }
}
