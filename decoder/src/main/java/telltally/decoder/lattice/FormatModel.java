package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;

/** What of a format does not depend on a recording. */
final class FormatModel {
    final FlashFormat format;
    final FormatTimes times;
    final FreeGrammar grammar;
    final CoarseClock clock;
    final long leastLitNanos;
    final long leastDarkNanos;
    /** How many signs a code has; 0 where that varies. */
    final int places;

    private final int[] choices;
    /** Logarithms of how many signs each place may hold; of one place where the length of codes varies. */
    final double[] logChoices;
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
        this.logChoices = Arrays.stream(choices).mapToDouble(StrictMath::log).toArray();
        this.logChoicesOfACode = Arrays.stream(logChoices).sum();
        this.marksRepeats = format.gaps().beforeRepeatNanos() != format.gaps().betweenCodesNanos()
                && format.repeats().mostCodes() > 1;
        this.framingCode = format.framingCode().orElse("");
        this.times = new FormatTimes(format);
        this.grammar = FreeGrammar.of(format, times);
        Set<Double> lights = new LinkedHashSet<>();
        format.flashKinds().forEach(kind -> lights.add(times.light(kind).seconds()));
        times.cylinderFlash.ifPresent(light -> lights.add(light.seconds()));
        times.leadIn.ifPresent(light -> lights.add(light.seconds()));
        Set<Double> gaps = new LinkedHashSet<>();
        for (Gap gap : List.of(times.within, times.digits, times.codes, times.repeat)) {
            gaps.add(gap.seconds());
        }
        times.aroundSeparator.ifPresent(gap -> gaps.add(gap.seconds()));
        times.afterLeadIn.ifPresent(gap -> gaps.add(gap.seconds()));
        if (format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            lights.add(FormatTimes.light(blinking.onNanos()).seconds());
            gaps.add(FormatTimes.gap(blinking.offNanos()).seconds());
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
