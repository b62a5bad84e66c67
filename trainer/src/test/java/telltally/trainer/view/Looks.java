package telltally.trainer.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;

/** What somebody would complain about who looks at a page or hears it; ask on the toolkit's thread. */
final class Looks {
    private Looks() {}

    /** Texts that end in dots, reach beyond the window at its sides, or stand out of a row that can be pressed. */
    static List<String> cutOff(Scene scene) {
        List<String> found = new ArrayList<>();
        for (Node node : all(scene.getRoot())) {
            if (node instanceof Labeled labeled
                    && labeled.isVisible()
                    && !labeled.getText().isBlank()) {
                Bounds bounds = labeled.localToScene(labeled.getLayoutBounds());
                if (bounds.getMinX() < -1 || bounds.getMaxX() > scene.getWidth() + 1) {
                    found.add("beyond the side: " + labeled.getText() + " " + bounds);
                }
                if (!shown(labeled).equals(labeled.getText().replace("_", ""))) {
                    found.add("cut: " + labeled.getText() + " shows " + shown(labeled));
                }
            }
        }
        for (RowButton row : find(scene, RowButton.class)) {
            if (row.prefHeight(row.getWidth()) > row.getHeight() + 1) {
                found.add("stands out of its row: " + row.getAccessibleText());
            }
        }
        return found;
    }

    /** Nodes that the keyboard reaches and that have nothing to say. */
    static List<String> mute(Scene scene) {
        return all(scene.getRoot()).stream()
                .filter(Node::isFocusTraversable)
                .filter(node -> spoken(node).isBlank())
                .map(Node::toString)
                .toList();
    }

    /** Letters that several things at once would answer to, with Alt. */
    static List<String> sharedLetters(Scene scene) {
        List<String> letters = all(scene.getRoot()).stream()
                .filter(ButtonBase.class::isInstance)
                .map(ButtonBase.class::cast)
                .filter(button -> button.isVisible() && button.isMnemonicParsing())
                .map(button -> button.getText())
                .filter(text -> text.contains("_"))
                .map(text -> text.substring(text.indexOf('_') + 1, text.indexOf('_') + 2)
                        .toLowerCase(Locale.ROOT))
                .toList();
        return letters.stream()
                .filter(letter -> Collections.frequency(letters, letter) > 1)
                .distinct()
                .toList();
    }

    static <T extends Node> List<T> find(Scene scene, Class<T> type) {
        return all(scene.getRoot()).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    private static String spoken(Node node) {
        Object text = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
        return node.getAccessibleText() != null ? node.getAccessibleText() : String.valueOf(text == null ? "" : text);
    }

    /** What the skin really draws, lines joined. */
    private static String shown(Labeled labeled) {
        StringBuilder text = new StringBuilder();
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text drawn) {
                text.append(drawn.getText());
            }
        }
        return text.toString();
    }

    private static List<Node> all(Node root) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(root);
        if (root instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> nodes.addAll(all(child)));
        }
        return nodes;
    }
}
