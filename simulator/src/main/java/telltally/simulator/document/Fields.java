package telltally.simulator.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import telltally.simulator.signal.Seconds;

/**
 * The members of one JSON object, asked for one by one. What is missing, of the wrong kind or out of range becomes a
 * problem at its place, and the answer is a harmless stand-in, so that reading goes on and finds the rest;
 * {@link #close} tells of every member that nobody asked for.
 */
public final class Fields {
    /** Stands for a member that is not there and was told of. */
    private static final Json MISSING = new Json.JsonNull(Place.START);

    private final Json.JsonObject object;
    private final String pointer;
    private final Problems problems;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(Json.JsonObject object, String pointer, Problems problems) {
        this.object = object;
        this.pointer = pointer;
        this.problems = problems;
    }

    /**
     * The members of a document's outermost value.
     *
     * @throws ProblemException if it is not an object: then there is nothing to ask
     */
    public static Fields of(TextFile source, Problems problems) throws ProblemException {
        Json json = JsonDocument.parse(source);
        if (json instanceof Json.JsonObject object) {
            return new Fields(object, "", problems);
        }
        throw new ProblemException(new Problem(
                source.name(), json.place(), "", "holds " + json.kind() + "; an object was expected: { ... }"));
    }

    /** The JSON pointer (RFC 6901) of a member. */
    public String pointer(String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }

    /** Where a member's value stands; where it is missing, where the object begins. */
    public Place place(String name) {
        Json value = object.members().get(name);
        return value == null ? object.place() : value.place();
    }

    public Place place() {
        return object.place();
    }

    public boolean has(String name) {
        return object.members().containsKey(name);
    }

    /** Whether a member is there and is an object, for what may be written shortly or at length. */
    public boolean isObject(String name) {
        return object.members().get(name) instanceof Json.JsonObject;
    }

    /** The names of all members, in the order of the file; asking for them counts as asking for each. */
    public List<String> names() {
        asked.addAll(object.members().keySet());
        return List.copyOf(object.members().keySet());
    }

    /** Members that cannot be read because something else is missing: they count as asked for. */
    public void skip(String... names) {
        asked.addAll(List.of(names));
    }

    /** Tells of a member. */
    public void problem(String name, String text) {
        problems.add(place(name), pointer(name), text);
    }

    /** Tells of the object as a whole. */
    public void problem(String text) {
        problems.add(object.place(), pointer, text);
    }

    public Problems problems() {
        return problems;
    }

    /** Checks the member that names the kind of document; one that names a JSON Schema for an editor may stand beside. */
    public void schema(String expected) {
        if (has("$schema")) {
            text("$schema");
        }
        if (!has("schema")) {
            required("schema", "\"" + expected + "\"");
            return;
        }
        String found = text("schema");
        if (!found.isBlank() && !found.equals(expected)) {
            problem("schema", "is " + Problem.quoted(found) + "; expected \"" + expected + "\"");
        }
    }

    /** A text that must be there and hold something; {@code ""} where it does not. */
    public String text(String name) {
        Json value = required(name, "a text");
        if (value instanceof Json.JsonText text) {
            if (text.text().isBlank()) {
                problem(name, "is empty; a text was expected");
            }
            return text.text();
        }
        wrongKind(name, value, "a text");
        return "";
    }

    public Optional<String> optionalText(String name) {
        asked.add(name);
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    /** A text that must be there but may hold nothing. */
    public String anyText(String name) {
        Json value = required(name, "a text");
        if (value instanceof Json.JsonText text) {
            return text.text();
        }
        wrongKind(name, value, "a text");
        return "";
    }

    /** A text in the pattern {@code [a-z0-9-]+}, by which other files name this one. */
    public String id(String name) {
        String id = text(name);
        if (!id.isBlank() && !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            problem(name, "is " + Problem.quoted(id) + "; expected small letters, figures and single hyphens");
        }
        return id;
    }

    /** A whole number within bounds, both of them allowed; the lower bound where it is not there. */
    public int whole(String name, int from, int to) {
        Json value = required(name, "a whole number");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            // Compared before it is made an int: 1e999999999 must not be multiplied out.
            if (found.compareTo(BigDecimal.valueOf(from)) < 0 || found.compareTo(BigDecimal.valueOf(to)) > 0) {
                problem(name, "is " + shown(found) + "; expected a whole number from " + from + " to " + to);
                return from;
            }
            if (found.stripTrailingZeros().scale() > 0) {
                problem(name, "is " + shown(found) + "; expected a whole number");
                return from;
            }
            return found.intValue();
        }
        wrongKind(name, value, "a whole number");
        return from;
    }

    public int whole(String name, int from, int to, int otherwise) {
        asked.add(name);
        return has(name) ? whole(name, from, to) : otherwise;
    }

    /** A whole number of any size that a {@code long} holds; 0 where it is not there. */
    public long wholeLong(String name) {
        Json value = required(name, "a whole number");
        if (value instanceof Json.JsonNumber number) {
            try {
                return number.number().longValueExact();
            } catch (ArithmeticException e) {
                problem(name, "is " + shown(number.number()) + "; expected a whole number of at most 63 bits");
                return 0;
            }
        }
        wrongKind(name, value, "a whole number");
        return 0;
    }

    /** A number within bounds, both of them allowed; the lower bound where it is not there. */
    public double number(String name, double from, double to) {
        Json value = required(name, "a number");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            if (found.compareTo(BigDecimal.valueOf(from)) < 0 || found.compareTo(BigDecimal.valueOf(to)) > 0) {
                problem(name, "is " + shown(found) + "; expected a number from " + plain(from) + " to " + plain(to));
                return from;
            }
            return found.doubleValue();
        }
        wrongKind(name, value, "a number");
        return from;
    }

    public double number(String name, double from, double to, double otherwise) {
        asked.add(name);
        return has(name) ? number(name, from, to) : otherwise;
    }

    /**
     * Seconds as nanoseconds, within bounds that are given in nanoseconds, both of them allowed; the lower bound where
     * it is not there.
     */
    public long nanos(String name, long fromNanos, long toNanos) {
        Json value = required(name, "a number of seconds");
        if (value instanceof Json.JsonNumber number) {
            BigDecimal found = number.number();
            BigDecimal from = BigDecimal.valueOf(fromNanos, 9);
            BigDecimal to = BigDecimal.valueOf(toNanos, 9);
            if (found.compareTo(from) < 0 || found.compareTo(to) > 0) {
                problem(
                        name,
                        "is " + shown(found) + "; expected seconds from " + Seconds.text(fromNanos) + " to "
                                + Seconds.text(toNanos));
                return fromNanos;
            }
            return Seconds.nanos(found);
        }
        wrongKind(name, value, "a number of seconds");
        return fromNanos;
    }

    public Optional<Long> optionalNanos(String name, long fromNanos, long toNanos) {
        asked.add(name);
        return has(name) ? Optional.of(nanos(name, fromNanos, toNanos)) : Optional.empty();
    }

    public boolean flag(String name, boolean otherwise) {
        asked.add(name);
        if (!has(name)) {
            return otherwise;
        }
        Json value = required(name, "true or false");
        if (value instanceof Json.JsonFlag flag) {
            return flag.flag();
        }
        wrongKind(name, value, "true or false");
        return otherwise;
    }

    /**
     * One of the named choices; the first where it is not there or is none of them.
     *
     * @param choices all of them, in the order to be told
     * @param word how the file names a choice
     */
    public <T> T choice(String name, List<T> choices, Function<T, String> word) {
        String found = text(name);
        for (T choice : choices) {
            if (word.apply(choice).equals(found)) {
                return choice;
            }
        }
        if (!found.isBlank()) {
            String expected = choices.stream()
                    .map(choice -> "\"" + word.apply(choice) + "\"")
                    .collect(Collectors.joining(" or "));
            problem(name, "is " + Problem.quoted(found) + "; expected " + expected);
        }
        return choices.get(0);
    }

    /** One of the named choices; another one where it is not there. */
    public <T> T choice(String name, List<T> choices, Function<T, String> word, T otherwise) {
        asked.add(name);
        return has(name) ? choice(name, choices, word) : otherwise;
    }

    /** The members of an object that must be there; empty where it is not. */
    public Optional<Fields> object(String name) {
        Json value = required(name, "an object");
        if (value instanceof Json.JsonObject inner) {
            return Optional.of(new Fields(inner, pointer(name), problems));
        }
        wrongKind(name, value, "an object");
        return Optional.empty();
    }

    public Optional<Fields> optionalObject(String name) {
        asked.add(name);
        return has(name) ? object(name) : Optional.empty();
    }

    /** The objects of an array that must be there; elements of other kinds become problems. */
    public List<Fields> objects(String name) {
        List<Fields> found = new ArrayList<>();
        List<Json> elements = elements(name, "an array of objects");
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Json.JsonObject inner) {
                found.add(new Fields(inner, pointer(name) + "/" + i, problems));
            } else {
                wrongElement(name, i, elements.get(i), "an object");
            }
        }
        return found;
    }

    public List<Fields> optionalObjects(String name) {
        asked.add(name);
        return has(name) ? objects(name) : List.of();
    }

    /** A text of an array, with its place and JSON pointer. */
    public record PlacedText(String text, Place place, String pointer) {}

    /** The texts of an array that must be there; elements of other kinds become problems. */
    public List<PlacedText> texts(String name) {
        List<PlacedText> found = new ArrayList<>();
        List<Json> elements = elements(name, "an array of texts");
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Json.JsonText text) {
                found.add(new PlacedText(text.text(), text.place(), pointer(name) + "/" + i));
            } else {
                wrongElement(name, i, elements.get(i), "a text");
            }
        }
        return found;
    }

    public List<PlacedText> optionalTexts(String name) {
        asked.add(name);
        return has(name) ? texts(name) : List.of();
    }

    /** The numbers of an array that must be there, each within bounds. */
    public List<Double> numbers(String name, double from, double to) {
        List<Double> found = new ArrayList<>();
        List<Json> elements = elements(name, "an array of numbers");
        for (int i = 0; i < elements.size(); i++) {
            String expected = "a number from " + plain(from) + " to " + plain(to);
            if (!(elements.get(i) instanceof Json.JsonNumber number)) {
                wrongElement(name, i, elements.get(i), expected);
            } else if (number.number().compareTo(BigDecimal.valueOf(from)) < 0
                    || number.number().compareTo(BigDecimal.valueOf(to)) > 0) {
                problems.add(
                        number.place(),
                        pointer(name) + "/" + i,
                        "is " + shown(number.number()) + "; expected " + expected);
            } else {
                found.add(number.number().doubleValue());
            }
        }
        return found;
    }

    /** Members that hold texts, by name, in the order of the file; members of other kinds become problems. */
    public Map<String, String> textsByName() {
        Map<String, String> found = new LinkedHashMap<>();
        for (String name : names()) {
            found.put(name, text(name));
        }
        return found;
    }

    /** Tells of every member that was not asked for, and of what was expected instead. */
    public void close() {
        for (Map.Entry<String, Place> name : object.names().entrySet()) {
            if (!asked.contains(name.getKey())) {
                problems.add(
                        name.getValue(),
                        pointer(name.getKey()),
                        "is not known here; expected one of " + String.join(", ", asked));
            }
        }
    }

    private List<Json> elements(String name, String expected) {
        Json value = required(name, expected);
        if (value instanceof Json.JsonArray array) {
            return array.elements();
        }
        wrongKind(name, value, expected);
        return List.of();
    }

    private Json required(String name, String expected) {
        asked.add(name);
        Json value = object.members().get(name);
        if (value == null) {
            problems.add(object.place(), pointer(name), "is missing; expected " + expected);
            return MISSING;
        }
        return value;
    }

    private void wrongKind(String name, Json found, String expected) {
        if (!isMissing(found)) {
            problem(name, "is " + found.kind() + "; expected " + expected);
        }
    }

    private void wrongElement(String name, int index, Json found, String expected) {
        problems.add(found.place(), pointer(name) + "/" + index, "is " + found.kind() + "; expected " + expected);
    }

    @SuppressWarnings("ReferenceEquality") // the stand-in itself, not a null of the file
    private static boolean isMissing(Json found) {
        return found == MISSING;
    }

    private static String shown(BigDecimal number) {
        // As a long: the exponent may be as large as an int.
        String text = (long) number.precision() - number.scale() > 30 || number.scale() > 30
                ? number.toString()
                : number.toPlainString();
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    private static String plain(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
    }
}
