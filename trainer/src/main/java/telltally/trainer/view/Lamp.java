package telltally.trainer.view;

import java.util.List;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.RadialGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Ellipse;

/**
 * A round amber pilot lamp in a bezel. It keeps its size when text grows: everything that changes with the light lies
 * within a circle of {@link #WIDTH_PX}, a quarter of the block of 341 by 256 pixels that stands for ten degrees of sight
 * (Web Content Accessibility Guidelines, general flash threshold).
 */
final class Lamp extends StackPane {
    static final double WIDTH_PX = 166;

    /** From the middle of the lens outwards; amber, because saturated red is the colour to avoid. */
    static final List<Color> LIT =
            List.of(Color.web("#ffe3a3"), Color.web("#ffc23d"), Color.web("#ffb000"), Color.web("#d98f00"));

    static final List<Color> UNLIT =
            List.of(Color.web("#5c4620"), Color.web("#4a3716"), Color.web("#3a2b10"), Color.web("#2b200c"));

    private static final double BEZEL = 75;
    private static final double SEAT = 62;
    private static final double LENS = 55;

    Lamp(ObservableDoubleValue brightness, String name) {
        getStyleClass().add("lamp");
        setMinSize(WIDTH_PX, WIDTH_PX);
        setMaxSize(WIDTH_PX, WIDTH_PX);
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        // Nothing here may change with the light: a spoken flash would come late, and would give the answer.
        setAccessibleText(name);

        Circle glow = new Circle(WIDTH_PX / 2, glow());
        Circle lit = new Circle(LENS, lens(LIT));
        glow.opacityProperty().bind(brightness);
        lit.opacityProperty().bind(brightness);
        Circle outer = new Circle(BEZEL, brushed("#77858f", "#39434b", "#1d2429"));
        outer.setStroke(Color.web("#10151a"));
        Circle seat = new Circle(SEAT, brushed("#161c21", "#333d45", "#5d6972"));
        seat.setStroke(Color.web("#0c1014"));
        getChildren().addAll(outer, seat, new Circle(LENS, lens(UNLIT)), lit, facets(), glow, shine());
    }

    private static Paint lens(List<Color> colours) {
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

    private static Paint brushed(String light, String middle, String dark) {
        return new LinearGradient(
                0.15,
                0,
                0.85,
                1,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, Color.web(light)),
                new Stop(0.5, Color.web(middle)),
                new Stop(1, Color.web(dark)));
    }

    private static Paint glow() {
        Color amber = LIT.get(2);
        double edge = 2 * LENS / WIDTH_PX;
        return new RadialGradient(
                0,
                0,
                0.5,
                0.5,
                0.5,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, Color.color(1, 1, 1, 0)),
                new Stop(edge - 0.02, Color.color(amber.getRed(), amber.getGreen(), amber.getBlue(), 0)),
                new Stop(edge, Color.color(amber.getRed(), amber.getGreen(), amber.getBlue(), 0.5)),
                new Stop(1, Color.color(amber.getRed(), amber.getGreen(), amber.getBlue(), 0)));
    }

    /** The rings that are moulded into such a lens. */
    private static Group facets() {
        Group rings = new Group();
        for (double radius = 14; radius < LENS; radius += 10) {
            Circle ring = new Circle(radius, Color.TRANSPARENT);
            ring.setStroke(Color.web("#000000", 0.14));
            ring.setStrokeWidth(1.2);
            rings.getChildren().add(ring);
        }
        return rings;
    }

    private static Ellipse shine() {
        Ellipse shine = new Ellipse(26, 13);
        shine.setFill(new LinearGradient(
                0,
                0,
                0,
                1,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, Color.web("#ffffff", 0.32)),
                new Stop(1, Color.web("#ffffff", 0.02))));
        shine.setTranslateX(-12);
        shine.setTranslateY(-33);
        shine.setRotate(-18);
        return shine;
    }
}
