package telltally.trainer.view;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import telltally.trainer.screen.DrillScreen;
import telltally.trainer.text.Texts;

/** Where the space bar, or a finger, is tapped along with the flashes. */
final class TapPad extends FlowPane {
    private static final PseudoClass DOWN = PseudoClass.getPseudoClass("armed");

    private final StackPane key;

    TapPad(DrillScreen screen, Texts texts) {
        getStyleClass().add("display-choice");
        Label name = new Label(texts.of("drill.tap-pad"));
        key = new StackPane(name);
        key.getStyleClass().add("tap-pad");
        key.setFocusTraversable(true);
        key.setAccessibleRole(AccessibleRole.BUTTON);
        key.setAccessibleText(texts.of("drill.tap-pad"));
        key.setAccessibleHelp(texts.of("drill.tap-only"));
        key.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.SPACE) {
                screen.tap(true);
                event.consume();
            }
        });
        key.setOnKeyReleased(event -> {
            if (event.getCode() == KeyCode.SPACE) {
                screen.tap(false);
                event.consume();
            }
        });
        key.setOnMousePressed(event -> {
            key.requestFocus();
            screen.tap(true);
        });
        key.setOnMouseReleased(event -> screen.tap(false));
        screen.tappingProperty().addListener((property, before, down) -> key.pseudoClassStateChanged(DOWN, down));
        PushButton read = new PushButton(texts.of("drill.tap-read"), screen::readTaps);
        read.disableProperty().bind(screen.endedProperty().not());
        getChildren().addAll(key, read);
    }

    Node key() {
        return key;
    }
}
