package telltally.trainer.view;

import javafx.collections.ListChangeListener;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.SheetColumn;
import telltally.trainer.text.Texts;

/** A column of the work sheet: heading, finished codes, the one that is being written, and empty lines below. */
final class ColumnField extends VBox {
    private static final int LINES = 6;

    private final SheetColumn column;
    private final VBox lines = new VBox();
    private Label typingLine = new Label();

    ColumnField(SheetColumn column, Texts texts) {
        this.column = column;
        getStyleClass().add("column");
        lines.getStyleClass().add("lines");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT_FIELD);
        setAccessibleRoleDescription(texts.of("sheet.column"));
        Label heading = new Label(column.heading());
        heading.getStyleClass().add("column-heading");
        getChildren().addAll(heading, lines);
        column.codes().addListener((ListChangeListener<String>) change -> write());
        column.typingProperty().addListener((property, before, after) -> write());
        write();
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.TEXT
                ? column.spoken()
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    /** Where the next digit will stand. */
    Node typingLine() {
        return typingLine;
    }

    private void write() {
        setAccessibleText(column.spoken());
        lines.getChildren().clear();
        column.codes().forEach(code -> line(code, "code"));
        typingLine = line(column.typingProperty().get() + "\u2502", "code", "typing");
        while (lines.getChildren().size() < LINES) {
            line(" ", "code");
        }
    }

    private Label line(String text, String... styleClasses) {
        Label line = new Label(text);
        line.setMaxWidth(Double.MAX_VALUE);
        line.getStyleClass().addAll(styleClasses);
        lines.getChildren().add(line);
        return line;
    }
}
