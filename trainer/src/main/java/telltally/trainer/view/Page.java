package telltally.trainer.view;

import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import org.jspecify.annotations.Nullable;

/** What every screen has: a head, something that scrolls if it must, and buttons at the foot that wrap if they must. */
class Page extends BorderPane {
    private final VBox content = new VBox();
    private final StackPane ground = new StackPane(content);
    private final Scrolled scrolled = new Scrolled(ground);
    private final FlowPane foot = new FlowPane();
    private boolean opening;
    private final ChangeListener<Node> revealing = (property, before, after) -> {
        if (!opening) {
            revealLater(after);
        }
    };

    Page(String title) {
        getStyleClass().add("page");
        Label brand = new Label("Telltally", new Circle(5));
        brand.getStyleClass().add("brand");
        brand.setMinWidth(Label.USE_PREF_SIZE);
        Label heading = Text.of(title, "heading");
        HBox.setHgrow(heading, Priority.ALWAYS);
        HBox head = new HBox(brand, heading);
        head.getStyleClass().add("head");
        content.getStyleClass().add("content");
        ground.getStyleClass().add("ground");
        foot.getStyleClass().add("foot");
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.setMinWidth(0);
        setTop(head);
        setCenter(scrolled);
        setBottom(foot);
        sceneProperty().addListener((property, before, after) -> {
            if (before != null) {
                before.focusOwnerProperty().removeListener(revealing);
            }
            if (after != null) {
                after.focusOwnerProperty().addListener(revealing);
            }
        });
    }

    /** The page has been turned to: it is read from the top, wherever the keyboard is. */
    final void opened() {
        opening = true;
        focusFirst();
        opening = false;
    }

    /** Puts the keyboard where it is wanted first. */
    void focusFirst() {}

    final void add(Node... nodes) {
        content.getChildren().addAll(nodes);
    }

    final void addFoot(Node... nodes) {
        foot.getChildren().addAll(nodes);
    }

    /** A hint on the keys, beside the buttons. */
    final Label addHint(String text) {
        Label hint = Text.of(text, "hint");
        // A row that wraps its children does not make a single long one narrower by itself.
        InvalidationListener narrower = change -> {
            if (foot.getWidth() > 0) {
                hint.setMaxWidth(foot.getWidth() - foot.snappedLeftInset() - foot.snappedRightInset());
            }
        };
        foot.widthProperty().addListener(narrower);
        foot.insetsProperty().addListener(narrower);
        foot.getChildren().add(hint);
        return hint;
    }

    /** Puts something beside what scrolls, so that it stays in sight. */
    final void stayInSight(Node node) {
        VBox side = new VBox(node);
        side.getStyleClass().add("side");
        setLeft(side);
        content.getStyleClass().add("beside");
    }

    /** Scrolls as little as is needed to show a node of the content, once it has found its place. */
    final void revealLater(@Nullable Node node) {
        if (node != null && scrolled.holds(node)) {
            Platform.runLater(() -> reveal(node));
        }
    }

    private void reveal(Node node) {
        layout();
        scrolled.reveal(node instanceof ColumnField field ? field.typingLine() : node);
    }
}
