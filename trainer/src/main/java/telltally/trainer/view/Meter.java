package telltally.trainer.view;

import javafx.beans.binding.DoubleBinding;
import javafx.beans.value.ObservableDoubleValue;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.Rotate;

/** A moving-coil meter with a scale of ten parts; a steady lit level holds the needle on eight. */
final class Meter extends Face {
    /** How much wider than a lamp of the same size: a needle needs a scale, and nothing of it flashes. */
    static final double TO_LAMP = 1.15;

    /** From upright. */
    private static final double REST_DEGREES = -48;

    private static final double HELD_DEGREES = REST_DEGREES + 0.8 * 96;
    private static final double LAST_DEGREES = 52;

    private final double radius;

    /**
     * @param level 0 at rest, 1 where a steady lit level holds the needle
     * @param lampPx the width that a lamp would have
     */
    Meter(ObservableDoubleValue level, double lampPx, String name) {
        super(TO_LAMP * lampPx, TO_LAMP * lampPx * 0.72, name);
        double width = TO_LAMP * lampPx;
        radius = 0.48 * width;
        Rectangle frame = new Rectangle(width, 0.72 * width);
        frame.setArcWidth(0.08 * width);
        frame.setArcHeight(0.08 * width);
        frame.getStyleClass().add("meter-frame");
        double across = 0.92 * width;
        double down = 0.64 * width;
        Rectangle ground = new Rectangle(across, down);
        ground.getStyleClass().add("meter-face");
        Group dial = new Group(scale(), needle(level), hub(width));
        dial.setTranslateX(across / 2);
        dial.setTranslateY(0.95 * down);
        Pane face = new Pane(ground, dial);
        face.setMinSize(across, down);
        face.setMaxSize(across, down);
        // What reaches below the face is hidden, as in a real one.
        face.setClip(new Rectangle(across, down));
        getChildren().addAll(frame, face);
    }

    private Node scale() {
        Group marks = new Group();
        Arc arc = new Arc(0, 0, radius, radius, 90 - REST_DEGREES - 96, 96);
        arc.setType(ArcType.OPEN);
        arc.getStyleClass().add("meter-mark");
        marks.getChildren().add(arc);
        for (int part = 0; part <= 10; part++) {
            double degrees = REST_DEGREES + 9.6 * part;
            boolean whole = part % 2 == 0;
            Line mark = new Line(0, -radius, 0, -radius * (whole ? 1.11 : 1.06));
            mark.getStyleClass().add("meter-mark");
            mark.getTransforms().add(new Rotate(degrees, 0, 0));
            marks.getChildren().add(mark);
            if (whole) {
                marks.getChildren().add(number(part, degrees));
            }
        }
        return marks;
    }

    private Text number(int part, double degrees) {
        Text text = new Text(Integer.toString(part));
        text.setStyle("-fx-font-size: " + radius * 0.12 + "px;");
        text.getStyleClass().add("meter-number");
        text.setTextAlignment(TextAlignment.CENTER);
        text.setTextOrigin(VPos.CENTER);
        double away = radius * 0.88;
        text.setX(away * Math.sin(Math.toRadians(degrees))
                - radius * 0.035 * text.getText().length());
        text.setY(-away * Math.cos(Math.toRadians(degrees)));
        return text;
    }

    private Node needle(ObservableDoubleValue level) {
        Line needle = new Line(0, 0, 0, -radius * 1.04);
        needle.getStyleClass().add("meter-needle");
        Rotate swing = new Rotate(REST_DEGREES, 0, 0);
        swing.angleProperty().bind(new DoubleBinding() {
            {
                bind(level);
            }

            @Override
            protected double computeValue() {
                double degrees = REST_DEGREES + level.get() * (HELD_DEGREES - REST_DEGREES);
                return Math.min(LAST_DEGREES, degrees);
            }
        });
        needle.getTransforms().add(swing);
        return needle;
    }

    private static Circle hub(double width) {
        Circle hub = new Circle(0.045 * width);
        hub.getStyleClass().add("meter-frame");
        return hub;
    }
}
