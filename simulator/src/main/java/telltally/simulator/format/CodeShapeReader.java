package telltally.simulator.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import telltally.simulator.document.Fields;
import telltally.simulator.document.Problem;
import telltally.simulator.signal.Seconds;

/** Reads the flashes of a format, and how its codes are made of them. */
final class CodeShapeReader {
    /** Stands for a shape that could not be read and was told of; it refuses no code. */
    private static final CodeShape UNKNOWN = new CodeShape.Counted(List.of());

    private static final String SAME = "; they could not be told apart";

    private final Fields file;
    private final Map<String, FlashKind> kinds;

    CodeShapeReader(Fields file) {
        this.file = file;
        this.kinds = flashKinds();
    }

    private Map<String, FlashKind> flashKinds() {
        Map<String, FlashKind> found = new LinkedHashMap<>();
        file.object("flashes_s").ifPresent(flashes -> {
            for (String name : flashes.names()) {
                SaidLength on = SaidLength.read(flashes, name, "the flash");
                found.values().stream()
                        .filter(other -> on.sound() && other.onNanos() == on.nanos())
                        .findFirst()
                        .ifPresent(other -> flashes.problem(
                                name,
                                "is " + Seconds.text(on.nanos()) + ", as long as " + Problem.quoted(other.name())
                                        + SAME));
                found.put(name, new FlashKind(name, on.nanos()));
            }
            if (found.isEmpty()) {
                flashes.problem("is empty; at least one flash with its seconds was expected");
            }
        });
        return found;
    }

    long longestFlashNanos() {
        return kinds.values().stream().mapToLong(FlashKind::onNanos).max().orElse(0);
    }

    CodeShape shape() {
        return file.object("code").map(this::shape).orElse(UNKNOWN);
    }

    private CodeShape shape(Fields code) {
        if (code.has("places") == code.has("signs")) {
            code.problem("either \"places\" (counted digits) or \"signs\" (a table of flashes) was expected");
            return UNKNOWN;
        }
        CodeShape shape = code.has("places") ? counted(code) : spelled(code);
        code.close();
        return shape;
    }

    private CodeShape counted(Fields code) {
        int before = code.problems().count();
        List<Fields> places = code.objects("places");
        if (places.isEmpty() && code.problems().count() == before) {
            code.problem("places", "holds no place; at least one was expected");
        }
        boolean allSound = code.problems().count() == before;
        CodeShape shape = new CodeShape.Counted(places.stream()
                .map(each -> place(each, allSound && places.size() == 1))
                .toList());
        return allSound ? shape : UNKNOWN;
    }

    private CodeShape.Place place(Fields place, boolean onePlace) {
        FlashKind flash = flash(place);
        Map<String, Integer> counts = new LinkedHashMap<>();
        boolean range = place.has("from") || place.has("to");
        if (range == place.has("counts")) {
            place.problem("either \"from\" and \"to\" or \"counts\" was expected");
            return new CodeShape.Place(flash, Map.of("1", 1));
        }
        if (range) {
            range(place, onePlace, counts);
        } else {
            place.object("counts").ifPresent(table -> table(table, onePlace, counts));
        }
        place.close();
        if (counts.isEmpty()) {
            counts.put("1", 1);
        }
        return new CodeShape.Place(flash, counts);
    }

    private static void table(Fields table, boolean onePlace, Map<String, Integer> counts) {
        for (String digit : table.names()) {
            int before = table.problems().count();
            int count = table.whole(digit, 1, FormatReader.MOST_FLASHES);
            if (table.problems().count() == before && counts.containsValue(count)) {
                table.problem(digit, "has as many flashes as another digit" + SAME);
            }
            if (digit.isBlank()) {
                table.problem(digit, "is blank; a digit has a name that can be read");
            } else if (!onePlace && digit.length() > 1) {
                table.problem(digit, "is no single character; each of several places takes one");
            }
            counts.put(digit, count);
        }
        if (counts.isEmpty()) {
            table.problem("is empty; at least one digit with its number of flashes was expected");
        }
    }

    private static void range(Fields place, boolean onePlace, Map<String, Integer> counts) {
        int before = place.problems().count();
        int from = place.whole("from", 1, FormatReader.MOST_FLASHES);
        int to = place.whole("to", 1, FormatReader.MOST_FLASHES);
        if (place.problems().count() == before && to < from) {
            place.problem("to", "is " + to + "; expected at least " + from + ", where \"from\" begins");
        }
        if (!onePlace && to > 9) {
            place.problem("to", "is " + to + "; each of several places takes one figure, 1 to 9");
        }
        for (int count = from; count <= to; count++) {
            counts.put(Integer.toString(count), count);
        }
    }

    private CodeShape spelled(Fields code) {
        Map<String, List<FlashKind>> table = new LinkedHashMap<>();
        code.object("signs").ifPresent(signs -> {
            boolean readable = namesAreCharacters() && !kinds.isEmpty();
            signs.textsByName().forEach((sign, flashes) -> {
                if (sign.isBlank() || sign.length() != 1) {
                    signs.problem(sign, "is no single character; each sign is one");
                }
                if (readable && !flashes.isBlank()) {
                    List<FlashKind> row = row(signs, sign, flashes);
                    if (!row.isEmpty() && table.containsValue(row)) {
                        signs.problem(sign, "has the same flashes as another sign" + SAME);
                    }
                    table.put(sign, row);
                }
            });
            if (signs.names().isEmpty()) {
                signs.problem("is empty; at least one sign with its flashes was expected");
            }
        });
        int longest = code.whole("most_signs", 1, FormatReader.MOST_CODES);
        return table.isEmpty() ? UNKNOWN : new CodeShape.Spelled(table, longest);
    }

    /** A table of signs spells its flashes character by character, so that each flash needs a name of one. */
    private boolean namesAreCharacters() {
        List<String> tooLong =
                kinds.keySet().stream().filter(name -> name.length() > 1).toList();
        for (String name : tooLong) {
            file.object("flashes_s")
                    .ifPresent(flashes -> flashes.problem(
                            name, "is no single character; a table of signs writes each flash as one, such as \".\""));
        }
        return tooLong.isEmpty();
    }

    /** The flashes of a sign; none where one of them has no such name. */
    private List<FlashKind> row(Fields signs, String sign, String flashes) {
        if (flashes.length() > FormatReader.MOST_FLASHES) {
            signs.problem(sign, "has " + flashes.length() + " flashes; expected at most " + FormatReader.MOST_FLASHES);
        }
        List<FlashKind> row = new ArrayList<>();
        for (String name : flashes.chars().mapToObj(Character::toString).toList()) {
            FlashKind kind = kinds.get(name);
            if (kind == null) {
                signs.problem(sign, "names a flash " + Problem.quoted(name) + "; expected " + expectedFlashes());
                return List.of();
            }
            row.add(kind);
        }
        return row;
    }

    /** The flash that a member names. */
    FlashKind flash(Fields at) {
        String name = at.text("flash");
        FlashKind kind = kinds.get(name);
        if (kind == null && !name.isBlank() && !kinds.isEmpty()) {
            at.problem("flash", "is " + Problem.quoted(name) + "; expected " + expectedFlashes());
        }
        return kind == null ? new FlashKind(name, FormatReader.SHORTEST_NANOS) : kind;
    }

    private String expectedFlashes() {
        return kinds.keySet().stream().map(Problem::quoted).collect(Collectors.joining(" or "))
                + ", as named in /flashes_s";
    }
}
