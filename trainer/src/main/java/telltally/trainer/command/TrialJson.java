package telltally.trainer.command;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import telltally.trainer.trial.Estimate;
import telltally.trainer.trial.OrderOutcome;
import telltally.trainer.trial.TrialOutcome;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The outcome of a trial as one line of JSON. */
final class TrialJson {
    private static final int PLACES = 4;

    private TrialJson() {}

    static String of(String assumptions, TrialOutcome outcome) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeNumberProperty("learners", outcome.learners());
            json.writeNumberProperty("phi", outcome.phi());
            json.writeStringProperty("assumptions", assumptions);
            json.writeNumberProperty("out_of_reach", outcome.outOfReach());
            json.writeName("minutes_to_mastery");
            json.writeStartObject();
            for (OrderOutcome order : outcome.orders()) {
                json.writeNumberProperty(
                        order.id(), rounded(order.minutesToMastery().value()));
            }
            json.writeEndObject();
            json.writeStringProperty("intervals", "bootstrap percentile over learners, 95 %");
            intervals(json, outcome, "minutes_to_mastery_interval", OrderOutcome::minutesToMastery);
            estimates(json, outcome, "minutes_to_shown_mastery", OrderOutcome::minutesToShown);
            estimates(json, outcome, "tutor_saves_share", OrderOutcome::saved);
            estimates(json, outcome, "tutor_saves_share_of_shown", OrderOutcome::savedShown);
            estimates(json, outcome, "false_passes_share", OrderOutcome::falsePasses);
            estimates(json, outcome, "retained_day_30", OrderOutcome::retained);
            estimates(json, outcome, "days", OrderOutcome::days);
            estimates(json, outcome, "drills", OrderOutcome::drills);
            json.writeName("unfinished");
            json.writeStartObject();
            outcome.orders().forEach(order -> json.writeNumberProperty(order.id(), order.unfinished()));
            json.writeEndObject();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static void intervals(
            JsonGenerator json, TrialOutcome outcome, String name, Function<OrderOutcome, Estimate> figure) {
        json.writeName(name);
        json.writeStartObject();
        for (OrderOutcome order : outcome.orders()) {
            json.writeName(order.id());
            json.writeStartArray();
            json.writeNumber(rounded(figure.apply(order).low()));
            json.writeNumber(rounded(figure.apply(order).high()));
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private static void estimates(
            JsonGenerator json, TrialOutcome outcome, String name, Function<OrderOutcome, Estimate> figure) {
        json.writeName(name);
        json.writeStartObject();
        for (OrderOutcome order : outcome.orders()) {
            json.writeNumberProperty(order.id(), rounded(figure.apply(order).value()));
        }
        json.writeEndObject();
        intervals(json, outcome, name + "_interval", figure);
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN);
    }
}
