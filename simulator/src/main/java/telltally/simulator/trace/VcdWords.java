package telltally.simulator.trace;

import telltally.simulator.document.Place;

/** The words of a value change dump, set off by white space of any kind, with the place of each. */
final class VcdWords {
    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;
    private String word = "";
    private int wordStart;

    VcdWords(String text) {
        this.text = text;
    }

    /** Moves on to the next word; false at the end of the text, which then has the place. */
    boolean next() {
        while (at < text.length() && text.charAt(at) <= ' ') {
            if (text.charAt(at++) == '\n') {
                line++;
                lineStart = at;
            }
        }
        wordStart = at;
        while (at < text.length() && text.charAt(at) > ' ') {
            at++;
        }
        word = text.substring(wordStart, at);
        return at > wordStart;
    }

    /** The word; empty at the end of the text. */
    String word() {
        return word;
    }

    Place place() {
        return new Place(line, wordStart - lineStart + 1);
    }
}
