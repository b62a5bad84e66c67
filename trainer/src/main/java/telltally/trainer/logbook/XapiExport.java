package telltally.trainer.logbook;

import java.io.Writer;
import java.net.URI;
import java.time.Instant;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Answers as xAPI statements, one JSON array of them. Structure: "Experience API" 1.0.3, part two, sections 2.2 to 2.4,
 * 4.5 (instants in UTC) and 4.6 (durations). A learner is an account at the home page that the exporter names; drills
 * and lessons are activities below it. An answer has the same statement id in every export.
 */
public final class XapiExport implements AutoCloseable {
    /** Activity type and interaction type of something answered by text (section 2.4.4.1). */
    private static final String INTERACTION = "http://adlnet.gov/expapi/activities/cmi.interaction";

    private static final String ANSWERED = "http://adlnet.gov/expapi/verbs/answered";

    /** What the text of a drill's answer may begin with. */
    private static final Set<String> KINDS = Set.of("written", "counted", "chosen", "none");

    private final URI homePage;
    private final JsonGenerator json;

    /**
     * @param homePage where learners' names are unique, an absolute web address
     * @param out closed with this
     * @throws IllegalArgumentException if it is no absolute web address
     */
    public XapiExport(URI homePage, Writer out) {
        if (!isHomePage(homePage)) {
            throw new IllegalArgumentException("no web address: " + homePage);
        }
        this.homePage = homePage;
        this.json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), out);
        json.writeStartArray();
    }

    /** Whether learners may have their accounts there: http or https, a host, and nothing behind the path. */
    public static boolean isHomePage(URI address) {
        return ("http".equals(address.getScheme()) || "https".equals(address.getScheme()))
                && address.getHost() != null
                && address.getRawQuery() == null
                && address.getRawFragment() == null;
    }

    public void drill(Learner learner, DrillEntry drill) {
        json.writeRaw('\n');
        json.writeStartObject();
        begin(drill.id(), drill.answeredAt(), learner);
        activity("drill/" + EntryTable.key(drill.skill()), EntryTable.key(drill.skill()), words(drill.expected()));
        json.writeObjectPropertyStart("result");
        json.writeStringProperty("response", words(drill.given()));
        json.writeBooleanProperty("success", drill.right());
        json.writeBooleanProperty("completion", true);
        score(drill.right() ? 1 : 0, 1);
        json.writeStringProperty("duration", duration(drill.timing().answerNanos()));
        json.writeObjectPropertyStart("extensions");
        json.writeNumberProperty(iri("extension/level"), drill.level().value());
        json.writeStringProperty(iri("extension/item"), drill.item());
        json.writeStringProperty(
                iri("extension/lamp-time"), duration(drill.timing().lampNanos()));
        end(drill);
    }

    public void lesson(Learner learner, LessonEntry lesson) {
        json.writeRaw('\n');
        json.writeStartObject();
        begin(lesson.id(), lesson.answeredAt(), learner);
        activity("lesson/" + lesson.lesson(), lesson.lesson(), words(lesson.sentText()));
        json.writeObjectPropertyStart("result");
        json.writeStringProperty("response", words(lesson.writtenText()));
        json.writeBooleanProperty("success", lesson.right());
        json.writeBooleanProperty("completion", true);
        if (lesson.codesSent() > 0) {
            score(lesson.codesRight(), lesson.codesSent());
        }
        json.writeObjectPropertyStart("extensions");
        end(lesson);
    }

    @Override
    public void close() {
        json.writeRaw('\n');
        json.writeEndArray();
        json.writeRaw('\n');
        json.close();
    }

    private void begin(UUID id, Instant at, Learner learner) {
        json.writeStringProperty("id", id.toString());
        json.writeStringProperty("timestamp", EntryTable.text(at));
        json.writeObjectPropertyStart("actor");
        json.writeStringProperty("objectType", "Agent");
        json.writeObjectPropertyStart("account");
        json.writeStringProperty("homePage", homePage.toString());
        json.writeStringProperty("name", learner.name());
        json.writeEndObject();
        json.writeEndObject();
        json.writeObjectPropertyStart("verb");
        json.writeStringProperty("id", ANSWERED);
        inEnglish("display", "answered");
        json.writeEndObject();
    }

    private void activity(String path, String name, String rightAnswer) {
        json.writeObjectPropertyStart("object");
        json.writeStringProperty("objectType", "Activity");
        json.writeStringProperty("id", iri(path));
        json.writeObjectPropertyStart("definition");
        json.writeStringProperty("type", INTERACTION);
        json.writeStringProperty("interactionType", "fill-in");
        json.writeArrayPropertyStart("correctResponsesPattern");
        json.writeString(rightAnswer);
        json.writeEndArray();
        inEnglish("name", name);
        json.writeEndObject();
        json.writeEndObject();
    }

    private void inEnglish(String property, String text) {
        json.writeObjectPropertyStart(property);
        json.writeStringProperty("en", text);
        json.writeEndObject();
    }

    private void score(int raw, int most) {
        json.writeObjectPropertyStart("score");
        json.writeNumberProperty("scaled", (double) raw / most);
        json.writeNumberProperty("raw", raw);
        json.writeNumberProperty("min", 0);
        json.writeNumberProperty("max", most);
        json.writeEndObject();
    }

    /** What every result ends with. */
    private void end(Entry entry) {
        Circumstances with = entry.circumstances();
        json.writeBooleanProperty(iri("extension/scored"), entry.scored());
        json.writeStringProperty(iri("extension/format"), with.format());
        json.writeStringProperty(iri("extension/display"), with.display());
        json.writeNumberProperty(iri("extension/seed"), with.seed());
        json.writeNumberProperty(iri("extension/generator"), with.generator());
        json.writeStringProperty(iri("extension/program"), with.program());
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndObject();
    }

    private String iri(String path) {
        String home = homePage.toString();
        return home + (home.endsWith("/") ? "" : "/") + "telltally/" + path;
    }

    /** The parts of an answer, without its kind and without when each was written, joined as section 2.4.4.1 wants. */
    private static String words(String answer) {
        return Arrays.stream(answer.split(" ", -1))
                .filter(word -> !word.isEmpty() && !KINDS.contains(word))
                .map(word -> word.replaceFirst("@[0-9]+$", ""))
                .collect(Collectors.joining("[,]"));
    }

    /** ISO 8601, to a hundredth of a second (section 4.6). */
    private static String duration(long nanos) {
        long hundredths = Math.max(0, Math.round(nanos / 1e7));
        String part = hundredths % 100 == 0
                ? ""
                : "." + (hundredths % 10 == 0 ? hundredths % 100 / 10 : twoDigits(hundredths % 100));
        return "PT" + hundredths / 100 + part + "S";
    }

    private static String twoDigits(long number) {
        return number < 10 ? "0" + number : Long.toString(number);
    }
}
