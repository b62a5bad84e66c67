package telltally.simulator.recording;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.selftest.BenchEvent;
import telltally.simulator.selftest.Debrief.Confirmation;
import telltally.simulator.selftest.Debrief.Expectation;
import telltally.simulator.selftest.Debrief.Finding;
import telltally.simulator.selftest.Debrief.WeakCylinder;
import telltally.simulator.signal.Seconds;
import telltally.simulator.vehicle.Measurement;
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
                    if (recording.expectation().isPresent()) {
                        bench(json, recording.benchEvents());
                        expectation(json, recording.expectation().get());
                    }
                    json.writeEndObject();
                })
                + "\n";
    }

    private static void bench(JsonGenerator json, List<BenchEvent> events) {
        json.writeArrayPropertyStart("bench");
        for (BenchEvent event : events) {
            json.writeRawValue("\n"
                    + written(line -> {
                        line.writeStartObject();
                        seconds(line, "time_s", event.atNanos());
                        line.writeStringProperty("kind", event.kind().key());
                        line.writeStringProperty("detail", event.detail());
                        line.writeEndObject();
                    }));
        }
        json.writeEndArray();
    }

    private static void expectation(JsonGenerator json, Expectation expected) {
        json.writeObjectPropertyStart("expected");
        json.writeArrayPropertyStart("findings");
        for (Finding finding : expected.findings()) {
            json.writeRawValue("\n" + written(line -> finding(line, finding)));
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("weak_cylinders");
        for (WeakCylinder weak : expected.weakCylinders()) {
            json.writeStartObject();
            json.writeNumberProperty("cylinder", weak.number());
            json.writeStringProperty("cause", word(weak.cylinder().weakness()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeName("from_conditions");
        json.writeStartObject();
        lists(json, expected.fromConditions());
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void finding(JsonGenerator json, Finding finding) {
        json.writeStartObject();
        FaultJson.write(json, finding.fault());
        codes(json, finding.codes());
        if (!finding.silentSolenoids().isEmpty()) {
            json.writeArrayPropertyStart("silent_solenoids");
            finding.silentSolenoids().forEach(json::writeString);
            json.writeEndArray();
        }
        json.writeArrayPropertyStart("confirmed_by");
        for (Confirmation confirmation : finding.confirmations()) {
            Measurement measurement = confirmation.measurement();
            json.writeStartObject();
            json.writeStringProperty("measurement", measurement.name());
            json.writeStringProperty("quantity", word(measurement.quantity()));
            json.writeStringProperty("red", measurement.red().name());
            json.writeStringProperty("black", measurement.black().name());
            if (confirmation.outputsOn()) {
                json.writeBooleanProperty("outputs_on", true);
            }
            reading(json, "reads", confirmation.reading());
            reading(json, "sound_reads", confirmation.soundReading());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Three places are what a meter shows; over its range it shows no number. */
    private static void reading(JsonGenerator json, String name, double value) {
        json.writeName(name);
        if (Double.isInfinite(value)) {
            json.writeString("over range");
        } else {
            json.writeNumber(BigDecimal.valueOf(value)
                    .setScale(3, RoundingMode.HALF_EVEN)
                    .toPlainString());
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void codes(JsonGenerator json, Map<Segment, List<String>> codes) {
        json.writeObjectPropertyStart("codes");
        lists(json, codes);
        json.writeEndObject();
    }

    private static void lists(JsonGenerator json, Map<Segment, List<String>> codes) {
        codes.forEach((segment, list) -> {
            json.writeArrayPropertyStart(segment.key());
            list.forEach(json::writeString);
            json.writeEndArray();
        });
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
