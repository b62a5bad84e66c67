package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.LessonsScreen;
import telltally.trainer.screen.LessonsScreen.Item;
import telltally.trainer.text.Texts;

/** The list of lessons; each line is a button. */
final class LessonsPage extends Page {
    private final List<Node> rows = new ArrayList<>();
    private final int selected;

    LessonsPage(LessonsScreen screen, Texts texts) {
        super(screen.title());
        this.selected = screen.selected();
        screen.message().ifPresent(text -> add(Text.of(text, "remark")));
        List<Item> items = screen.items();
        for (int i = 0; i < items.size(); i++) {
            Node row = row(screen, items.get(i), i);
            rows.add(row);
            add(row);
        }
        addFoot(
                new PushButton(texts.of("lessons.settings"), screen::openSettings),
                new PushButton(texts.of("lessons.notice-again"), screen::back));
        addHint(texts.of("lessons.hint"));
    }

    @Override
    void focusFirst() {
        if (!rows.isEmpty()) {
            Node row = rows.get(Math.min(selected, rows.size() - 1));
            row.requestFocus();
            revealLater(row);
        }
    }

    private static Node row(LessonsScreen screen, Item item, int index) {
        Label number = new Label(Integer.toString(index + 1));
        number.getStyleClass().add("row-number");
        VBox text = new VBox(Text.of(item.title(), "row-title"), Text.of(item.trains(), "row-text"));
        text.getStyleClass().add("row-texts");
        if (!item.signal().isEmpty()) {
            text.getChildren().add(Text.of(item.signal(), "row-quiet"));
        }
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(number, text);
        line.getStyleClass().add("row-line");
        RowButton row = new RowButton(line, () -> screen.open(index));
        row.setAccessibleText(screen.spoken(item));
        if (!item.playable()) {
            row.getStyleClass().add("broken");
        }
        return row;
    }
}
