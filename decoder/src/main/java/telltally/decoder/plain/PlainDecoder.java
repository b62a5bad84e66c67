package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.signal.PulseTrain;

/**
 * The simplest decoder that works. For each candidate format it leaves out bounce and fast lists, looks for the scale
 * of the clock, splits the flashes into runs at the gaps that are too long for a digit, and finds the roles for those
 * runs that break the format's rules least. The format that explains the lengths best is the one.
 *
 * <p>The probability of a format is {@code exp(g) / (exp(-6) + sum exp(g))}, the sum over all candidates, g being the
 * gain in nats over chance; exp(-6) stands for none of them.
 */
public final class PlainDecoder implements Decoder {
    private static final double DOUBTFUL = 0.9;

    /** What no format at all gains: who asks for codes has most often recorded some, and even one flash may be one. */
    private static final double NONE = -6;

    @Override
    public String id() {
        return "plain";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        List<Attempt> attempts = new ArrayList<>();
        boolean flashed = false;
        for (FlashFormat format : candidates) {
            Lengths lengths = new Lengths(format);
            Flashes flashes = new Flashes(format.restsLit() ? train.inverted() : train, lengths);
            if (flashes.count() > 0) {
                flashed = true;
                attempt(format, lengths, flashes).ifPresent(attempts::add);
            }
        }
        if (!flashed) {
            return nothing(WarningKind.NO_FLASHES, "no flash was seen");
        }
        Optional<Attempt> best = best(attempts);
        return best.isPresent() && best.get().gain() > NONE
                ? reading(best.get(), attempts)
                : nothing(WarningKind.NO_FORMAT, noFormat(candidates));
    }

    private static String noFormat(List<FlashFormat> candidates) {
        return candidates.size() == 1
                ? "the flashes are not in the format " + candidates.get(0).id()
                : "the flashes are in none of the formats";
    }

    private static Reading nothing(WarningKind kind, String text) {
        return Reading.nothing(new Warning(0, kind, text));
    }

    private static Optional<Attempt> attempt(FlashFormat format, Lengths lengths, Flashes flashes) {
        return best(Stream.concat(
                        new CodeReader(format, lengths).read(flashes).stream(), Blinking.read(flashes, format).stream())
                .toList());
    }

    /** The first of those that gain most. */
    private static Optional<Attempt> best(List<Attempt> attempts) {
        Attempt best = null;
        for (Attempt each : attempts) {
            if (best == null || each.gain() > best.gain()) {
                best = each;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Reading reading(Attempt best, List<Attempt> attempts) {
        double all = StrictMath.exp(NONE - best.gain());
        for (Attempt each : attempts) {
            all += StrictMath.exp(each.gain() - best.gain());
        }
        double probability = 1 / all;
        Transcript transcript = best.transcript().get();
        List<Warning> warnings = new ArrayList<>(best.flashes().warnings());
        warnings.addAll(transcript.warnings());
        if (probability < DOUBTFUL) {
            warnings.add(
                    new Warning(0, WarningKind.FORMAT_DOUBTFUL, "another format explains the flashes nearly as well"));
        }
        warnings.sort(Comparator.comparingLong(Warning::atNanos));
        return new Reading(
                Optional.of(new FormatEstimate(best.format().id(), probability, StrictMath.exp(best.scale()))),
                best.codes(),
                transcript.groups(),
                warnings);
    }
}
