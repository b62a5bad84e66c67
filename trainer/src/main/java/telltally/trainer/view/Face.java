package telltally.trainer.view;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.Paint;
import javafx.scene.paint.RadialGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Circle;

/**
 * What is looked at while flashes come. It keeps its size when text grows. Nothing that is said of it changes with the
 * light: a spoken flash would come late, and would give the answer.
 */
abstract class Face extends StackPane {
    Face(double widthPx, double heightPx, String name) {
        getStyleClass().add("face");
        setMinSize(widthPx, heightPx);
        setPrefSize(widthPx, heightPx);
        setMaxSize(widthPx, heightPx);
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(name);
    }

    /** @param colours from the middle outwards */
    static Paint lens(List<Color> colours) {
        return new RadialGradient(
                0,
                0,
                0.46,
                0.42,
                0.58,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, colours.get(0)),
                new Stop(0.4, colours.get(1)),
                new Stop(0.75, colours.get(2)),
                new Stop(1, colours.get(3)));
    }

    /**
     * Light around a lens.
     *
     * @param lens the lens's radius as a share of the width
     */
    static Circle glow(Color colour, double lens, double widthPx) {
        double edge = 2 * lens;
        Color none = Color.color(colour.getRed(), colour.getGreen(), colour.getBlue(), 0);
        Color half = Color.color(colour.getRed(), colour.getGreen(), colour.getBlue(), 0.5);
        Paint light = new RadialGradient(
                0,
                0,
                0.5,
                0.5,
                0.5,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, none),
                new Stop(edge - 0.02, none),
                new Stop(edge, half),
                new Stop(1, none));
        return new Circle(widthPx / 2, light);
    }
}
