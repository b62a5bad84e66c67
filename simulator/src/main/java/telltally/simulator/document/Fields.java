package telltally.simulator.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The members of one JSON object, asked for one by one. What is missing, of the wrong kind or out of range becomes a
 * problem at its place, and the answer is a harmless stand-in, so that reading goes on and finds the rest;
 * {@link #close} tells of every member that nobody asked for.
 */
public final class Fields {
    private final Members members;
    private final NumberMembers numbers;

    private Fields(Json.JsonObject object, String pointer, Problems problems) {
        members = new Members(object, pointer, problems);
        numbers = new NumberMembers(members);
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
        return members.pointer(name);
    }

    /** Where a member's value stands; where it is missing, where the object begins. */
    public Place place(String name) {
        return members.place(name);
    }

    public Place place() {
        return members.place();
    }

    public boolean has(String name) {
        return members.has(name);
    }

    /** Whether a member is there and is an object, for what may be written shortly or at length. */
    public boolean isObject(String name) {
        return members.isObject(name);
    }

    /** The names of all members, in the order of the file; asking for them counts as asking for each. */
    public List<String> names() {
        return members.names();
    }

    /** Members that cannot be read because something else is missing: they count as asked for. */
    public void skip(String... names) {
        members.skip(names);
    }

    /** Tells of a member. */
    public void problem(String name, String text) {
        members.problem(name, text);
    }

    /** Tells of the object as a whole. */
    public void problem(String text) {
        members.problem(text);
    }

    public Problems problems() {
        return members.problems();
    }

    /** Checks the member that names the kind of document; one that names a JSON Schema for an editor may stand beside. */
    public void schema(String expected) {
        if (has("$schema")) {
            text("$schema");
        }
        if (!has("schema")) {
            members.required("schema", "\"" + expected + "\"");
            return;
        }
        String found = text("schema");
        if (!found.isBlank() && !found.equals(expected)) {
            problem("schema", "is " + Problem.quoted(found) + "; expected \"" + expected + "\"");
        }
    }

    /** A text that must be there and hold something; {@code ""} where it does not. */
    public String text(String name) {
        Json value = members.required(name, "a text");
        if (value instanceof Json.JsonText text) {
            if (text.text().isBlank()) {
                problem(name, "is empty; a text was expected");
            }
            return text.text();
        }
        members.wrongKind(name, value, "a text");
        return "";
    }

    public Optional<String> optionalText(String name) {
        return members.holds(name) ? Optional.of(text(name)) : Optional.empty();
    }

    /** A text that must be there but may hold nothing. */
    public String anyText(String name) {
        Json value = members.required(name, "a text");
        if (value instanceof Json.JsonText text) {
            return text.text();
        }
        members.wrongKind(name, value, "a text");
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
        return numbers.whole(name, from, to);
    }

    public int whole(String name, int from, int to, int otherwise) {
        return members.holds(name) ? whole(name, from, to) : otherwise;
    }

    /** A whole number of any size that a {@code long} holds; 0 where it is not there. */
    public long wholeLong(String name) {
        return numbers.wholeLong(name);
    }

    /** A number within bounds, both of them allowed; the lower bound where it is not there. */
    public double number(String name, double from, double to) {
        return numbers.number(name, from, to);
    }

    public double number(String name, double from, double to, double otherwise) {
        return members.holds(name) ? number(name, from, to) : otherwise;
    }

    /**
     * Seconds as nanoseconds, within bounds that are given in nanoseconds, both of them allowed; the lower bound where
     * it is not there.
     */
    public long nanos(String name, long fromNanos, long toNanos) {
        return numbers.nanos(name, fromNanos, toNanos);
    }

    public Optional<Long> optionalNanos(String name, long fromNanos, long toNanos) {
        return members.holds(name) ? Optional.of(nanos(name, fromNanos, toNanos)) : Optional.empty();
    }

    public boolean flag(String name, boolean otherwise) {
        if (!members.holds(name)) {
            return otherwise;
        }
        Json value = members.required(name, "true or false");
        if (value instanceof Json.JsonFlag flag) {
            return flag.flag();
        }
        members.wrongKind(name, value, "true or false");
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
        return members.holds(name) ? choice(name, choices, word) : otherwise;
    }

    /** The members of an object that must be there; empty where it is not. */
    public Optional<Fields> object(String name) {
        Json value = members.required(name, "an object");
        if (value instanceof Json.JsonObject inner) {
            return Optional.of(new Fields(inner, pointer(name), problems()));
        }
        members.wrongKind(name, value, "an object");
        return Optional.empty();
    }

    public Optional<Fields> optionalObject(String name) {
        return members.holds(name) ? object(name) : Optional.empty();
    }

    /** The objects of an array that must be there; elements of other kinds become problems. */
    public List<Fields> objects(String name) {
        List<Fields> found = new ArrayList<>();
        List<Json> elements = members.elements(name, "an array of objects");
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Json.JsonObject inner) {
                found.add(new Fields(inner, members.pointer(name, i), problems()));
            } else {
                members.wrongElement(name, i, elements.get(i), "an object");
            }
        }
        return found;
    }

    public List<Fields> optionalObjects(String name) {
        return members.holds(name) ? objects(name) : List.of();
    }

    /** A text of an array, with its place and JSON pointer. */
    public record PlacedText(String text, Place place, String pointer) {}

    /** The texts of an array that must be there; elements of other kinds become problems. */
    public List<PlacedText> texts(String name) {
        List<PlacedText> found = new ArrayList<>();
        List<Json> elements = members.elements(name, "an array of texts");
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Json.JsonText text) {
                found.add(new PlacedText(text.text(), text.place(), members.pointer(name, i)));
            } else {
                members.wrongElement(name, i, elements.get(i), "a text");
            }
        }
        return found;
    }

    public List<PlacedText> optionalTexts(String name) {
        return members.holds(name) ? texts(name) : List.of();
    }

    /** The numbers of an array that must be there, each within bounds. */
    public List<Double> numbers(String name, double from, double to) {
        return numbers.numbers(name, from, to);
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
        members.close();
    }
}
