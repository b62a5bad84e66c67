package telltally.trainer.view;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import telltally.trainer.logbook.Learner;
import telltally.trainer.screen.LearnersScreen;
import telltally.trainer.screen.LearnersScreen.State;
import telltally.trainer.text.Texts;

/** The list of those who practise, and a line for somebody new. */
final class LearnersPage extends Page {
    private final LearnersScreen screen;
    private final Texts texts;
    private final VBox body = new VBox();
    private final List<Node> rows = new ArrayList<>();
    private final TextField name = new TextField();
    private final PushButton delete;
    private final Label hint;

    LearnersPage(LearnersScreen screen, Texts texts) {
        super(screen.title());
        this.screen = screen;
        this.texts = texts;
        this.delete = new PushButton(
                texts.of("learners.delete"),
                () -> screen.setDeleting(!screen.state().deleting()));
        body.getStyleClass().add("told");
        name.setAccessibleText(texts.of("learners.name"));
        name.setPromptText(texts.of("learners.name"));
        name.setOnAction(event -> screen.enrol(name.getText()));
        name.addEventFilter(KeyEvent.KEY_PRESSED, this::pressButtons);
        add(body);
        addFoot(
                new PushButton(texts.of("learners.guest"), screen::goOnAsGuest),
                delete,
                new PushButton(texts.of("learners.notice-again"), screen::back));
        hint = addHint("");
        fill(screen.state());
        screen.stateProperty().addListener((property, before, after) -> {
            fill(after);
            focusFirst();
            // A button pressed by its letter takes the keyboard when it has done its work.
            Platform.runLater(this::focusFirst);
        });
    }

    @Override
    void focusFirst() {
        (rows.isEmpty() ? name : rows.get(0)).requestFocus();
    }

    /** A line that is typed in keeps every letter to itself, those that press buttons together with Alt included. */
    private void pressButtons(KeyEvent event) {
        if (event.isAltDown()) {
            List.copyOf(getScene().getMnemonics().entrySet()).stream()
                    .filter(each -> each.getKey().match(event))
                    .flatMap(each -> each.getValue().stream())
                    // The window still knows those of pages that were turned over.
                    .filter(each -> each.getNode().getScene() == getScene())
                    .findFirst()
                    .ifPresent(button -> {
                        event.consume();
                        button.fire();
                    });
        }
    }

    private void fill(State state) {
        rows.clear();
        body.getChildren().clear();
        state.message().ifPresent(text -> body.getChildren().add(Text.of(text, "remark")));
        delete.setDisable(state.learners().isEmpty());
        delete.setText(texts.of(state.deleting() ? "learners.keep-all" : "learners.delete"));
        hint.setText(texts.of(hintKey(state)));
        if (state.waiting()) {
            body.getChildren().add(Text.of(texts.of("learners.waiting"), "quiet"));
        }
        if (!state.learners().isEmpty()) {
            String heading = state.deleting() ? "learners.delete-whom" : "learners.choose";
            VBox list = new VBox();
            list.getStyleClass().add("list");
            state.learners().forEach(learner -> rows.add(row(learner, state.deleting())));
            list.getChildren().addAll(rows);
            body.getChildren().addAll(Text.of(texts.of(heading), "section"), list);
        }
        if (!state.deleting()) {
            body.getChildren().add(newcomer());
        }
    }

    private static String hintKey(State state) {
        if (state.learners().isEmpty()) {
            return "learners.hint-first";
        }
        return state.deleting() ? "learners.hint-delete" : "learners.hint-choose";
    }

    private Node newcomer() {
        PushButton begin = new PushButton(texts.of("learners.begin"), () -> screen.enrol(name.getText()));
        FlowPane line = new FlowPane(name, begin.styled("primary"));
        line.getStyleClass().add("entry");
        VBox box = new VBox(
                Text.of(texts.of("learners.new"), "section"),
                line,
                Text.of(texts.of("learners.new-hint"), "quiet"),
                Text.of(screen.place(), "quiet"));
        box.getStyleClass().add("told");
        return box;
    }

    private Node row(Learner learner, boolean deleting) {
        String since = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(texts.language())
                .format(LocalDate.ofInstant(learner.since(), ZoneId.systemDefault()));
        Label title = Text.of(learner.name(), "row-title");
        VBox words = new VBox(title, Text.of(texts.of("learners.since", since), "row-quiet"));
        HBox line = new HBox(words);
        line.getStyleClass().add("row-line");
        RowButton row = new RowButton(line, () -> screen.choose(learner));
        row.setAccessibleText(texts.of(deleting ? "learners.spoken-delete" : "learners.spoken", learner.name(), since));
        return row;
    }
}
