package telltally.simulator.document;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a JSON document, with the place where it begins. */
public sealed interface Json {
    Place place();

    /** What kind of value it is, as a problem says it: {@code a number}. */
    String kind();

    /**
     * An object; its members in the order of the file.
     *
     * @param names where the name of each member stands
     */
    record JsonObject(Place place, Map<String, Json> members, Map<String, Place> names) implements Json {
        public JsonObject {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
            names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
        }

        @Override
        public String kind() {
            return "an object";
        }
    }

    record JsonArray(Place place, List<Json> elements) implements Json {
        public JsonArray {
            elements = List.copyOf(elements);
        }

        @Override
        public String kind() {
            return "an array";
        }
    }

    record JsonText(Place place, String text) implements Json {
        @Override
        public String kind() {
            return "a text";
        }
    }

    record JsonNumber(Place place, BigDecimal number) implements Json {
        @Override
        public String kind() {
            return "a number";
        }
    }

    record JsonFlag(Place place, boolean flag) implements Json {
        @Override
        public String kind() {
            return flag ? "true" : "false";
        }
    }

    record JsonNull(Place place) implements Json {
        @Override
        public String kind() {
            return "null";
        }
    }
}
