package telltally.trainer.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** A line of a list that can be pressed. A plain button would cut long text off instead of growing with it. */
final class RowButton extends StackPane {
    private final Runnable action;

    RowButton(Node line, Runnable action) {
        super(line);
        this.action = action;
        getStyleClass().add("row");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setOnMouseClicked(event -> action.run());
        setOnKeyPressed(this::pressed);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction wanted, Object... parameters) {
        if (wanted == AccessibleAction.FIRE) {
            action.run();
        } else {
            super.executeAccessibleAction(wanted, parameters);
        }
    }

    private void pressed(KeyEvent event) {
        KeyCode key = event.getCode();
        if (key == KeyCode.ENTER || key == KeyCode.SPACE) {
            action.run();
            event.consume();
        } else if (getParent() != null && key.isNavigationKey()) {
            next(key).ifPresent(Node::requestFocus);
            event.consume();
        }
    }

    /** Left and right lead along the rows in their order, up and down to what lies above and below. */
    private Optional<Node> next(KeyCode key) {
        List<Node> rows = getParent().getChildrenUnmodifiable().stream()
                .filter(RowButton.class::isInstance)
                .toList();
        return switch (key) {
            case HOME -> Optional.of(rows.get(0));
            case END -> Optional.of(rows.get(rows.size() - 1));
            case LEFT -> rows.subList(0, rows.indexOf(this)).stream().reduce((one, other) -> other);
            case RIGHT ->
                rows.subList(rows.indexOf(this) + 1, rows.size()).stream().findFirst();
            case UP -> nearest(rows.stream().filter(row -> row.getLayoutY() < getLayoutY()));
            case DOWN -> nearest(rows.stream().filter(row -> row.getLayoutY() > getLayoutY()));
            default -> Optional.empty();
        };
    }

    private Optional<Node> nearest(Stream<Node> rows) {
        return rows.min(Comparator.<Node>comparingDouble(row -> Math.abs(row.getLayoutY() - getLayoutY()))
                .thenComparingDouble(row -> Math.abs(row.getLayoutX() - getLayoutX())));
    }
}
