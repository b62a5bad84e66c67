package telltally.trainer.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import telltally.trainer.screen.Chart;

/** A chart drawn from its points: lines at the marks, a dot for each value, the first and the last day below. */
final class ChartPane extends Region {
    private static final double DOT_PX = 4;
    private static final double GAP_PX = 8;

    private final Chart chart;
    private final List<Line> lines = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final List<Circle> dots = new ArrayList<>();
    private final Polyline curve = new Polyline();
    private final Label firstDay;
    private final Label lastDay;

    ChartPane(Chart chart) {
        this.chart = chart;
        getStyleClass().add("chart-pane");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(chart.spoken());
        chart.marks().forEach(mark -> {
            Line line = new Line();
            line.getStyleClass().add("mark");
            lines.add(line);
            labels.add(label(mark.label()));
        });
        curve.getStyleClass().add("curve");
        chart.points().forEach(point -> {
            Circle dot = new Circle(DOT_PX);
            dot.getStyleClass().add("dot");
            dots.add(dot);
        });
        List<Chart.Point> points = chart.points();
        firstDay = label(points.get(0).day());
        lastDay = label(points.size() == 1 ? "" : points.get(points.size() - 1).day());
        getChildren().addAll(lines);
        getChildren().add(curve);
        getChildren().addAll(dots);
        getChildren().addAll(labels);
        getChildren().addAll(firstDay, lastDay);
    }

    private static Label label(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("small-label");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    @Override
    protected void layoutChildren() {
        double left = snappedLeftInset()
                + labels.stream()
                        .mapToDouble(label -> label.prefWidth(-1))
                        .max()
                        .orElse(0)
                + GAP_PX;
        double right = getWidth() - snappedRightInset() - DOT_PX;
        double textHeight = firstDay.prefHeight(-1);
        double top = snappedTopInset() + textHeight / 2;
        double foot = getHeight() - snappedBottomInset() - textHeight - GAP_PX;
        for (int i = 0; i < lines.size(); i++) {
            double y = height(chart.marks().get(i).up(), top, foot);
            Line line = lines.get(i);
            line.setStartX(left);
            line.setEndX(right);
            line.setStartY(y);
            line.setEndY(y);
            Label label = labels.get(i);
            label.resizeRelocate(snappedLeftInset(), y - textHeight / 2, label.prefWidth(-1), textHeight);
        }
        curve.getPoints().clear();
        for (int i = 0; i < dots.size(); i++) {
            Chart.Point point = chart.points().get(i);
            double x = left + DOT_PX + point.across() * (right - left - DOT_PX);
            double y = height(point.up(), top, foot);
            dots.get(i).setCenterX(x);
            dots.get(i).setCenterY(y);
            curve.getPoints().addAll(x, y);
        }
        double firstX = dots.size() == 1 ? dots.get(0).getCenterX() - firstDay.prefWidth(-1) / 2 : left;
        firstDay.resizeRelocate(firstX, foot + GAP_PX, firstDay.prefWidth(-1), textHeight);
        lastDay.resizeRelocate(right - lastDay.prefWidth(-1), foot + GAP_PX, lastDay.prefWidth(-1), textHeight);
    }

    private static double height(double up, double top, double foot) {
        return foot - Math.max(0, Math.min(1, up)) * (foot - top);
    }
}
