package telltally.trainer.view;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import telltally.trainer.drill.Level;
import telltally.trainer.screen.SkillScreen;
import telltally.trainer.text.Texts;

/** One skill, to be practised at a level of one's own choice. */
final class SkillPage extends Page {
    private final Slider level = new Slider(Level.LOWEST, Level.HIGHEST, Level.LOWEST);

    SkillPage(SkillScreen screen, Texts texts) {
        super(screen.title());
        VBox belief = new VBox(Text.of(texts.of("home.belief"), "small-label"));
        belief.getStyleClass().add("panel");
        screen.beliefs().forEach(text -> belief.getChildren().add(Text.of(text, "reading")));
        VBox about = new VBox(Text.of(texts.of("home.about"), "small-label"), Text.of(screen.about(), "reading"));
        about.getStyleClass().addAll("panel", "task");
        add(about, belief, Text.of(texts.of("home.level"), "section"), levelLine(screen, texts));
        if (!screen.items().isEmpty()) {
            add(Text.of(texts.of("home.item"), "section"), items(screen, texts));
        }
        addFoot(
                new PushButton(texts.of("home.start"), screen::begin).styled("primary"),
                new PushButton(texts.of("home.back"), screen::back));
        addHint(texts.of("home.skill-hint"));
    }

    @Override
    void focusFirst() {
        level.requestFocus();
    }

    private Node levelLine(SkillScreen screen, Texts texts) {
        level.setValue(screen.levelProperty().get());
        level.setMajorTickUnit(1);
        level.setMinorTickCount(0);
        level.setSnapToTicks(true);
        level.setBlockIncrement(1);
        level.setShowTickMarks(true);
        level.setAccessibleText(texts.of("home.level"));
        Label told = Text.of(screen.levelTold(), "reading");
        level.valueProperty().addListener((property, before, after) -> {
            screen.levelProperty().set((int) Math.round(after.doubleValue()));
            told.setText(screen.levelTold());
        });
        level.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                screen.begin();
                event.consume();
            }
        });
        VBox line = new VBox(level, told);
        line.getStyleClass().add("level-line");
        return line;
    }

    private static Node items(SkillScreen screen, Texts texts) {
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("items");
        ToggleGroup group = new ToggleGroup();
        choices.getChildren().add(item(screen, group, "", texts.of("home.item-any")));
        List<String> items = screen.items();
        items.forEach(item -> choices.getChildren().add(item(screen, group, item, item)));
        return choices;
    }

    private static Node item(SkillScreen screen, ToggleGroup group, String item, String text) {
        RadioButton button = new RadioButton(text);
        button.setToggleGroup(group);
        button.setSelected(item.equals(screen.itemProperty().get()));
        button.setOnAction(event -> screen.itemProperty().set(item));
        return button;
    }
}
