package telltally.decoder.reading;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import telltally.decoder.reading.Reading.Alternative;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.Reading.Warning;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Seconds;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Readings as JSON, one line each. Numbers are written from integers, so that the text is the same on every JDK. */
public final class ReadingJson {
    public static final String SCHEMA = "telltally/reading/1";

    private static final int PLACES = 6;

    private final JsonFactory factory = new JsonFactory();

    /** @param source where the pulse train came from, as the user named it */
    public String text(Reading reading, String source) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = factory.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeStringProperty("schema", SCHEMA);
            json.writeStringProperty("source", source);
            json.writeName("format");
            if (reading.format().isPresent()) {
                format(json, reading.format().get());
            } else {
                json.writeNull();
            }
            json.writeObjectPropertyStart("codes");
            for (Map.Entry<Segment, List<String>> segment : reading.codes().entrySet()) {
                json.writeArrayPropertyStart(segment.getKey().key());
                segment.getValue().forEach(json::writeString);
                json.writeEndArray();
            }
            json.writeEndObject();
            json.writeArrayPropertyStart("groups");
            reading.groups().forEach(group -> group(json, group));
            json.writeEndArray();
            json.writeArrayPropertyStart("warnings");
            reading.warnings().forEach(warning -> warning(json, warning));
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static void format(JsonGenerator json, FormatEstimate format) {
        json.writeStartObject();
        json.writeStringProperty("id", format.id());
        number(json, "probability", format.probability());
        number(json, "clock_scale", format.clockScale());
        json.writeEndObject();
    }

    private static void group(JsonGenerator json, Group group) {
        json.writeStartObject();
        json.writeStringProperty("kind", group.kind().key());
        json.writeStringProperty("segment", group.segment().key());
        json.writeStringProperty("digits", group.digits());
        number(json, "probability", group.probability());
        seconds(json, "start_s", group.startNanos());
        seconds(json, "end_s", group.endNanos());
        json.writeArrayPropertyStart("alternatives");
        for (Alternative alternative : group.alternatives()) {
            json.writeStartObject();
            json.writeStringProperty("digits", alternative.digits());
            number(json, "probability", alternative.probability());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void warning(JsonGenerator json, Warning warning) {
        json.writeStartObject();
        seconds(json, "time_s", warning.atNanos());
        json.writeStringProperty("kind", warning.kind().key());
        json.writeStringProperty("text", warning.text());
        json.writeEndObject();
    }

    private static void seconds(JsonGenerator json, String name, long nanos) {
        json.writeName(name);
        // As text: a BigDecimal would write a short time as 1E-9.
        json.writeNumber(Seconds.text(nanos));
    }

    private static void number(JsonGenerator json, String name, double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN);
        BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        json.writeName(name);
        json.writeNumber((plain.scale() < 1 ? plain.setScale(1) : plain).toPlainString());
    }
}
