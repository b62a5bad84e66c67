package telltally.trainer.view;

import java.util.List;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;

/** A test light as it is held: a bulb in a clear handle, the probe upwards, the lead below. */
final class TestLight extends Face {
    static final List<Color> LIT =
            List.of(Color.web("#fff6dd"), Color.web("#ffe3a0"), Color.web("#ffcf6b"), Color.web("#d9a440"));

    static final List<Color> UNLIT =
            List.of(Color.web("#575c5f"), Color.web("#474c50"), Color.web("#3b4044"), Color.web("#2e3336"));

    private static final double LENS = 0.17;

    /** @param opacity of what is lit, 0 to 1 */
    TestLight(ObservableDoubleValue opacity, double widthPx, String name) {
        super(widthPx, 1.7 * widthPx, name);
        Rectangle handle = new Rectangle(0.44 * widthPx, 1.02 * widthPx);
        handle.setArcWidth(0.3 * widthPx);
        handle.setArcHeight(0.3 * widthPx);
        handle.setFill(new LinearGradient(
                0,
                0,
                1,
                0,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, Color.web("#8fa3b0", 0.55)),
                new Stop(0.5, Color.web("#39454d", 0.75)),
                new Stop(1, Color.web("#8fa3b0", 0.55))));
        handle.setStroke(Color.web("#7e8c96"));
        Polygon probe = new Polygon(0, 0, 0.035 * widthPx, 0.32 * widthPx, -0.035 * widthPx, 0.32 * widthPx);
        probe.setFill(Color.web("#aab4bb"));
        probe.setStroke(Color.web("#4a545b"));
        probe.setTranslateY(-0.67 * widthPx);
        CubicCurve lead = new CubicCurve(
                0, 0, 0.02 * widthPx, 0.14 * widthPx, 0.22 * widthPx, 0.12 * widthPx, 0.24 * widthPx, 0.3 * widthPx);
        lead.setFill(Color.TRANSPARENT);
        lead.setStroke(Color.web("#7e8c96"));
        lead.setStrokeWidth(0.03 * widthPx);
        lead.setTranslateX(0.12 * widthPx);
        lead.setTranslateY(0.67 * widthPx);
        Circle lit = new Circle(LENS * widthPx, lens(LIT));
        Circle glow = glow(LIT.get(2), LENS, widthPx);
        lit.opacityProperty().bind(opacity);
        glow.opacityProperty().bind(opacity);
        getChildren().addAll(lead, probe, handle, new Circle(LENS * widthPx, lens(UNLIT)), lit, glow);
    }
}
