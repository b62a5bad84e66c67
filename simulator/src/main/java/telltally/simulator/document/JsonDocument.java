package telltally.simulator.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON text (RFC 8259) into values that know their place. */
public final class JsonDocument {
    private static final int DEEPEST = 40;
    private static final int LONGEST_TEXT = 20_000;
    private static final int LONGEST_NUMBER = 60;

    /** What the parser adds for programmers: where its object came from, and which of its features to turn on. */
    private static final List<String> JAVA_TALK =
            List.of(" at [Source", " (start marker", ": enable `", " (not recognized as one since");

    private final JsonParser parser;

    private JsonDocument(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * @throws ProblemException if the text is not one JSON value and nothing else; a name given twice in one object is
     *     refused as well, since one of the two would be lost
     */
    public static Json parse(TextFile source) throws ProblemException {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxStringLength(LONGEST_TEXT)
                        .maxNameLength(LONGEST_TEXT)
                        .maxNumberLength(LONGEST_NUMBER)
                        .build())
                .build();
        String file = source.name();
        // From text, not from bytes: from bytes the parser counts columns in bytes.
        try (JsonParser parser = factory.createParser(tools.jackson.core.ObjectReadContext.empty(), source.text())) {
            return new JsonDocument(parser).only(file);
        }
    }

    private Json only(String file) throws ProblemException {
        try {
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw new ProblemException(Problem.of(file, "holds no JSON value"));
            }
            Json value = value(first);
            if (parser.nextToken() != null) {
                throw new ProblemException(
                        new Problem(file, tokenPlace(), "", "nothing may follow the end of the JSON value"));
            }
            return value;
        } catch (StreamConstraintsException e) {
            // It bears no place of its own; the parser got as far as this.
            throw new ProblemException(new Problem(file, place(parser.currentLocation()), "", tooMuch(e)));
        } catch (StreamReadException e) {
            throw new ProblemException(new Problem(file, place(e.getLocation()), "", told(e)));
        } catch (NumberFormatException e) {
            throw new ProblemException(
                    new Problem(file, tokenPlace(), "", "a number has an exponent beyond those that are read"));
        }
    }

    private Json value(@Nullable JsonToken token) {
        Place place = tokenPlace();
        if (token == null) {
            throw new StreamReadException(parser, "Unexpected end-of-input");
        }
        return switch (token) {
            case START_OBJECT -> object(place);
            case START_ARRAY -> array(place);
            case VALUE_STRING -> new Json.JsonText(place, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.JsonNumber(place, parser.getDecimalValue());
            case VALUE_TRUE, VALUE_FALSE -> new Json.JsonFlag(place, token == JsonToken.VALUE_TRUE);
            default -> new Json.JsonNull(place);
        };
    }

    private Json object(Place place) {
        Map<String, Json> members = new LinkedHashMap<>();
        Map<String, Place> names = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            names.put(name, tokenPlace());
            members.put(name, value(parser.nextToken()));
        }
        return new Json.JsonObject(place, members, names);
    }

    private Json array(Place place) {
        List<Json> elements = new ArrayList<>();
        JsonToken token = parser.nextToken();
        while (token != JsonToken.END_ARRAY) {
            elements.add(value(token));
            token = parser.nextToken();
        }
        return new Json.JsonArray(place, elements);
    }

    private Place tokenPlace() {
        return place(parser.currentTokenLocation());
    }

    private static Place place(@Nullable TokenStreamLocation location) {
        return location == null
                ? Place.START
                : new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    private static String tooMuch(StreamConstraintsException e) {
        String message = String.valueOf(e.getOriginalMessage());
        if (message.contains("nesting")) {
            return "is nested deeper than " + DEEPEST + " levels, the most that is read";
        }
        if (message.contains("Number")) {
            return "a number has more than " + LONGEST_NUMBER + " characters, the most that is read";
        }
        return "a text has more than " + LONGEST_TEXT + " characters, the most that is read";
    }

    /** The parser's own words, without those for programmers. */
    private static String told(StreamReadException e) {
        String words = String.valueOf(e.getOriginalMessage()).replaceAll("\\s+", " ");
        for (String javaTalk : JAVA_TALK) {
            int from = words.indexOf(javaTalk);
            words = from < 0 ? words : words.substring(0, from);
        }
        // The parser forgets the colon before some of its reasons.
        words = words.replaceFirst("end-of-input(?=[A-Za-z])", "end-of-input: ");
        String twice = "Duplicate Object property ";
        if (words.startsWith(twice)) {
            return words.substring(twice.length()) + " stands twice in one object; expected once";
        }
        return "is not JSON: " + (words.length() > 160 ? words.substring(0, 160) + "..." : words);
    }
}
