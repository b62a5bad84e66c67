package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Set;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;

/** What of a format does not depend on a recording. */
final class FormatModel {
    private static final double SECONDS = 1e-9;

    final FlashFormat format;
    final FormatTimes times;
    final FreeGrammar grammar;
    final CoarseClock clock;
    final long leastLitNanos;
    final long leastDarkNanos;
    /** How many signs a code has; 0 where that varies. */
    final int places;

    private final int[] choices;
    /** Logarithm of how many codes there are, of one sign where their length varies. */
    final double logChoicesOfACode;
    /** Whether the gap before a list is sent again differs from the gap between codes. */
    final boolean marksRepeats;
    /** Empty where the format has none. */
    final String framingCode;

    FormatModel(FlashFormat format) {
        this.format = format;
        this.choices = choices(format);
        this.places = format.shape() instanceof CodeShape.Counted ? choices.length : 0;
        double logChoices = 0;
        for (int each : choices) {
            logChoices += Math.log(each);
        }
        this.logChoicesOfACode = logChoices;
        this.marksRepeats = format.gaps().beforeRepeatNanos() != format.gaps().betweenCodesNanos()
                && format.repeats().mostCodes() > 1;
        this.framingCode = format.framingCode().orElse("");
        this.times = new FormatTimes(format);
        this.grammar = FreeGrammar.of(format, times);
        Set<Double> lights = new LinkedHashSet<>();
        format.flashKinds().forEach(kind -> lights.add(kind.onNanos() * SECONDS));
        Set<Double> gaps = new LinkedHashSet<>();
        gaps.add(format.gaps().withinDigitNanos() * SECONDS);
        gaps.add(format.gaps().betweenDigitsNanos() * SECONDS);
        gaps.add(format.gaps().betweenCodesNanos() * SECONDS);
        gaps.add(format.gaps().beforeRepeatNanos() * SECONDS);
        format.sessions().ifPresent(sessions -> {
            lights.add(sessions.cylinderFlash().onNanos() * SECONDS);
            gaps.add(sessions.aroundSeparatorNanos() * SECONDS);
        });
        format.leadIn().ifPresent(leadIn -> {
            lights.add(leadIn.litNanos() * SECONDS);
            gaps.add(leadIn.darkAfterNanos() * SECONDS);
        });
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            lights.add(blinking.onNanos() * SECONDS);
            gaps.add(blinking.offNanos() * SECONDS);
        }
        this.clock = new CoarseClock(new ArrayList<>(lights), new ArrayList<>(gaps));
        double shortestLit =
                lights.stream().mapToDouble(Double::doubleValue).min().orElse(1);
        double shortestDark =
                gaps.stream().mapToDouble(Double::doubleValue).min().orElse(1);
        double burst =
                format.burst().map(each -> 1.0 / Math.sqrt(each.timesFaster())).orElse(0.0);
        this.leastLitNanos = (long) (1e9 * shortestLit * Math.max(0.1, Math.min(burst, 0.3)));
        this.leastDarkNanos = (long) (1e9 * shortestDark * 0.06);
    }

    private static int[] choices(FlashFormat format) {
        if (format.shape() instanceof CodeShape.Counted counted) {
            return counted.places().stream()
                    .mapToInt(place -> place.counts().size())
                    .toArray();
        }
        return new int[] {((CodeShape.Spelled) format.shape()).table().size()};
    }

    /** How many signs a place may hold. */
    int choices(int place) {
        return choices[Math.min(place, choices.length - 1)];
    }
}
