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
    final FreeGrammar grammar;
    final CoarseClock clock;
    final long leastLitNanos;
    final long leastDarkNanos;

    FormatModel(FlashFormat format) {
        this.format = format;
        this.grammar = FreeGrammar.of(format);
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

    /** How many signs a place may hold. */
    int choices(int place) {
        if (format.shape() instanceof CodeShape.Counted counted) {
            return counted.places()
                    .get(Math.min(place, counted.places().size() - 1))
                    .counts()
                    .size();
        }
        return ((CodeShape.Spelled) format.shape()).table().size();
    }

    /** How many signs a code has; 0 where that varies. */
    int places() {
        return format.shape() instanceof CodeShape.Counted counted
                ? counted.places().size()
                : 0;
    }
}
