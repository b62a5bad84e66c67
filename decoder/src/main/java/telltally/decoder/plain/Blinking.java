package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Reads flashes as the even blinking by which a format says that there is nothing to report. */
final class Blinking {
    /** Fewer even flashes are no blinking. */
    private static final int FEWEST = 4;

    /** A light that is longer than a blink by more than this factor (as a logarithm: 3) is a bulb check before it. */
    private static final double STEADY = 1.1;

    /** Some fifteen blinks are as many as a count can be that is sent once: the number says nothing for either. */
    private static final double HOW_MANY = 2.7;

    private static final double MOST_A_LENGTH = 6;

    /** Lengths further off (as a logarithm) than clock and chance together say nothing of the clock. */
    private static final double FAR = 0.5;

    private final FlashFormat format;
    private final Flashes flashes;
    private final double on;
    private final double off;
    private int first;

    private Blinking(FlashFormat format, NothingToReport.Blinking blinking, Flashes flashes) {
        this.format = format;
        this.flashes = flashes;
        this.on = Lengths.log(blinking.onNanos());
        this.off = Lengths.log(blinking.offNanos());
        while (first < flashes.count() && flashes.length(first) > on + STEADY) {
            first++;
        }
    }

    /** Empty where the format has no blinking, or this is none. */
    static Optional<Attempt> read(Flashes flashes, FlashFormat format) {
        return format.nothingToReport() instanceof NothingToReport.Blinking blinking
                ? new Blinking(format, blinking, flashes).read()
                : Optional.empty();
    }

    private Optional<Attempt> read() {
        if (flashes.count() - first < FEWEST) {
            return Optional.empty();
        }
        double scale = scale();
        Residuals residuals = new Residuals();
        double gain = -Clock.cost(scale) - HOW_MANY;
        for (int i = first; i < flashes.count(); i++) {
            gain += gain(flashes.length(i) - on - scale, residuals);
            if (i > first) {
                gain += gain(flashes.gap(i) - off - scale, residuals);
            }
        }
        double all = gain + residuals.gain();
        return Optional.of(
                new Attempt(format, flashes, all, scale, Map.of(Segment.CODES, List.of()), () -> transcript(all)));
    }

    private static double gain(double astray, Residuals residuals) {
        residuals.add(astray);
        return Cost.CHANCE - Math.min(MOST_A_LENGTH, Cost.of(astray, 0));
    }

    /** The mean of what the lengths are off, accidents left out. */
    private double scale() {
        double sum = 0;
        int count = 0;
        for (int i = first; i < flashes.count(); i++) {
            double lit = flashes.length(i) - on;
            double dark = i > first ? flashes.gap(i) - off : FAR;
            if (Math.abs(lit) < FAR) {
                sum += lit;
                count++;
            }
            if (Math.abs(dark) < FAR) {
                sum += dark;
                count++;
            }
        }
        return count == 0 ? 0 : Clock.refined(sum / count, count);
    }

    private Transcript transcript(double gain) {
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < first; i++) {
            groups.add(group(gain, flashes.startNanos(i), flashes.endNanos(i)));
        }
        groups.add(group(gain, flashes.startNanos(first), flashes.endNanos(flashes.count() - 1)));
        return new Transcript(groups, List.of());
    }

    /** How sure it is that a light is what it was taken for: blinking, or chance. */
    private static Group group(double gain, long startNanos, long endNanos) {
        double probability = (1 - Confidence.ACCIDENT) / (1 + StrictMath.exp(-gain));
        return new Group(GroupKind.STEADY, Segment.CODES, "", probability, startNanos, endNanos, List.of());
    }
}
