package telltally.trainer.view;

import javafx.scene.control.Label;

/** Lines of text that wrap rather than end in dots. */
final class Text {
    private Text() {}

    static Label of(String text, String... styleClasses) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.getStyleClass().addAll(styleClasses);
        return label;
    }
}
