package telltally.simulator.recording;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
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
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeStringProperty("schema", SCHEMA);
            json.writeStringProperty("scenario", recording.scenarioId());
            json.writeNumberProperty("seed", recording.seed());
            json.writeNumberProperty("generator", recording.generatorVersion());
            json.writeStringProperty("format", recording.truth().formatId());
            json.writeObjectPropertyStart("codes");
            for (Map.Entry<Segment, List<String>> segment :
                    recording.truth().codes().entrySet()) {
                json.writeArrayPropertyStart(segment.getKey().key());
                segment.getValue().forEach(json::writeString);
                json.writeEndArray();
            }
            json.writeEndObject();
            json.writeArrayPropertyStart("events");
            for (SentGroup group : recording.truth().groups()) {
                json.writeRaw('\n');
                json.writeStartObject();
                json.writeStringProperty("kind", group.kind().key());
                json.writeStringProperty("segment", group.segment().key());
                json.writeStringProperty("digits", group.digits());
                seconds(json, "start_s", group.startNanos());
                seconds(json, "end_s", group.endNanos());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append("\n").toString();
    }

    private static void seconds(JsonGenerator json, String name, long nanos) {
        json.writeName(name);
        json.writeNumber(new BigDecimal(Seconds.text(nanos)));
    }
}
