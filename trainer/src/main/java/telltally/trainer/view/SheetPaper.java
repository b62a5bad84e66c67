package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.WorkSheet;
import telltally.trainer.text.Texts;

/** The work sheet as paper; keys go to the view-model. */
final class SheetPaper extends VBox {
    private static final double GAP_PX = 18;

    private final WorkSheet sheet;
    private final Texts texts;
    private final Runnable afterLast;
    private final List<ColumnField> columns = new ArrayList<>();

    /** @param afterLast where Enter on an empty line of the last column leads */
    SheetPaper(WorkSheet sheet, Texts texts, Runnable afterLast) {
        this.texts = texts;
        this.sheet = sheet;
        this.afterLast = afterLast;
        getStyleClass().add("paper");
        Label heading = new Label(texts.of("sheet.title"));
        heading.getStyleClass().add("paper-heading");
        for (int i = 0; i < sheet.columns().size(); i++) {
            columns.add(column(i));
        }
        getChildren().addAll(heading, new EvenColumns(columns, GAP_PX));
        sheet.activeProperty().addListener((property, before, after) -> focusActive());
    }

    /** The column that is written in. */
    ColumnField active() {
        return columns.get(sheet.activeProperty().get());
    }

    void focusActive() {
        active().requestFocus();
    }

    private ColumnField column(int index) {
        ColumnField field = new ColumnField(sheet.columns().get(index), texts);
        field.focusedProperty().addListener((property, before, focused) -> {
            if (focused) {
                sheet.select(index);
            }
        });
        field.setOnMouseClicked(event -> field.requestFocus());
        field.setOnKeyPressed(this::pressed);
        field.setOnKeyTyped(event -> {
            if (!event.isAltDown() && !event.isControlDown() && !event.isMetaDown()) {
                sheet.type(event.getCharacter());
            }
        });
        return field;
    }

    private void pressed(KeyEvent event) {
        if (event.isAltDown()) {
            return;
        }
        KeyCode key = event.getCode();
        switch (key) {
            case ENTER -> finish();
            case BACK_SPACE -> sheet.erase();
            case RIGHT, DOWN -> sheet.next();
            case LEFT, UP -> sheet.previous();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void finish() {
        int active = sheet.activeProperty().get();
        boolean empty = sheet.columns().get(active).typingProperty().get().isEmpty();
        if (empty && active == sheet.columns().size() - 1) {
            afterLast.run();
        } else {
            sheet.finish();
        }
    }
}
