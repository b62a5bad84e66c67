package telltally.decoder.score;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;

/** Reads the floors of a seed set: by decoder, or, written shortly, those of the plain one alone. */
final class FloorFields {
    private FloorFields() {}

    static DecoderFloors read(Fields floors) {
        Map<String, Floors> byDecoder = new LinkedHashMap<>();
        if (isShort(floors)) {
            byDecoder.put(DecoderFloors.PLAIN, one(floors));
            return new DecoderFloors(byDecoder);
        }
        for (String decoder : floors.names()) {
            if (!decoder.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
                floors.problem(
                        decoder,
                        "is under the name " + Problem.quoted(decoder)
                                + "; expected the id of a decoder: small letters, figures and single hyphens");
            }
            floors.object(decoder).ifPresent(each -> byDecoder.put(decoder, one(each)));
        }
        if (floors.names().isEmpty()) {
            floors.problem("is empty; the floors of at least one decoder were expected");
        }
        return new DecoderFloors(byDecoder);
    }

    /** Whether numbers stand where decoders could. */
    static boolean isShort(Fields floors) {
        return Stream.of(FloorKind.values()).anyMatch(kind -> floors.has(kind.key()));
    }

    private static Floors one(Fields floors) {
        Floors read = new Floors(
                floors.number(FloorKind.LISTS_RIGHT.key(), 0, FloorKind.LISTS_RIGHT.most()),
                floors.number(FloorKind.CODES_RIGHT.key(), 0, FloorKind.CODES_RIGHT.most()),
                floors.whole(FloorKind.INVENTED_CODES.key(), 0, FloorKind.INVENTED_CODES.most()));
        floors.close();
        return read;
    }
}
