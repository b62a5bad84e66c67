package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import telltally.trainer.screen.HomeScreen;
import telltally.trainer.screen.HomeScreen.Step;
import telltally.trainer.text.Texts;

/** What comes next and why, what is worth knowing, and the whole path. */
final class HomePage extends Page {
    private static final double GAP_PX = 10;

    private final PushButton begin;
    private Node first;

    HomePage(HomeScreen screen, Texts texts) {
        super(screen.title());
        begin = new PushButton(texts.of("home.begin"), screen::begin);
        first = begin;
        VBox next = panel(texts.of("home.next"), "task");
        next.getChildren().addAll(Text.of(screen.proposal(), "headline"), Text.of(screen.why(), "reading"));
        add(next);
        List<String> notes = screen.notes();
        if (!notes.isEmpty()) {
            VBox today = panel(texts.of("home.today"), "panel");
            notes.forEach(note -> today.getChildren().add(Text.of(note)));
            add(today);
        }
        add(
                Text.of(texts.of("home.path"), "section"),
                Text.of(texts.of("home.path-hint"), "quiet"),
                path(screen, texts));
        addFoot(
                begin.styled("primary"),
                new PushButton(texts.of("home.lessons"), screen::lessons),
                new PushButton(texts.of("home.progress"), screen::progress),
                new PushButton(texts.of("home.settings"), screen::settings),
                new PushButton(texts.of("home.learners"), screen::learners));
        addHint(texts.of("home.hint"));
    }

    @Override
    void focusFirst() {
        first.requestFocus();
    }

    private static VBox panel(String heading, String style) {
        VBox panel = new VBox(Text.of(heading, "small-label"));
        panel.getStyleClass().addAll("panel", style);
        return panel;
    }

    private Node path(HomeScreen screen, Texts texts) {
        List<RowButton> steps = new ArrayList<>();
        screen.path().forEach(step -> {
            RowButton row = step(screen, step, texts);
            steps.add(row);
            // Who has just looked at a step goes on from it, as who has not begins.
            if (screen.cameFrom(step.skill())) {
                first = row;
            }
        });
        return new EvenColumns(steps, GAP_PX);
    }

    private static RowButton step(HomeScreen screen, Step step, Texts texts) {
        Label sign = new Label(step.sign());
        sign.getStyleClass().add("step-sign");
        Label told =
                Text.of(step.proposed() ? step.told() + ", " + texts.of("home.proposed") : step.told(), "row-quiet");
        VBox words = new VBox(Text.of(step.number() + "  " + step.name(), "step-name"), told);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(sign, words);
        line.getStyleClass().add("step-line");
        RowButton row = new RowButton(line, () -> screen.open(step.skill()));
        row.getStyleClass().addAll("step", "stage-" + step.stage().name().toLowerCase(java.util.Locale.ROOT));
        if (step.proposed()) {
            row.getStyleClass().add("proposed");
        }
        row.setAccessibleText(screen.spoken(step));
        return row;
    }
}
