package telltally.trainer.view;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.ProgressScreen.Cell;
import telltally.trainer.screen.ProgressScreen.Row;
import telltally.trainer.text.Texts;

/** Which digit was written for which, as a table of counts; what was right stands in brackets. */
final class ConfusionGrid extends VBox {
    ConfusionGrid(List<String> columns, List<Row> rows, Texts texts) {
        getStyleClass().add("confusions");
        HBox head = new HBox(label(texts.of("progress.sent"), "corner"));
        columns.forEach(written -> head.getChildren().add(label(written, "digit-head")));
        getChildren().add(head);
        rows.forEach(row -> getChildren().add(row(row)));
    }

    private static Node row(Row row) {
        HBox line = new HBox(label(row.sent(), "corner"));
        line.getStyleClass().add("confusion-row");
        line.setFocusTraversable(true);
        line.setAccessibleText(row.spoken());
        row.cells().forEach(cell -> line.getChildren().add(cell(cell)));
        return line;
    }

    private static Node cell(Cell cell) {
        String times = cell.times() == 0 ? "" : Integer.toString(cell.times());
        Label label = label(cell.right() && cell.times() > 0 ? "(" + times + ")" : times, "cell");
        if (cell.times() > 0) {
            label.getStyleClass().add(cell.right() ? "cell-right" : cell.share() >= 0.2 ? "cell-often" : "cell-wrong");
        }
        return label;
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        return label;
    }
}
