package telltally.simulator.document;

/**
 * Something a user can put right: where it stands, which field, what is wrong and what would be right.
 *
 * @param file as the user named it
 * @param field a JSON pointer, a column's name or empty
 */
public record Problem(String file, Place place, String field, String text) {
    private static final int QUOTED_AT_MOST = 60;

    /** A problem of a file as a whole. */
    public static Problem of(String file, String text) {
        return new Problem(file, Place.START, "", text);
    }

    /** {@code file:line:column: field: text}; without the field where there is none. */
    @Override
    public String toString() {
        String where = file + ":" + place.line() + ":" + place.column() + ": ";
        return where + (field.isEmpty() ? "" : field + ": ") + text;
    }

    /** Input as it may be quoted in a problem: one line, no control characters, at most 60 characters. */
    public static String quoted(String input) {
        StringBuilder text = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < input.length() && shown < QUOTED_AT_MOST; i++, shown++) {
            char letter = input.charAt(i);
            text.append(Character.isISOControl(letter) || Character.isSurrogate(letter) ? '?' : letter);
        }
        return text.append(input.length() > QUOTED_AT_MOST ? "...\"" : "\"").toString();
    }
}
