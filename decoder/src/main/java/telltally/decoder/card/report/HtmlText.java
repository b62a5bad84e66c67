package telltally.decoder.card.report;

import java.util.List;

/** Puts a page of HTML together. What is not markup is escaped. */
final class HtmlText {
    private final StringBuilder html = new StringBuilder();

    /** Markup as it stands. */
    HtmlText markup(String markup) {
        html.append(markup);
        return this;
    }

    HtmlText words(String words) {
        html.append(escaped(words));
        return this;
    }

    HtmlText element(String name, String words) {
        return markup("<" + name + ">").words(words).markup("</" + name + ">\n");
    }

    /** A table that says what it holds; figures stand to the right. */
    HtmlText tableHead(String caption, int wordColumns, List<String> heads) {
        markup("<div class=\"wide\"><table>\n<caption>").words(caption).markup("</caption>\n<thead><tr>");
        for (int i = 0; i < heads.size(); i++) {
            markup(i < wordColumns ? "<th scope=\"col\">" : "<th scope=\"col\" class=\"figure\">")
                    .words(heads.get(i))
                    .markup("</th>");
        }
        return markup("</tr></thead>\n<tbody>\n");
    }

    HtmlText row(int wordColumns, List<String> cells) {
        markup("<tr><th scope=\"row\">").words(cells.get(0)).markup("</th>");
        for (int i = 1; i < cells.size(); i++) {
            markup(i < wordColumns ? "<td>" : "<td class=\"figure\">")
                    .words(cells.get(i))
                    .markup("</td>");
        }
        return markup("</tr>\n");
    }

    HtmlText tableEnd() {
        return markup("</tbody></table></div>\n");
    }

    static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            switch (letter) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.append(letter < ' ' && letter != '\n' ? ' ' : letter);
            }
        }
        return escaped.toString();
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
