package telltally.trainer.view;

import javafx.beans.value.ObservableStringValue;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A count as strokes, every fifth across the four before it. */
final class TallyMarks extends FlowPane {
    private static final int GATE = 5;

    /** Nobody draws two strokes alike. */
    private static final double[] SLANTS = {3, -1, 4, 1};

    /** @param count a whole number as text; empty for none */
    TallyMarks(ObservableStringValue count) {
        getStyleClass().add("tally-marks");
        // The number beside it says the same.
        setAccessibleText("");
        count.addListener((property, before, after) -> draw(after));
        draw(count.get());
    }

    private void draw(String count) {
        getChildren().clear();
        int left = count.isEmpty() ? 0 : Integer.parseInt(count);
        while (left > 0) {
            getChildren().add(gate(Math.min(GATE, left)));
            left -= GATE;
        }
    }

    private static StackPane gate(int strokes) {
        HBox upright = new HBox();
        upright.getStyleClass().add("gate");
        for (int i = 0; i < Math.min(strokes, GATE - 1); i++) {
            upright.getChildren().add(stroke("stroke", SLANTS[i]));
        }
        StackPane gate = new StackPane(upright);
        if (strokes == GATE) {
            gate.getChildren().add(stroke("across", -24));
        }
        return gate;
    }

    private static Region stroke(String styleClass, double slant) {
        Region stroke = new Region();
        stroke.getStyleClass().add(styleClass);
        stroke.setRotate(slant);
        return stroke;
    }
}
