package telltally.decoder.outside;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatJson;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The lines that are sent to a program. */
final class Request {
    private static final String GREETING_SCHEMA = "telltally/greeting/1";
    private static final String SCHEMA = "telltally/request/1";

    private final JsonFactory factory = new JsonFactory();

    String greeting() {
        return line(json -> json.writeStringProperty("schema", GREETING_SCHEMA));
    }

    /**
     * @param candidates the formats that the train may be in
     * @param defined those of them whose rules are told
     */
    String session(long id, PulseTrain train, List<FlashFormat> candidates, List<FlashFormat> defined) {
        return line(json -> {
            json.writeStringProperty("schema", SCHEMA);
            json.writeNumberProperty("id", id);
            json.writeArrayPropertyStart("formats");
            candidates.forEach(format -> json.writeString(format.id()));
            json.writeEndArray();
            if (!defined.isEmpty()) {
                json.writeArrayPropertyStart("definitions");
                defined.forEach(format -> json.writeRawValue(FormatJson.text(format)));
                json.writeEndArray();
            }
            json.writeBooleanProperty("lit_at_start", train.litAtStart());
            json.writeArrayPropertyStart("edges_s");
            for (int i = 0; i < train.edgeCount(); i++) {
                // As text: a BigDecimal would write a short time as 1E-9.
                json.writeNumber(Seconds.text(train.edgeNanos(i)));
            }
            json.writeEndArray();
            json.writeName("end_s");
            json.writeNumber(Seconds.text(train.endNanos()));
        });
    }

    private String line(Consumer<JsonGenerator> members) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = factory.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            members.accept(json);
            json.writeEndObject();
        }
        return text.toString();
    }
}
