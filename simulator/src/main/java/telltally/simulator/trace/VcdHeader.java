package telltally.simulator.trace;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import telltally.simulator.document.Place;
import telltally.simulator.document.Problem;

/** The declarations of a value change dump, up to {@code $enddefinitions}. */
final class VcdHeader {
    private static final String KEYWORDS =
            "$comment, $date, $enddefinitions, $scope, $timescale, $upscope, $var or $version";
    private static final String SCALE = "$timescale";
    private static final String VAR = "$var";
    private static final int WIDEST = 1 << 20;
    private static final int WORDS_AT_MOST = 100;

    private final VcdWords words;
    private final CappedProblems problems;
    private final Deque<String> scopes = new ArrayDeque<>();
    private final List<Vcd.Declared> declared = new ArrayList<>();
    private final Map<String, Integer> bitsByIdentifier = new HashMap<>();
    private VcdTimescale timescale = VcdTimescale.NANOSECOND;
    private boolean scaled;

    /** Whether something told of already swallowed the rest of the file. */
    private boolean swallowed;

    VcdHeader(VcdWords words, CappedProblems problems) {
        this.words = words;
        this.problems = problems;
    }

    /** Reads the declarations and moves on to the first word after them; false where nothing follows. */
    boolean read() {
        boolean more = toFirstKeyword();
        while (more) {
            Place place = words.place();
            String word = words.word();
            if (word.equals("$enddefinitions")) {
                section(word);
                checkScaled(place);
                return words.next();
            }
            if (word.startsWith("#") || word.equals("$dumpvars")) {
                problem("is " + Problem.quoted(word) + "; expected $enddefinitions $end before it");
                checkScaled(place);
                return true;
            }
            declaration(word, place);
            more = words.next();
        }
        if (!swallowed) {
            problem("is the end of the file; expected $enddefinitions $end before it");
        }
        return false;
    }

    /** Passes over what stands before the first keyword: some converters print a line of their own there. */
    private boolean toFirstKeyword() {
        boolean more = words.next();
        Place place = words.place();
        String first = words.word();
        while (more && !words.word().startsWith("$")) {
            more = words.next();
        }
        if (!more && !first.isEmpty()) {
            problems.add(place, "", "is " + Problem.quoted(first) + "; expected " + KEYWORDS);
            swallowed = true;
        }
        return more;
    }

    VcdTimescale timescale() {
        return timescale;
    }

    List<Vcd.Declared> declared() {
        return declared;
    }

    /** How wide an identifier was declared; -1 where it was not. */
    int bits(String identifier) {
        return bitsByIdentifier.getOrDefault(identifier, -1);
    }

    private void checkScaled(Place place) {
        if (!scaled) {
            problems.add(place, SCALE, "is missing; expected " + VcdTimescale.EXPECTED);
        }
    }

    private void declaration(String word, Place place) {
        switch (word) {
            case "$comment", "$date", "$version" -> section(word);
            case SCALE -> timescale(String.join("", section(word)), place);
            case "$scope" -> scope(section(word), place);
            case "$upscope" -> upscope(section(word), place);
            case VAR -> variable(section(word), place);
            default -> {
                problem("is " + Problem.quoted(word) + "; expected " + KEYWORDS);
                if (word.startsWith("$")) {
                    section(word);
                }
            }
        }
    }

    /** The words up to {@code $end}, of a long comment the first ones; what is not closed becomes a problem. */
    List<String> section(String keyword) {
        Place place = words.place();
        List<String> section = new ArrayList<>();
        while (words.next()) {
            if (words.word().equals("$end")) {
                return section;
            }
            if (section.size() < WORDS_AT_MOST) {
                section.add(words.word());
            }
        }
        swallowed = true;
        problems.add(place, keyword, "is not closed; expected $end before the end of the file");
        return section;
    }

    private void timescale(String text, Place place) {
        if (scaled) {
            problems.add(place, SCALE, "is there a second time; expected only one");
        }
        scaled = true;
        VcdTimescale.parse(text)
                .ifPresentOrElse(
                        found -> timescale = found,
                        () -> problems.add(
                                place, SCALE, "is " + Problem.quoted(text) + "; expected " + VcdTimescale.EXPECTED));
    }

    private void scope(List<String> section, Place place) {
        if (section.size() != 2) {
            problems.add(place, "$scope", "has " + section.size() + " words; expected a kind and a name");
        }
        scopes.addLast(section.isEmpty() ? "" : section.get(section.size() - 1));
    }

    private void upscope(List<String> section, Place place) {
        if (!section.isEmpty()) {
            problems.add(place, "$upscope", "has " + Problem.quoted(section.get(0)) + "; expected $end");
        }
        if (scopes.pollLast() == null) {
            problems.add(place, "$upscope", "closes no scope; expected a $scope before it");
        }
    }

    private void variable(List<String> section, Place place) {
        if (section.size() < 4) {
            problems.add(place, VAR, "has " + section.size() + " words; expected type, size, identifier and name");
            return;
        }
        int bits = width(section.get(1));
        if (bits < 0) {
            problems.add(
                    place,
                    VAR,
                    "has the size " + Problem.quoted(section.get(1)) + "; expected 0 to " + WIDEST + " bits");
            return;
        }
        String identifier = section.get(2);
        Integer before = bitsByIdentifier.putIfAbsent(identifier, bits);
        if (before != null && before != bits) {
            problems.add(
                    place,
                    VAR,
                    "has " + bits + " bits for " + Problem.quoted(identifier) + "; expected " + before
                            + " as where it was declared first");
        }
        String path = scopes.stream().map(scope -> scope + ".").collect(Collectors.joining());
        String name = path + String.join("", section.subList(3, section.size()));
        declared.add(new Vcd.Declared(new Vcd.Wire(name, section.get(0), bits), identifier));
    }

    private static int width(String text) {
        try {
            int bits = Integer.parseInt(text);
            return bits <= WIDEST ? bits : -1;
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    private void problem(String text) {
        problems.add(words.place(), "", text);
    }
}
