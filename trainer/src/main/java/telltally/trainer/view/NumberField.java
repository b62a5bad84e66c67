package telltally.trainer.view;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.DrillInput;
import telltally.trainer.text.Texts;

/** One number, typed. */
final class NumberField extends VBox {
    private final DrillInput.Count input;
    private final Texts texts;
    private final Runnable answer;
    private final Label line = new Label();

    NumberField(DrillInput.Count input, Texts texts, Runnable answer) {
        this.input = input;
        this.texts = texts;
        this.answer = answer;
        getStyleClass().addAll("column", "number-field");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT_FIELD);
        Label heading = new Label(texts.of("drill.number"));
        heading.getStyleClass().add("column-heading");
        line.setMaxWidth(Double.MAX_VALUE);
        line.getStyleClass().addAll("code", "typing");
        VBox lines = new VBox(line);
        lines.getStyleClass().add("lines");
        getChildren().addAll(heading, lines);
        input.typedProperty().addListener(change -> write());
        setOnMouseClicked(event -> requestFocus());
        setOnKeyPressed(this::pressed);
        setOnKeyTyped(event -> {
            if (!event.isAltDown() && !event.isControlDown() && !event.isMetaDown()) {
                input.type(event.getCharacter());
            }
        });
        write();
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.BACK_SPACE) {
            input.erase();
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER) {
            answer.run();
            event.consume();
        }
    }

    private void write() {
        String typed = input.typedProperty().get();
        line.setText(typed + "\u2502");
        setAccessibleText(typed.isEmpty() ? texts.of("drill.number-empty") : texts.of("drill.number-spoken", typed));
    }
}
