package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.Gaps;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.FlashKind;

/**
 * The nominal lengths of one format. Unless a name says nanoseconds, a length is the natural logarithm of nanoseconds,
 * so that ratios are differences and a slow clock adds the same to every length.
 */
final class Lengths {
    private final FlashFormat format;
    private final List<FlashKind> kinds;
    private final double[] flashes;
    private final double[] gaps;

    Lengths(FlashFormat format) {
        this.format = format;
        Set<FlashKind> all = new LinkedHashSet<>(format.flashKinds());
        format.sessions().map(Sessions::cylinderFlash).ifPresent(all::add);
        this.kinds = List.copyOf(all);
        this.flashes = kinds.stream().mapToDouble(kind -> log(kind.onNanos())).toArray();
        this.gaps = DoubleStream.of(
                        within(),
                        betweenDigits(),
                        betweenCodes(),
                        beforeRepeat(),
                        format.sessions()
                                .map(Sessions::aroundSeparatorNanos)
                                .map(Lengths::log)
                                .orElse(within()),
                        format.leadIn()
                                .map(LeadIn::darkAfterNanos)
                                .map(Lengths::log)
                                .orElse(within()))
                .distinct()
                .toArray();
    }

    static double log(long nanos) {
        return StrictMath.log((double) Math.max(1, nanos));
    }

    int kind(FlashKind kind) {
        return kinds.indexOf(kind);
    }

    /** The kind of flash that comes nearest. */
    int nearestKind(double length) {
        int nearest = 0;
        for (int i = 1; i < flashes.length; i++) {
            if (Math.abs(length - flashes[i]) < Math.abs(length - flashes[nearest])) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** How many kinds of flash there are, counted from 0. */
    int kinds() {
        return flashes.length;
    }

    double flash(int kind) {
        return flashes[kind];
    }

    double longestFlash() {
        return Arrays.stream(flashes).max().orElse(0);
    }

    /** Every length of a flash, a lead-in included. */
    double[] lit() {
        return DoubleStream.concat(
                        Arrays.stream(flashes), format.leadIn().stream().mapToDouble(leadIn -> log(leadIn.litNanos())))
                .toArray();
    }

    /** Every length of a gap, each once. */
    double[] dark() {
        return gaps.clone();
    }

    double within() {
        return log(gaps().withinDigitNanos());
    }

    double betweenDigits() {
        return log(places() == 1 ? gaps().withinDigitNanos() : gaps().betweenDigitsNanos());
    }

    double betweenCodes() {
        return log(gaps().betweenCodesNanos());
    }

    double beforeRepeat() {
        return log(gaps().beforeRepeatNanos());
    }

    /** A gap inside a digit that hides an unseen flash of a kind: two gaps and the flash. */
    double unseen(int kind) {
        return log(2 * gaps().withinDigitNanos() + kinds.get(kind).onNanos());
    }

    /** Gaps longer than this end a digit: half way, as a ratio, from within a digit to the next longer kind of gap. */
    double digitEnds() {
        int shortest = nearestKind(0);
        double next = unseen(shortest);
        for (double gap : gaps) {
            if (gap > within() && gap < next) {
                next = gap;
            }
        }
        return (within() + next) / 2;
    }

    /** How many places a code has; 0 where it has as many as it likes. */
    int places() {
        return format.shape() instanceof CodeShape.Counted counted
                ? counted.places().size()
                : 0;
    }

    /** Lit pulses shorter than this are no flashes: bounce, or a fast list for instruments. */
    long tooShortFlashNanos() {
        List<Long> all = new ArrayList<>();
        kinds.forEach(kind -> all.add(kind.onNanos()));
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            all.add(blinking.onNanos());
        }
        return tooShort(all);
    }

    /** Dark pulses shorter than this are no gaps. */
    long tooShortGapNanos() {
        List<Long> all = new ArrayList<>();
        for (double gap : gaps) {
            all.add(Math.round(StrictMath.exp(gap)));
        }
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            all.add(blinking.offNanos());
        }
        return tooShort(all);
    }

    /** Two fifths of the shortest: a fast clock and a great deal of jitter leave more than that of a real one. */
    private static long tooShort(List<Long> nanos) {
        return nanos.stream().mapToLong(Long::longValue).min().orElse(0) / 5 * 2;
    }

    private Gaps gaps() {
        return format.gaps();
    }
}
