package telltally.trainer.view;

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
        } else if (key == KeyCode.DOWN || key == KeyCode.UP) {
            step(key == KeyCode.DOWN ? 1 : -1);
            event.consume();
        } else if (key == KeyCode.END || key == KeyCode.HOME) {
            step(key == KeyCode.END ? Integer.MAX_VALUE / 2 : Integer.MIN_VALUE / 2);
            event.consume();
        }
    }

    private void step(int by) {
        if (getParent() == null) {
            return;
        }
        var rows = getParent().getChildrenUnmodifiable().stream()
                .filter(RowButton.class::isInstance)
                .toList();
        int next = Math.max(0, Math.min(rows.size() - 1, rows.indexOf(this) + by));
        rows.get(next).requestFocus();
    }
}
