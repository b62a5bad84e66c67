package telltally.trainer.view;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.Words;
import telltally.trainer.screen.MarkingScreen;
import telltally.trainer.screen.MarkingScreen.Line;

/** The marked work sheet: what was written stands under what was sent, with an explanation beside it. */
final class MarkingPage extends Page {
    private final PushButton first;

    MarkingPage(MarkingScreen screen) {
        super(screen.title());
        Label headline = Text.of(screen.headline(), "headline", screen.allRight() ? "all-right" : "some-wrong");
        add(headline);
        screen.notScored().ifPresent(reason -> add(Text.of(reason, "remark")));
        VBox paper = new VBox();
        paper.getStyleClass().addAll("paper", "marked");
        for (Segment segment : screen.segments()) {
            Label heading = new Label(Words.heading(segment));
            heading.getStyleClass().add("column-heading");
            paper.getChildren().add(heading);
            VBox rows = new VBox();
            rows.getStyleClass().add("marked-rows");
            screen.lines(segment).forEach(line -> rows.getChildren().add(row(screen, line)));
            paper.getChildren().add(rows);
        }
        add(paper);
        first = new PushButton("_Replay with a count", screen::replayAll).styled("primary");
        addFoot(first, new PushButton("_Play again", screen::playAgain), new PushButton("_Lessons", screen::lessons));
        addHint("Enter on a code replays that code alone. Escape goes to the lessons.");
    }

    @Override
    void focusFirst() {
        first.requestFocus();
    }

    private static Node row(MarkingScreen screen, Line line) {
        GridPane codes = new GridPane();
        codes.getStyleClass().add("pair");
        codes.addRow(0, label("sent", "pair-label"), label(orDash(line.sent()), "code"));
        codes.addRow(
                1, label("you", "pair-label"), label(orDash(line.written()), "code", line.right() ? "right" : "wrong"));
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
            row.setAccessibleText(line.spoken());
            return row;
        }
        RowButton button = new RowButton(row, () -> screen.replay(line));
        button.setAccessibleText(line.spoken());
        button.setAccessibleHelp("Replays this code.");
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
