package telltally.trainer.view;

import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.NoticeScreen;
import telltally.trainer.settings.LampSize;
import telltally.trainer.text.Texts;

/** The notice before the first flash. */
final class NoticePage extends Page {
    private final DisplayChoice choice;

    NoticePage(NoticeScreen screen, Texts texts) {
        super(screen.title());
        VBox words = new VBox(Text.of(screen.warning(), "warning"));
        words.getStyleClass().add("notice-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        screen.paragraphs().forEach(text -> words.getChildren().add(Text.of(text, "reading")));
        HBox panel = new HBox(
                new Lamp(new SimpleDoubleProperty(0), LampSize.LARGE.widthPx(), texts.of("display.signal-lamp")),
                words);
        panel.getStyleClass().addAll("panel", "notice");
        choice = new DisplayChoice(screen.choiceProperty(), screen.choices());
        choice.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                screen.goOn();
                event.consume();
            }
        });
        add(panel, Text.of(texts.of("notice.question"), "section"), choice);
        addFoot(
                new PushButton(texts.of("notice.go-on"), screen::goOn).styled("primary"),
                new PushButton(texts.of("notice.settings"), screen::openSettings));
        addHint(texts.of("notice.hint"));
    }

    @Override
    void focusFirst() {
        choice.focusChosen();
    }
}
