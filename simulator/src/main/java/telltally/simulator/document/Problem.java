package telltally.simulator.document;

import java.util.Optional;

/**
 * Something a user can put right: where it stands, which field, what is wrong and what would be right.
 *
 * @param file as the user named it, or the option of a command
 * @param place empty where it is no matter of one place
 * @param field a JSON pointer, a column's name or empty
 */
public record Problem(String file, Optional<Place> place, String field, String text) {
    private static final int QUOTED_AT_MOST = 60;
    private static final int FIELD_AT_MOST = 200;

    public Problem(String file, Place place, String field, String text) {
        this(file, Optional.of(place), field, text);
    }

    /** A problem of a file as a whole, or of an option. */
    public static Problem of(String file, String text) {
        return new Problem(file, Optional.empty(), "", text);
    }

    /**
     * {@code file:line:column: field: text}; without place and field where there are none. One line, whatever stood in
     * the file: a name that the file gave to a field is shortened where it is very long.
     */
    @Override
    public String toString() {
        String shownField = field.length() > FIELD_AT_MOST ? field.substring(0, FIELD_AT_MOST) + "..." : field;
        String where = place.map(at -> ":" + at.line() + ":" + at.column()).orElse("");
        String told = file + where + ": " + (field.isEmpty() ? "" : shownField + ": ") + text;
        StringBuilder line = new StringBuilder(told.length());
        told.chars().forEach(letter -> line.append(breaksLine((char) letter) ? '?' : (char) letter));
        return line.toString();
    }

    /** Input as it may be quoted in a problem: one line, no control characters, at most 60 characters. */
    public static String quoted(String input) {
        StringBuilder text = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < input.length() && shown < QUOTED_AT_MOST; i++, shown++) {
            char letter = input.charAt(i);
            text.append(breaksLine(letter) || Character.isSurrogate(letter) ? '?' : letter);
        }
        return text.append(input.length() > QUOTED_AT_MOST ? "...\"" : "\"").toString();
    }

    /** Control characters, Unicode's own line ends, and what turns the direction of the line round. */
    private static boolean breaksLine(char letter) {
        int type = Character.getType(letter);
        return Character.isISOControl(letter)
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.FORMAT;
    }
}
