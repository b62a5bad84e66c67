package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** The flashes of a pulse train after bounce and fast lists were left out. */
final class Flashes {
    /** A pulse of at least this share of the shortest that counts as a flash is neither bounce nor a fast list. */
    private static final double NEARLY = 0.3;

    private static final int MOST_NOTED = 20;

    private final long tooShortFlashNanos;
    private final long tooShortGapNanos;
    private long[] startsNanos;
    private long[] endsNanos;
    private final double[] lengths;
    private final double[] gaps;
    private int count;
    private int leftOut;
    private long firstLeftOutNanos;
    private final boolean endsLit;
    private final List<Long> nearFlashesNanos = new ArrayList<>();

    /**
     * Short lit pulses go first, short gaps are closed then: the other way round, a fast list would become one flash.
     */
    Flashes(PulseTrain train, Lengths nominal) {
        tooShortFlashNanos = nominal.tooShortFlashNanos();
        tooShortGapNanos = nominal.tooShortGapNanos();
        startsNanos = new long[Math.min(64, train.edgeCount() + 1)];
        endsNanos = new long[startsNanos.length];
        boolean lit = train.litAtStart();
        long fromNanos = 0;
        for (int i = 0; i <= train.edgeCount(); i++) {
            long toNanos = i < train.edgeCount() ? train.edgeNanos(i) : train.endNanos();
            if (lit) {
                take(fromNanos, toNanos);
            }
            lit = !lit;
            fromNanos = toNanos;
        }
        this.endsLit = count > 0 && endsNanos[count - 1] == train.endNanos();
        this.lengths = new double[count];
        this.gaps = new double[count];
        for (int i = 0; i < count; i++) {
            this.lengths[i] = Lengths.log(endsNanos[i] - startsNanos[i]);
            this.gaps[i] = i == 0 ? 0 : Lengths.log(gapNanos(i));
        }
    }

    private void take(long startNanos, long endNanos) {
        if (endNanos - startNanos < tooShortFlashNanos) {
            leaveOut(startNanos, endNanos - startNanos);
            return;
        }
        if (count > 0 && startNanos - endsNanos[count - 1] < tooShortGapNanos) {
            endsNanos[count - 1] = endNanos;
            return;
        }
        if (count == startsNanos.length) {
            startsNanos = Arrays.copyOf(startsNanos, 2 * count);
            endsNanos = Arrays.copyOf(endsNanos, 2 * count);
        }
        startsNanos[count] = startNanos;
        endsNanos[count++] = endNanos;
    }

    private void leaveOut(long startNanos, long lengthNanos) {
        if (leftOut++ == 0) {
            firstLeftOutNanos = startNanos;
        }
        if (lengthNanos >= NEARLY * tooShortFlashNanos && nearFlashesNanos.size() < MOST_NOTED) {
            nearFlashesNanos.add(startNanos);
        }
    }

    int count() {
        return count;
    }

    long startNanos(int flash) {
        return startsNanos[flash];
    }

    long endNanos(int flash) {
        return endsNanos[flash];
    }

    /** As a logarithm. */
    double length(int flash) {
        return lengths[flash];
    }

    /** The gap before a flash other than the first. */
    long gapNanos(int flash) {
        return startsNanos[flash] - endsNanos[flash - 1];
    }

    /** The gap before a flash other than the first, as a logarithm. */
    double gap(int flash) {
        return gaps[flash];
    }

    /** Whether the last flash lasts until the end of the recording, perhaps longer. */
    boolean endsLit() {
        return endsLit;
    }

    /** What there is to say of the pulses that were left out. */
    List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        if (leftOut > 0) {
            String text = leftOut + (leftOut == 1 ? " pulse" : " pulses") + " shorter than "
                    + Seconds.text(tooShortFlashNanos) + " s left out: bounce, or a fast list for instruments";
            warnings.add(new Warning(firstLeftOutNanos, WarningKind.SHORT_PULSES, text));
        }
        for (long atNanos : nearFlashesNanos) {
            warnings.add(new Warning(atNanos, WarningKind.EXTRA_FLASH, "a light too short for a flash was left out"));
        }
        return warnings;
    }
}
