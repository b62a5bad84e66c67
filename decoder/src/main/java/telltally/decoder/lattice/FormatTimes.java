package telltally.decoder.lattice;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import telltally.decoder.lattice.Automaton.Gap;
import telltally.decoder.lattice.Automaton.Light;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashKind;

/** The flashes and gaps that a format names, one object for each, so that automata can tell them apart at a glance. */
final class FormatTimes {
    private static final double SECONDS = 1e-9;

    final Gap within;
    final Gap digits;
    final Gap codes;
    final Gap repeat;
    final Optional<Gap> aroundSeparator;
    final Optional<Light> cylinderFlash;
    final Optional<Light> leadIn;
    final Optional<Gap> afterLeadIn;
    private final Map<FlashKind, Light> lights = new HashMap<>();

    FormatTimes(FlashFormat format) {
        within = gap(format.gaps().withinDigitNanos());
        digits = gap(format.gaps().betweenDigitsNanos());
        codes = gap(format.gaps().betweenCodesNanos());
        repeat = gap(format.gaps().beforeRepeatNanos());
        aroundSeparator = format.sessions().map(sessions -> gap(sessions.aroundSeparatorNanos()));
        cylinderFlash =
                format.sessions().map(sessions -> light(sessions.cylinderFlash().onNanos()));
        leadIn = format.leadIn().map(lead -> light(lead.litNanos()));
        afterLeadIn = format.leadIn().map(lead -> gap(lead.darkAfterNanos()));
        format.flashKinds().forEach(kind -> lights.put(kind, light(kind.onNanos())));
    }

    /** @throws NullPointerException if the kind is none of the format's codes */
    Light light(FlashKind kind) {
        return Objects.requireNonNull(lights.get(kind));
    }

    static Gap gap(long nanos) {
        return Gap.fixed(nanos * SECONDS);
    }

    static Light light(long nanos) {
        return new Light(nanos * SECONDS, 0);
    }
}
