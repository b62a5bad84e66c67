package telltally.trainer.view;

import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A button that the Enter key presses as well as the space bar. */
final class PushButton extends Button {
    /** @param text an underscore before the letter that presses it together with Alt */
    PushButton(String text, Runnable action) {
        super(text);
        setMnemonicParsing(true);
        setOnAction(event -> action.run());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    PushButton styled(String styleClass) {
        getStyleClass().add(styleClass);
        return this;
    }

    /** Before the button itself sees the key, which it would swallow. */
    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            fire();
            event.consume();
        }
    }
}
