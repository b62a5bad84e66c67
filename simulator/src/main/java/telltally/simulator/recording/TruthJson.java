package telltally.simulator.recording;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Seconds;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The truth of a recording as JSON. */
public final class TruthJson {
    public static final String SCHEMA = "telltally/truth/1";

    private TruthJson() {}

    /** One object with a line for each event, and a line end. */
    public static String text(Recording recording) {
        Truth truth = recording.truth();
        return written(json -> {
                    json.writeStartObject();
                    json.writeStringProperty("schema", SCHEMA);
                    json.writeStringProperty("scenario", recording.scenarioId());
                    json.writeNumberProperty("seed", recording.seed());
                    json.writeNumberProperty("generator", recording.generatorVersion());
                    json.writeStringProperty("format", truth.formatId());
                    codes(json, truth.codes());
                    json.writeArrayPropertyStart("events");
                    truth.groups().forEach(group -> json.writeRawValue("\n" + event(group)));
                    json.writeEndArray();
                    json.writeEndObject();
                })
                + "\n";
    }

    private static void codes(JsonGenerator json, Map<Segment, List<String>> codes) {
        json.writeObjectPropertyStart("codes");
        codes.forEach((segment, list) -> {
            json.writeArrayPropertyStart(segment.key());
            list.forEach(json::writeString);
            json.writeEndArray();
        });
        json.writeEndObject();
    }

    private static String event(SentGroup group) {
        return written(json -> {
            json.writeStartObject();
            json.writeStringProperty("kind", group.kind().key());
            json.writeStringProperty("segment", group.segment().key());
            json.writeStringProperty("digits", group.digits());
            seconds(json, "start_s", group.startNanos());
            seconds(json, "end_s", group.endNanos());
            json.writeEndObject();
        });
    }

    private static void seconds(JsonGenerator json, String name, long nanos) {
        json.writeName(name);
        // As text: a BigDecimal would write a short time as 1E-7.
        json.writeNumber(Seconds.text(nanos));
    }

    private static String written(Consumer<JsonGenerator> writing) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            writing.accept(json);
        }
        return text.toString();
    }
}
