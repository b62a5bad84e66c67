package telltally.simulator.trace;

import java.util.Arrays;
import telltally.simulator.document.Place;

/**
 * Walks the records of comma separated text (RFC 4180, section 2) one by one, with the place of every field. A record
 * ends with CRLF, or LF alone; empty lines are passed over. A field that breaks the rules for quotes is handed on as it
 * stands, its quotes with it.
 */
final class CsvRecords {
    private static final char QUOTE = '"';

    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;

    private String[] fields = new String[4];
    private int[] lines = new int[4];
    private int[] columns = new int[4];
    private int count;
    private boolean unclosed;

    CsvRecords(String text) {
        this.text = text;
    }

    /** Passes over empty lines and lines that begin with a number sign. */
    void skipComments() {
        skipEmptyLines();
        while (at < text.length() && text.charAt(at) == '#') {
            int end = text.indexOf('\n', at);
            at = end < 0 ? text.length() : end;
            skipEmptyLines();
        }
    }

    /** Moves on to the next record; false at the end of the text. */
    boolean next() {
        skipEmptyLines();
        count = 0;
        if (at >= text.length()) {
            return false;
        }
        readField();
        while (at < text.length() && text.charAt(at) == ',') {
            at++;
            readField();
        }
        return true;
    }

    /** How many fields the record has. */
    int count() {
        return count;
    }

    String field(int index) {
        return fields[index];
    }

    Place place(int index) {
        return new Place(lines[index], columns[index]);
    }

    /** Where the record ends, after its last field. */
    Place end() {
        return new Place(line, at - lineStart + 1);
    }

    /** Whether the last field opened a quote that nothing closes: it holds all the rest of the text. */
    boolean unclosed() {
        return unclosed;
    }

    private void skipEmptyLines() {
        int length = lineEndLength();
        while (length > 0) {
            at += length;
            line++;
            lineStart = at;
            length = lineEndLength();
        }
    }

    private int lineEndLength() {
        if (at >= text.length()) {
            return 0;
        }
        char letter = text.charAt(at);
        if (letter == '\n') {
            return 1;
        }
        return letter == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 2 : 0;
    }

    private void readField() {
        if (count == fields.length) {
            fields = Arrays.copyOf(fields, 2 * count);
            lines = Arrays.copyOf(lines, 2 * count);
            columns = Arrays.copyOf(columns, 2 * count);
        }
        lines[count] = line;
        columns[count] = at - lineStart + 1;
        boolean quoted = at < text.length() && text.charAt(at) == QUOTE;
        fields[count] = quoted ? quotedField() : plainField(at);
        count++;
    }

    /** From a start to the next comma or line end. */
    private String plainField(int start) {
        while (at < text.length() && text.charAt(at) != ',' && lineEndLength() == 0) {
            at++;
        }
        return text.substring(start, at);
    }

    private String quotedField() {
        int start = at++;
        while (at < text.length()) {
            char letter = text.charAt(at++);
            if (letter == '\n') {
                line++;
                lineStart = at;
            } else if (letter == QUOTE) {
                if (at == text.length() || text.charAt(at) != QUOTE) {
                    return closedField(start);
                }
                at++;
            }
        }
        unclosed = true;
        return text.substring(start);
    }

    private String closedField(int start) {
        int close = at - 1;
        String whole = plainField(start);
        boolean nothingFollows = at == close + 1;
        return nothingFollows ? text.substring(start + 1, close).replace("\"\"", "\"") : whole;
    }
}
