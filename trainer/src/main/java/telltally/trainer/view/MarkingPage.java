package telltally.trainer.view;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.simulator.format.Segment;
import telltally.trainer.screen.MarkingScreen;
import telltally.trainer.screen.MarkingScreen.Line;
import telltally.trainer.text.Texts;

/** The marked work sheet: what was written stands under what was sent, with an explanation beside it. */
final class MarkingPage extends Page {
    private final Texts texts;
    private final PushButton first;

    MarkingPage(MarkingScreen screen, Texts texts) {
        super(screen.title());
        this.texts = texts;
        Label headline = Text.of(screen.headline(), "headline", screen.allRight() ? "all-right" : "some-wrong");
        add(headline);
        screen.notScored().ifPresent(reason -> add(Text.of(reason, "remark")));
        VBox paper = new VBox();
        paper.getStyleClass().addAll("paper", "marked");
        for (Segment segment : screen.segments()) {
            Label heading = new Label(screen.heading(segment));
            heading.getStyleClass().add("column-heading");
            paper.getChildren().add(heading);
            VBox rows = new VBox();
            rows.getStyleClass().add("marked-rows");
            screen.lines(segment).forEach(line -> rows.getChildren().add(row(screen, line)));
            paper.getChildren().add(rows);
        }
        add(paper);
        first = new PushButton(texts.of("marking.replay"), screen::replayAll).styled("primary");
        addFoot(
                first,
                new PushButton(texts.of("marking.again"), screen::playAgain),
                new PushButton(texts.of("marking.lessons"), screen::lessons));
        addHint(texts.of("marking.hint"));
    }

    @Override
    void focusFirst() {
        first.requestFocus();
    }

    private Node row(MarkingScreen screen, Line line) {
        GridPane codes = new GridPane();
        codes.getStyleClass().add("pair");
        codes.addRow(0, label(texts.of("marking.sent"), "pair-label"), label(orDash(line.sent()), "code"));
        codes.addRow(
                1,
                label(texts.of("marking.you"), "pair-label"),
                label(orDash(line.written()), "code", line.right() ? "right" : "wrong"));
        VBox words = new VBox();
        words.getStyleClass().add("words");
        HBox.setHgrow(words, Priority.ALWAYS);
        if (!line.meaning().isEmpty()) {
            words.getChildren().add(Text.of(line.meaning(), "meaning"));
        }
        for (int i = 0; i < line.errors().size(); i++) {
            words.getChildren().add(Text.of(line.errors().get(i), "error-name"));
            words.getChildren().add(Text.of(line.sentences().get(i), "error"));
        }
        HBox row = new HBox(
                label(line.right() ? "\u2713" : "\u2717", "tick", line.right() ? "right" : "wrong"), codes, words);
        row.getStyleClass().add("row-line");
        if (line.at().isEmpty()) {
            row.getStyleClass().add("still-row");
            row.setAccessibleText(screen.spoken(line));
            return row;
        }
        RowButton button = new RowButton(row, () -> screen.replay(line));
        button.setAccessibleText(screen.spoken(line));
        button.setAccessibleHelp(texts.of("marking.replays"));
        return button;
    }

    private static Label label(String text, String... styleClasses) {
        Label label = new Label(text);
        label.setMinWidth(Label.USE_PREF_SIZE);
        label.getStyleClass().addAll(styleClasses);
        return label;
    }

    private static String orDash(String code) {
        return code.isEmpty() ? "\u2013" : code;
    }
}
