package telltally.simulator.document;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The values behind {@link Fields}: which were asked for, and how what is wrong with one is told. */
final class Members {
    /** Stands for a member that is not there and was told of. */
    private static final Json MISSING = new Json.JsonNull(Place.START);

    private final Json.JsonObject object;
    private final String pointer;
    private final Problems problems;
    private final Set<String> asked = new LinkedHashSet<>();

    Members(Json.JsonObject object, String pointer, Problems problems) {
        this.object = object;
        this.pointer = pointer;
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    /** The JSON pointer (RFC 6901) of a member. */
    String pointer(String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }

    String pointer(String name, int index) {
        return pointer(name) + "/" + index;
    }

    Place place(String name) {
        Json value = object.members().get(name);
        return value == null ? object.place() : value.place();
    }

    Place place() {
        return object.place();
    }

    boolean has(String name) {
        return object.members().containsKey(name);
    }

    boolean isObject(String name) {
        return object.members().get(name) instanceof Json.JsonObject;
    }

    List<String> names() {
        asked.addAll(object.members().keySet());
        return List.copyOf(object.members().keySet());
    }

    void skip(String... names) {
        asked.addAll(List.of(names));
    }

    void problem(String name, String text) {
        problems.add(place(name), pointer(name), text);
    }

    void problem(String text) {
        problems.add(object.place(), pointer, text);
    }

    /** Tells of an element of a member that is an array. */
    void problem(String name, int index, Json element, String text) {
        problems.add(element.place(), pointer(name, index), text);
    }

    void close() {
        for (Map.Entry<String, Place> name : object.names().entrySet()) {
            if (!asked.contains(name.getKey())) {
                problems.add(
                        name.getValue(),
                        pointer(name.getKey()),
                        "is not known here; expected one of " + String.join(", ", asked));
            }
        }
    }

    /** Whether a member is there that need not be; this counts as asking for it. */
    boolean holds(String name) {
        asked.add(name);
        return has(name);
    }

    /** The value of a member; where it is not there, that is told and something stands for it. */
    Json required(String name, String expected) {
        asked.add(name);
        Json value = object.members().get(name);
        if (value == null) {
            problems.add(object.place(), pointer(name), "is missing; expected " + expected);
            return MISSING;
        }
        return value;
    }

    /** The elements of a member that must be an array; none where it is not. */
    List<Json> elements(String name, String expected) {
        Json value = required(name, expected);
        if (value instanceof Json.JsonArray array) {
            return array.elements();
        }
        wrongKind(name, value, expected);
        return List.of();
    }

    void wrongKind(String name, Json found, String expected) {
        if (!isMissing(found)) {
            problem(name, "is " + found.kind() + "; expected " + expected);
        }
    }

    void wrongElement(String name, int index, Json found, String expected) {
        problem(name, index, found, "is " + found.kind() + "; expected " + expected);
    }

    @SuppressWarnings("ReferenceEquality") // the stand-in itself, not a null of the file
    private static boolean isMissing(Json found) {
        return found == MISSING;
    }
}
