package telltally.trainer.view;

import java.util.List;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Ellipse;

/** A round amber pilot lamp in a bezel, as on the dash. */
final class Lamp extends Face {
    /** From the middle of the lens outwards; amber, because saturated red is the colour to avoid. */
    static final List<Color> LIT =
            List.of(Color.web("#ffe3a3"), Color.web("#ffc23d"), Color.web("#ffb000"), Color.web("#d98f00"));

    static final List<Color> UNLIT =
            List.of(Color.web("#5c4620"), Color.web("#4a3716"), Color.web("#3a2b10"), Color.web("#2b200c"));

    /** Shares of the width. */
    private static final double BEZEL = 0.45;

    private static final double SEAT = 0.37;
    private static final double LENS = 0.33;

    /** @param opacity of what is lit, 0 to 1 */
    Lamp(ObservableDoubleValue opacity, double widthPx, String name) {
        super(widthPx, widthPx, name);
        Circle glow = glow(LIT.get(2), LENS, widthPx);
        Circle lit = new Circle(LENS * widthPx, lens(LIT));
        glow.opacityProperty().bind(opacity);
        lit.opacityProperty().bind(opacity);
        Circle outer = new Circle(BEZEL * widthPx, brushed("#77858f", "#39434b", "#1d2429"));
        outer.setStroke(Color.web("#10151a"));
        Circle seat = new Circle(SEAT * widthPx, brushed("#161c21", "#333d45", "#5d6972"));
        seat.setStroke(Color.web("#0c1014"));
        getChildren()
                .addAll(
                        outer,
                        seat,
                        new Circle(LENS * widthPx, lens(UNLIT)),
                        lit,
                        facets(widthPx),
                        glow,
                        shine(widthPx));
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

    /** The rings that are moulded into such a lens. */
    private static Group facets(double widthPx) {
        Group rings = new Group();
        for (double share = 0.085; share < LENS; share += 0.06) {
            Circle ring = new Circle(share * widthPx, Color.TRANSPARENT);
            ring.setStroke(Color.web("#000000", 0.14));
            ring.setStrokeWidth(1.2);
            rings.getChildren().add(ring);
        }
        return rings;
    }

    private static Ellipse shine(double widthPx) {
        Ellipse shine = new Ellipse(0.157 * widthPx, 0.078 * widthPx);
        shine.setFill(new LinearGradient(
                0,
                0,
                0,
                1,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, Color.web("#ffffff", 0.32)),
                new Stop(1, Color.web("#ffffff", 0.02))));
        shine.setTranslateX(-0.072 * widthPx);
        shine.setTranslateY(-0.2 * widthPx);
        shine.setRotate(-18);
        return shine;
    }
}
