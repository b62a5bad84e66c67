package telltally.trainer.logbook;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/**
 * What one statement does against the rules of "Experience API" 1.0.3, part two, as far as our statements touch them. In
 * brackets: the section.
 */
final class XapiRules {
    private static final Pattern UUID =
            Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");
    private static final Pattern INSTANT = Pattern.compile(
            "[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}\\.[0-9]{3,}(Z|[+-][0-9]{2}:[0-9]{2})");
    private static final Pattern DURATION = Pattern.compile("PT[0-9]+(\\.[0-9]{1,2})?S");

    private final JsonNode statement;
    private final List<String> broken = new ArrayList<>();

    private XapiRules(JsonNode statement) {
        this.statement = statement;
    }

    static List<String> brokenBy(JsonNode statement) {
        XapiRules rules = new XapiRules(statement);
        rules.check();
        return rules.broken;
    }

    private void check() {
        require(statement.has("actor") && statement.has("verb") && statement.has("object"), "2.2 actor, verb, object");
        known(statement, "id", "actor", "verb", "object", "result", "timestamp");
        noNulls(statement);
        require(UUID.matcher(text(statement, "id")).matches(), "2.4.1 id is a UUID");
        require(INSTANT.matcher(text(statement, "timestamp")).matches(), "4.5 timestamp with milliseconds and zone");
        actor(statement.path("actor"));
        require(absolute(text(statement.path("verb"), "id")), "2.4.3 verb id is an IRI");
        languages(statement.path("verb").path("display"));
        object(statement.path("object"));
        result(statement.path("result"));
    }

    private void actor(JsonNode actor) {
        known(actor, "objectType", "name", "mbox", "mbox_sha1sum", "openid", "account");
        long identifiers = List.of("mbox", "mbox_sha1sum", "openid", "account").stream()
                .filter(actor::has)
                .count();
        require(identifiers == 1, "2.4.2 exactly one identifier");
        JsonNode account = actor.path("account");
        known(account, "homePage", "name");
        require(absolute(text(account, "homePage")), "2.4.2.4 home page is an IRL");
        require(!text(account, "name").isEmpty(), "2.4.2.4 account has a name");
    }

    private void object(JsonNode object) {
        known(object, "objectType", "id", "definition");
        require(absolute(text(object, "id")), "2.4.4.1 activity id is an IRI");
        JsonNode definition = object.path("definition");
        known(
                definition,
                "name",
                "description",
                "type",
                "moreInfo",
                "interactionType",
                "correctResponsesPattern",
                "extensions");
        languages(definition.path("name"));
        if (definition.has("correctResponsesPattern")) {
            require(definition.has("interactionType"), "2.4.4.1 interaction type with a response pattern");
            require(definition.path("correctResponsesPattern").isArray(), "2.4.4.1 response patterns are a list");
        }
    }

    private void result(JsonNode result) {
        known(result, "score", "success", "completion", "response", "duration", "extensions");
        JsonNode score = result.path("score");
        known(score, "scaled", "raw", "min", "max");
        if (score.has("scaled")) {
            double scaled = score.path("scaled").asDouble();
            require(scaled >= -1 && scaled <= 1, "2.4.5.1 scaled score from -1 to 1");
        }
        if (score.has("raw")) {
            double raw = score.path("raw").asDouble();
            double min = score.path("min").asDouble();
            double max = score.path("max").asDouble();
            require(min < max && raw >= min && raw <= max, "2.4.5.1 raw score within min and max");
        }
        require(!result.has("success") || result.path("success").isBoolean(), "2.4.5 success is a boolean");
        require(
                !result.has("duration")
                        || DURATION.matcher(text(result, "duration")).matches(),
                "4.6 duration to a hundredth of a second");
        result.path("extensions").propertyNames().forEach(key -> require(absolute(key), "4.1 extension key is an IRI"));
    }

    private void languages(JsonNode map) {
        map.propertyNames().forEach(key -> require(key.matches("[a-z]{2}(-[A-Za-z0-9]+)*"), "4.2 language map"));
    }

    private void known(JsonNode object, String... keys) {
        object.propertyNames().forEach(key -> require(Set.of(keys).contains(key), "2.2 unknown key " + key));
    }

    private void noNulls(JsonNode node) {
        node.forEach(child -> {
            require(!child.isNull(), "2.2 no nulls");
            noNulls(child);
        });
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asString("");
    }

    private static boolean absolute(String address) {
        try {
            return URI.create(address).isAbsolute();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void require(boolean so, String rule) {
        if (!so && !broken.contains(rule)) {
            broken.add(rule);
        }
    }
}
