package telltally.simulator.format;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.CodeShape.Spelled;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.signal.Seconds;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * A flash format as the JSON of its file, on one line. Read again, it is the same format; lengths that a file may leave
 * out are written, and figures always with their number of flashes.
 */
public final class FormatJson {
    private final JsonGenerator json;

    private FormatJson(JsonGenerator json) {
        this.json = json;
    }

    public static String text(FlashFormat format) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            new FormatJson(json).write(format);
        }
        return text.toString();
    }

    private void write(FlashFormat format) {
        json.writeStartObject();
        json.writeStringProperty("schema", FormatReader.SCHEMA);
        json.writeStringProperty("id", format.id());
        json.writeStringProperty("title", format.title());
        if (!format.notes().isEmpty()) {
            json.writeStringProperty("notes", format.notes());
        }
        json.writeBooleanProperty("rests_lit", format.restsLit());
        flashes(format);
        json.writeObjectPropertyStart("code");
        shape(format.shape());
        json.writeEndObject();
        gaps(format.gaps());
        list(format.repeats());
        format.leadIn().ifPresent(leadIn -> {
            json.writeObjectPropertyStart("lead_in");
            seconds("lit_s", leadIn.litNanos());
            seconds("dark_after_s", leadIn.darkAfterNanos());
            json.writeEndObject();
        });
        format.framingCode().ifPresent(code -> json.writeStringProperty("framing_code", code));
        nothingToReport(format.nothingToReport());
        format.sessions().ifPresent(this::sessions);
        format.burst().ifPresent(burst -> {
            json.writeObjectPropertyStart("burst");
            json.writeNumberProperty("times_faster", burst.timesFaster());
            json.writeEndObject();
        });
        json.writeEndObject();
    }

    /** Those of the codes; separator and cylinder flashes are among them, or of a kind of their own. */
    private void flashes(FlashFormat format) {
        json.writeObjectPropertyStart("flashes_s");
        List<FlashKind> kinds = format.flashKinds();
        kinds.forEach(kind -> seconds(kind.name(), kind.onNanos()));
        format.sessions()
                .map(Sessions::cylinderFlash)
                .filter(kind -> !kinds.contains(kind))
                .ifPresent(kind -> seconds(kind.name(), kind.onNanos()));
        json.writeEndObject();
    }

    private void shape(CodeShape shape) {
        if (shape instanceof Counted counted) {
            json.writeArrayPropertyStart("places");
            counted.places().forEach(this::place);
            json.writeEndArray();
        } else if (shape instanceof Spelled spelled) {
            json.writeObjectPropertyStart("signs");
            for (Map.Entry<String, List<FlashKind>> sign : spelled.table().entrySet()) {
                json.writeStringProperty(
                        sign.getKey(),
                        sign.getValue().stream().map(FlashKind::name).collect(Collectors.joining()));
            }
            json.writeEndObject();
            json.writeNumberProperty("most_signs", spelled.longest());
        }
    }

    private void place(Place place) {
        json.writeStartObject();
        json.writeStringProperty("flash", place.flash().name());
        json.writeObjectPropertyStart("counts");
        place.counts().forEach(json::writeNumberProperty);
        json.writeEndObject();
        json.writeEndObject();
    }

    private void gaps(FlashFormat.Gaps gaps) {
        json.writeObjectPropertyStart("gaps");
        seconds("within_digit_s", gaps.withinDigitNanos());
        seconds("between_digits_s", gaps.betweenDigitsNanos());
        seconds("between_codes_s", gaps.betweenCodesNanos());
        seconds("before_repeat_s", gaps.beforeRepeatNanos());
        json.writeEndObject();
    }

    private void list(FlashFormat.Repeats repeats) {
        json.writeObjectPropertyStart("list");
        json.writeNumberProperty("each_code_times", repeats.eachCodeTimes());
        if (repeats.loops()) {
            json.writeBooleanProperty("loops", true);
        } else {
            json.writeNumberProperty("list_times", repeats.listTimes());
        }
        json.writeNumberProperty("most_codes", repeats.mostCodes());
        json.writeEndObject();
    }

    private void nothingToReport(NothingToReport nothing) {
        if (nothing instanceof NothingToReport.Dark) {
            return;
        }
        json.writeObjectPropertyStart("nothing_to_report");
        if (nothing instanceof NothingToReport.PassCode pass) {
            json.writeStringProperty("code", pass.code());
        } else if (nothing instanceof NothingToReport.Blinking blinking) {
            seconds("blink_on_s", blinking.onNanos());
            seconds("blink_off_s", blinking.offNanos());
        }
        json.writeEndObject();
    }

    private void sessions(Sessions sessions) {
        json.writeObjectPropertyStart("sessions");
        json.writeNumberProperty("separator_flashes", sessions.separatorFlashes());
        seconds("around_separator_s", sessions.aroundSeparatorNanos());
        json.writeStringProperty("flash", sessions.cylinderFlash().name());
        seconds("running_test_s", sessions.runningTestNanos());
        json.writeNumberProperty("most_balance_flashes", sessions.mostBalanceFlashes());
        json.writeEndObject();
    }

    private void seconds(String name, long nanos) {
        json.writeName(name);
        json.writeNumber(Seconds.text(nanos));
    }
}
