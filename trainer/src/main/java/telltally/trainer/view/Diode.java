package telltally.trainer.view;

import java.util.List;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;

/** A small yellow-green light-emitting diode in a front panel. */
final class Diode extends Face {
    static final List<Color> LIT =
            List.of(Color.web("#f4ffd6"), Color.web("#d4f97a"), Color.web("#b4ea3c"), Color.web("#86b822"));

    static final List<Color> UNLIT =
            List.of(Color.web("#4f5a38"), Color.web("#3f4a2b"), Color.web("#333d22"), Color.web("#262e19"));

    private static final double LENS = 0.16;
    private static final double COLLAR = 0.2;

    /** @param opacity of what is lit, 0 to 1 */
    Diode(ObservableDoubleValue opacity, double widthPx, String name) {
        super(widthPx, widthPx, name);
        Rectangle panel = new Rectangle(0.9 * widthPx, 0.9 * widthPx, Color.web("#23292e"));
        panel.setArcWidth(0.12 * widthPx);
        panel.setArcHeight(0.12 * widthPx);
        panel.setStroke(Color.web("#5d6972"));
        Circle collar = new Circle(COLLAR * widthPx, Color.web("#0d1114"));
        Circle lit = new Circle(LENS * widthPx, lens(LIT));
        Circle glow = glow(LIT.get(2), LENS, widthPx);
        lit.opacityProperty().bind(opacity);
        glow.opacityProperty().bind(opacity);
        getChildren().addAll(panel, collar, new Circle(LENS * widthPx, lens(UNLIT)), lit, glow);
    }
}
