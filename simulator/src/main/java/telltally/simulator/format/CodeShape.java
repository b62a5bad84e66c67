package telltally.simulator.format;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the text of a code becomes flashes: by counting at fixed places, or by spelling with a table of signs. */
public sealed interface CodeShape {
    /** The flashes of each sign of a code, or nothing where {@link #refusal} gives a reason. */
    Optional<List<Sign>> signs(String code);

    /** Why this code cannot be sent; empty where it can. */
    Optional<String> refusal(String code);

    /** Every kind of flash that may occur, each once. */
    List<FlashKind> flashKinds();

    /** One digit or sign of a code, with its flashes in order. */
    record Sign(String text, List<FlashKind> flashes) {
        public Sign {
            flashes = List.copyOf(flashes);
        }
    }

    /** One place of a counted code: the flash it uses, and how many of them each digit is. */
    record Place(FlashKind flash, Map<String, Integer> counts) {
        public Place {
            counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
        }

        /** The digit of a count; empty where the count is none. */
        public Optional<String> digit(int count) {
            return counts.entrySet().stream()
                    .filter(each -> each.getValue() == count)
                    .map(Map.Entry::getKey)
                    .findFirst();
        }

        public int mostFlashes() {
            return Collections.max(counts.values());
        }
    }

    /**
     * A fixed number of places, each a count of equal flashes. With one place, a code is whatever that place writes, so
     * that a count of twelve can be written 12; with more, each place takes one character.
     */
    record Counted(List<Place> places) implements CodeShape {
        public Counted {
            places = List.copyOf(places);
        }

        @Override
        public Optional<List<Sign>> signs(String code) {
            if (refusal(code).isPresent()) {
                return Optional.empty();
            }
            List<Sign> signs = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                String digit = digit(code, i);
                Place place = places.get(i);
                signs.add(new Sign(digit, Collections.nCopies(place.counts().getOrDefault(digit, 0), place.flash())));
            }
            return Optional.of(signs);
        }

        @Override
        public Optional<String> refusal(String code) {
            boolean onePlace = places.size() == 1;
            if (code.isEmpty() || (places.size() > 1 && code.length() != places.size())) {
                return Optional.of("has " + code.length() + (code.length() == 1 ? " digit" : " digits")
                        + "; this format sends " + places.size());
            }
            for (int i = 0; i < places.size(); i++) {
                String digit = digit(code, i);
                Map<String, Integer> counts = places.get(i).counts();
                if (!counts.containsKey(digit)) {
                    String what = onePlace ? "" : "the digit " + digit + " at place " + (i + 1) + " ";
                    return Optional.of(what + "cannot be sent; this format sends " + String.join(" ", counts.keySet()));
                }
            }
            return Optional.empty();
        }

        @Override
        public List<FlashKind> flashKinds() {
            return places.stream().map(Place::flash).distinct().toList();
        }

        private String digit(String code, int place) {
            return places.size() == 1 ? code : code.substring(place, place + 1);
        }
    }

    /**
     * Any number of signs up to a limit, each with a row of flashes of its own.
     *
     * @param longest the most signs that a code may have
     */
    record Spelled(Map<String, List<FlashKind>> table, int longest) implements CodeShape {
        public Spelled {
            table = Collections.unmodifiableMap(new LinkedHashMap<>(table));
        }

        @Override
        public Optional<List<Sign>> signs(String code) {
            return refusal(code).isPresent()
                    ? Optional.empty()
                    : Optional.of(code.chars()
                            .mapToObj(Character::toString)
                            .map(text -> new Sign(text, table.getOrDefault(text, List.of())))
                            .toList());
        }

        @Override
        public Optional<String> refusal(String code) {
            if (code.isEmpty() || code.length() > longest) {
                return Optional.of("has " + code.length() + " signs; this format sends 1 to " + longest);
            }
            return code.chars()
                    .mapToObj(Character::toString)
                    .filter(sign -> !table.containsKey(sign))
                    .findFirst()
                    .map(sign -> "the sign " + sign + " cannot be sent; this format sends "
                            + String.join(" ", table.keySet()));
        }

        @Override
        public List<FlashKind> flashKinds() {
            return table.values().stream().flatMap(List::stream).distinct().toList();
        }
    }
}
