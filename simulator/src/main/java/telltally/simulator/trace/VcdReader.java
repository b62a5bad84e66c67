package telltally.simulator.trace;

import java.util.HashMap;
import java.util.Map;
import telltally.simulator.document.Place;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;

/** Reads the value changes of a dump, after {@link VcdHeader} read its declarations. */
final class VcdReader {
    private static final String KEYWORDS = "$comment, $dumpall, $dumpoff, $dumpon, $dumpvars";

    private final VcdWords words;
    private final CappedProblems problems;
    private final VcdHeader header;
    private final String file;
    private final Map<String, VcdChanges> changes = new HashMap<>();

    /** The dump section that is open: its keyword and place, and an empty keyword where none is. */
    private String section = "";

    private Place sectionPlace = Place.START;

    private boolean started;
    private long units;
    private long startNanos;
    private long nowNanos;

    VcdReader(TextFile source) {
        this.file = source.name();
        this.words = new VcdWords(source.text());
        this.problems = new CappedProblems(source.name());
        this.header = new VcdHeader(words, problems);
    }

    Vcd read() throws ProblemException {
        boolean more = header.read();
        while (more) {
            command(words.word());
            more = words.next();
        }
        if (!section.isEmpty()) {
            problems.add(sectionPlace, section, "is not closed; expected $end before the end of the file");
        }
        if (!problems.any() && nowNanos == startNanos) {
            problems.add(words.place(), "", "has no length in time; expected at least two times, such as #0 and #1000");
        }
        problems.throwIfAny();
        return new Vcd(
                file,
                header.declared(),
                changes,
                startNanos,
                nowNanos,
                header.timescale().nanosPerUnit());
    }

    private void command(String word) {
        switch (word.charAt(0)) {
            case '#' -> time(word);
            case '$' -> keyword(word);
            case '0', '1', 'x', 'X', 'z', 'Z' -> scalar(word);
            case 'b', 'B' -> vector(word);
            case 'r', 'R' -> real(word);
            case 's', 'S' -> identifiedBits();
            default -> garbage(word);
        }
    }

    private void time(String word) {
        long found;
        try {
            found = word.length() > 1 && Character.isDigit(word.charAt(1))
                    ? Long.parseLong(word, 1, word.length(), 10)
                    : -1;
        } catch (NumberFormatException e) {
            found = word.chars().skip(1).allMatch(Character::isDigit) ? Long.MAX_VALUE : -1;
        }
        long most = header.timescale().mostUnits();
        if (found < 0) {
            problem("is " + Problem.quoted(word) + "; expected a time such as #1000");
        } else if (found > most || found == Long.MAX_VALUE) {
            problem("is " + Problem.quoted(word) + "; expected a time of at most #" + most);
        } else if (started && found < units) {
            problem("is " + Problem.quoted(word) + "; expected no time before #" + units
                    + ", since times must not fall");
        } else {
            units = found;
            nowNanos = header.timescale().nanos(found);
            startNanos = started ? startNanos : nowNanos;
            started = true;
        }
    }

    private void keyword(String word) {
        switch (word) {
            case "$dumpvars", "$dumpall", "$dumpon", "$dumpoff" -> {
                if (!section.isEmpty()) {
                    problem("is " + word + " while " + section + " is open; expected $end first");
                }
                section = word;
                sectionPlace = words.place();
            }
            case "$end" -> {
                if (section.isEmpty()) {
                    problem("is $end; expected it only after one of " + KEYWORDS);
                }
                section = "";
            }
            case "$comment" -> header.section(word);
            default -> {
                problem("is " + Problem.quoted(word) + "; expected one of " + KEYWORDS);
                header.section(word);
            }
        }
    }

    private void scalar(String word) {
        String identifier = word.substring(1);
        if (identifier.isEmpty()) {
            problem("is " + Problem.quoted(word) + "; expected the identifier right after the level");
        } else if (bits(identifier) == 1) {
            change(identifier, word.charAt(0));
        }
    }

    private void vector(String word) {
        Place place = words.place();
        boolean valid = word.length() > 1 && word.chars().skip(1).allMatch(bit -> "01xXzZ".indexOf(bit) >= 0);
        if (!valid) {
            problem("is " + Problem.quoted(word) + "; expected b and then bits of 0, 1, x or z");
        }
        int bits = identifiedBits();
        if (valid && bits >= 0 && word.length() - 1 > bits) {
            problems.add(place, "", "has " + (word.length() - 1) + " bits; expected at most " + bits);
        } else if (valid && bits == 1) {
            change(words.word(), word.charAt(1));
        }
    }

    private void real(String word) {
        if (!isReal(word.substring(1))) {
            problem("is " + Problem.quoted(word) + "; expected r and then a decimal number");
        }
        identifiedBits();
    }

    /** Moves on to the identifier that follows a value; how many bits it was declared with, or -1. */
    private int identifiedBits() {
        String value = words.word();
        if (!words.next()) {
            problem("ends after " + Problem.quoted(value) + "; expected an identifier");
            return -1;
        }
        return bits(words.word());
    }

    private int bits(String identifier) {
        int bits = header.bits(identifier);
        if (bits < 0) {
            problem("has the identifier " + Problem.quoted(identifier) + "; expected one that a $var declared");
        }
        return bits;
    }

    private void change(String identifier, char level) {
        if (level == '0' || level == '1') {
            changes.computeIfAbsent(identifier, key -> new VcdChanges()).add(nowNanos, level == '1');
        }
    }

    private void garbage(String word) {
        problem("is " + Problem.quoted(word) + "; expected a time (#1000), a value change (1!) or a keyword");
    }

    private void problem(String text) {
        problems.add(words.place(), "", text);
    }

    private static boolean isReal(String text) {
        String size = text.startsWith("-") || text.startsWith("+") ? text.substring(1) : text;
        // As the C library writes them.
        return size.equals("nan") || size.equals("inf") || TimedRows.decimal(text) != null;
    }
}
