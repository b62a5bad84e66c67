package telltally.decoder.card.report;

import java.util.ArrayList;
import java.util.List;

/** Columns of text for a screen with letters of equal width. Words stand to the left, figures to the right. */
final class TextTable {
    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();
    private final int wordColumns;

    /** @param wordColumns how many columns from the left hold words */
    TextTable(int wordColumns, String... heads) {
        this.wordColumns = wordColumns;
        rows.add(List.of(heads));
    }

    /** A row shorter than the heads ends early; what stands beyond them goes after the last column, unaligned. */
    void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    boolean empty() {
        return rows.size() == 1;
    }

    String text(String indent) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < Math.min(columns, row.size()); i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i);
                String blanks = " ".repeat(i < columns ? widths[i] - cell.length() : 0);
                line.append(i == 0 ? "" : BETWEEN);
                line.append(i < wordColumns ? cell + blanks : blanks + cell);
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
