package telltally.decoder.testkit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** The plain decoder with one small thing wrong. */
public final class BrokenDecoders {
    private BrokenDecoders() {}

    /** Loses the last of nine flashes in the ones. */
    public static Decoder countingToEight() {
        return changed("counts-to-eight", reading -> withCodes(reading, code -> code.replaceAll("9$", "8")));
    }

    /** Believes no clock that is more than a tenth slow. */
    public static Decoder impatient() {
        return changed("impatient", reading -> {
            boolean slow =
                    reading.format().map(format -> format.clockScale() > 1.1).orElse(false);
            return slow ? new Reading(reading.format(), Map.of(), List.of(), List.of()) : reading;
        });
    }

    private static Decoder changed(String id, UnaryOperator<Reading> change) {
        return new Decoder() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
                return change.apply(new PlainDecoder().decode(train, candidates));
            }
        };
    }

    private static Reading withCodes(Reading reading, UnaryOperator<String> change) {
        Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        reading.codes()
                .forEach((segment, list) ->
                        codes.put(segment, list.stream().map(change).toList()));
        List<Reading.Group> groups = reading.groups().stream()
                .map(group -> new Reading.Group(
                        group.kind(),
                        group.segment(),
                        change.apply(group.digits()),
                        group.probability(),
                        group.startNanos(),
                        group.endNanos(),
                        group.alternatives()))
                .toList();
        return new Reading(reading.format(), codes, groups, reading.warnings());
    }
}
