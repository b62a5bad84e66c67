package telltally.decoder.card.report;

import java.util.Arrays;
import java.util.List;

/** What a text for the terminal says: parts that are set apart by empty lines, rows whose cells are by two blanks. */
record TextPage(String text) {
    List<String> parts() {
        return List.of(text.split("\n\n"));
    }

    /** The part whose first line begins so. */
    String part(String start) {
        return parts().stream()
                .filter(each -> each.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part '" + start + "' in\n" + text));
    }

    /** The lines of a part below its first one, cell by cell; empty cells are not told from blanks. */
    List<List<String>> rows(String start) {
        return part(start).lines().skip(1).map(TextPage::cells).toList();
    }

    static List<String> cells(String line) {
        return Arrays.asList(line.strip().split(" {2,}"));
    }
}
