package telltally.decoder.card;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import telltally.decoder.card.statistics.Decimals;
import telltally.decoder.card.statistics.WilsonInterval;
import telltally.decoder.score.CurvePoint;
import telltally.decoder.score.Floors;
import telltally.decoder.score.Line;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Score cards as JSON, in the order in which a person would read them: the summary, then each set. Counts are what counts;
 * shares and intervals stand beside them for whoever reads the file with other programs. The same card gives the same
 * bytes: numbers are whole, or decimals of six places.
 */
public final class CardJson {
    public static final String SCHEMA = "telltally/scorecard/1";

    private static final int PLACES = 6;

    private final JsonGenerator json;

    private CardJson(JsonGenerator json) {
        this.json = json;
    }

    /** One object, a line for each set, and a line end. */
    public static String text(ScoreCard card) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            new CardJson(json).card(card);
        }
        return text + "\n";
    }

    private void card(ScoreCard card) {
        json.writeStartObject();
        json.writeStringProperty("schema", SCHEMA);
        json.writeStringProperty("decoder", card.decoder());
        json.writeNumberProperty("generator", card.generator());
        texts("arguments", card.arguments());
        json.writeBooleanProperty("told_format", card.toldFormat());
        part(card.part());
        json.writeArrayPropertyStart("summary");
        card.lines().forEach(line -> summary(line, card.total(line)));
        json.writeEndArray();
        json.writeArrayPropertyStart("sets");
        for (SetCard set : card.sets()) {
            json.writeRaw("\n");
            set(set, card.part().whole());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void part(Part part) {
        if (part.whole()) {
            return;
        }
        json.writeObjectPropertyStart("shard");
        json.writeNumberProperty("of", part.of());
        json.writeArrayPropertyStart("parts");
        part.shards().forEach(json::writeNumber);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void summary(Line line, Tally tally) {
        Counts counts = tally.counts();
        json.writeStartObject();
        json.writeStringProperty("line", line.key());
        share("sessions_right", counts.sessionsRight(), counts.sessions());
        share("lists_right", counts.listsRight(), counts.lists());
        share("codes_right", counts.codesRight(), counts.codes());
        if (tally.calibration().codes() > 0) {
            json.writeName("expected_calibration_error");
            decimal(tally.calibration().expectedError().orElseThrow());
        }
        json.writeEndObject();
    }

    private void share(String name, long right, long all) {
        WilsonInterval interval = WilsonInterval.of(right, all);
        json.writeObjectPropertyStart(name);
        json.writeNumberProperty("right", right);
        json.writeNumberProperty("of", all);
        if (all > 0) {
            json.writeName("share");
            json.writeNumber(Decimals.share(right, all, PLACES));
        }
        json.writeName("low");
        json.writeNumber(Decimals.down(interval.low(), PLACES));
        json.writeName("high");
        json.writeNumber(Decimals.up(interval.high(), PLACES));
        json.writeEndObject();
    }

    private void set(SetCard set, boolean whole) {
        SetCard.Title title = set.title();
        json.writeStartObject();
        json.writeStringProperty("id", title.id());
        json.writeStringProperty("why", title.why());
        curve(title.curve());
        texts("channel", title.channel());
        json.writeNumberProperty("first_seed", title.from());
        json.writeNumberProperty("seeds", title.seeds());
        json.writeNumberProperty("cases", title.cases());
        json.writeStringProperty("fingerprint", title.fingerprint());
        floors(set.floors());
        json.writeArrayPropertyStart("flaws");
        for (SetCard.Flaw flaw : set.flaws()) {
            json.writeStartObject();
            json.writeNumberProperty("block", flaw.block());
            json.writeStringProperty("text", flaw.text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("lines");
        for (LineCard line : set.lines()) {
            line(line, whole ? set.shortfalls(line) : List.of());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void curve(Optional<CurvePoint> curve) {
        if (curve.isEmpty()) {
            return;
        }
        json.writeObjectPropertyStart("curve");
        json.writeStringProperty("family", curve.get().family());
        json.writeName("strength");
        decimal(BigDecimal.valueOf(curve.get().strength()));
        json.writeStringProperty("unit", curve.get().unit());
        json.writeEndObject();
    }

    private void floors(Optional<Floors> floors) {
        if (floors.isEmpty()) {
            return;
        }
        json.writeObjectPropertyStart("floors");
        json.writeName("lists_right");
        decimal(BigDecimal.valueOf(floors.get().listsRight()));
        json.writeName("codes_right");
        decimal(BigDecimal.valueOf(floors.get().codesRight()));
        json.writeNumberProperty("invented_codes", floors.get().inventedCodes());
        json.writeEndObject();
    }

    private void line(LineCard line, List<String> shortfalls) {
        json.writeStartObject();
        json.writeStringProperty("line", line.line().key());
        texts("below_floor", shortfalls);
        Counts all = line.decoder().counts();
        share("lists_right", all.listsRight(), all.lists());
        share("codes_right", all.codesRight(), all.codes());
        json.writeArrayPropertyStart("formats");
        line.formats().forEach(this::format);
        json.writeEndArray();
        texts("right", line.right().texts());
        json.writeArrayPropertyStart("worst");
        line.worst().forEach(this::worst);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void format(FormatCard format) {
        Tally tally = format.decoder();
        json.writeStartObject();
        json.writeStringProperty("format", format.format());
        json.writeName("decoder");
        counts(tally.counts());
        beside("plain", format.plain());
        beside("lattice_told", format.told());
        json.writeObjectPropertyStart("read_as");
        tally.readAs().forEach(json::writeNumberProperty);
        json.writeEndObject();
        json.writeObjectPropertyStart("failures");
        tally.failures().forEach((kind, count) -> json.writeNumberProperty(word(kind), count));
        json.writeEndObject();
        calibration(tally.calibration());
        json.writeEndObject();
    }

    /** As files write a kind of failure: {@code out-of-order}. */
    public static String word(Enum<?> kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void beside(String name, Optional<Counts> counts) {
        if (counts.isPresent()) {
            json.writeName(name);
            counts(counts.get());
        }
    }

    private void counts(Counts counts) {
        json.writeStartObject();
        json.writeNumberProperty("sessions", counts.sessions());
        json.writeNumberProperty("sessions_right", counts.sessionsRight());
        json.writeNumberProperty("lists", counts.lists());
        json.writeNumberProperty("lists_right", counts.listsRight());
        json.writeNumberProperty("codes", counts.codes());
        json.writeNumberProperty("codes_right", counts.codesRight());
        json.writeNumberProperty("codes_wrong", counts.codesWrong());
        json.writeNumberProperty("codes_lost", counts.codesLost());
        json.writeNumberProperty("codes_invented", counts.codesInvented());
        json.writeEndObject();
    }

    /** Bins that hold nothing are left out. */
    private void calibration(Calibration calibration) {
        json.writeArrayPropertyStart("calibration");
        for (int i = 0; i < Calibration.BINS; i++) {
            Calibration.Bin bin = calibration.bins().get(i);
            if (bin.codes() > 0) {
                json.writeStartObject();
                json.writeNumberProperty("bin", i);
                json.writeNumberProperty("codes", bin.codes());
                json.writeNumberProperty("right", bin.right());
                json.writeNumberProperty("millionths", bin.millionths());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void worst(WorstCase worst) {
        json.writeStartObject();
        json.writeNumberProperty("case", worst.index());
        json.writeNumberProperty("seed", worst.seed());
        json.writeStringProperty("origin", worst.origin());
        json.writeStringProperty("format", worst.format());
        json.writeNumberProperty("errors", worst.errors());
        json.writeStringProperty("sent", worst.sent());
        json.writeStringProperty("read", worst.read());
        worst.failure().ifPresent(failure -> json.writeStringProperty("failure", word(failure)));
        json.writeEndObject();
    }

    private void texts(String name, List<String> texts) {
        json.writeArrayPropertyStart(name);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    private void decimal(BigDecimal value) {
        json.writeNumber(value.setScale(PLACES, RoundingMode.HALF_EVEN).toPlainString());
    }
}
