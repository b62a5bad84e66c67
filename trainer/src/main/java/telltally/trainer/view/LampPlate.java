package telltally.trainer.view;

import javafx.beans.value.ObservableDoubleValue;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import telltally.trainer.text.Texts;

/** The plate on the bench that the lamp is mounted on, with a line about how things stand. */
final class LampPlate extends VBox {
    /** @param shown whether there is a lamp at all; a lesson for the ear has none */
    LampPlate(ObservableDoubleValue brightness, boolean shown, ObservableStringValue caption, Texts texts) {
        getStyleClass().add("plate");
        Label text = Text.of("", "plate-caption");
        text.textProperty().bind(caption);
        if (shown) {
            getChildren().add(new Lamp(brightness, texts.of("display.signal-lamp")));
        } else {
            getChildren().add(Text.of(texts.of("display.by-ear"), "by-ear"));
        }
        getChildren().add(text);
    }
}
