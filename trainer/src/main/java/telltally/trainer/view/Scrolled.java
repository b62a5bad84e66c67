package telltally.trainer.view;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * Scrolls what does not fit. What fits is laid out as it is: a scroll pane takes longer to load than all the rest of the
 * page that the program opens with.
 */
final class Scrolled extends Region {
    private final Region content;
    private @Nullable ScrollPane scroll;

    Scrolled(Region content) {
        this.content = content;
        getChildren().add(content);
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefHeight(double width) {
        return content.prefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        ScrollPane mounted = scroll;
        boolean known = getWidth() > 0 && getHeight() > 0;
        if (mounted == null && known && content.prefHeight(getWidth()) > getHeight()) {
            mounted = mount();
        }
        if (mounted == null) {
            content.resizeRelocate(0, 0, getWidth(), content.prefHeight(getWidth()));
        } else {
            mounted.resizeRelocate(0, 0, getWidth(), getHeight());
        }
    }

    private ScrollPane mount() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        ScrollPane pane = new ScrollPane();
        pane.setFitToWidth(true);
        pane.setFocusTraversable(false);
        pane.getStyleClass().add("scroll");
        getChildren().setAll(pane);
        pane.setContent(content);
        // What scrolls joins the window only when its style has been applied, and cannot take the keyboard before.
        pane.applyCss();
        if (owner != null && holds(owner)) {
            owner.requestFocus();
        }
        scroll = pane;
        return pane;
    }

    /** Whether a node is part of the content. */
    boolean holds(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (each == content) {
                return true;
            }
        }
        return false;
    }

    /** Scrolls as little as is needed to show a part of the content with some of what is around it. */
    void reveal(Node part) {
        ScrollPane pane = scroll;
        if (pane == null) {
            return;
        }
        Bounds seen = pane.getViewportBounds();
        Bounds wanted = content.sceneToLocal(part.localToScene(part.getLayoutBounds()));
        double room = content.getHeight() - seen.getHeight();
        if (room <= 0) {
            return;
        }
        double top = pane.getVvalue() * room;
        double margin = Math.min(40, seen.getHeight() / 8);
        if (wanted.getMinY() - margin < top) {
            top = wanted.getMinY() - margin;
        } else if (wanted.getMaxY() + margin > top + seen.getHeight()) {
            top = wanted.getMaxY() + margin - seen.getHeight();
        }
        pane.setVvalue(Math.max(0, Math.min(1, top / room)));
    }
}
