package telltally.trainer.view;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** Columns of one width that share a row as far as there is room, and take further rows where there is not. */
final class EvenColumns extends Region {
    private final double gapPx;

    EvenColumns(List<? extends Region> columns, double gapPx) {
        this.gapPx = gapPx;
        getChildren().addAll(columns);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return widest();
    }

    @Override
    protected double computePrefWidth(double height) {
        return width(getChildren().size());
    }

    @Override
    protected double computePrefHeight(double width) {
        int inRow = inRow(width < 0 ? getWidth() : width);
        int rows = (getChildren().size() + inRow - 1) / inRow;
        return rows * tallest() + (rows - 1) * gapPx;
    }

    @Override
    protected void layoutChildren() {
        List<Node> columns = getManagedChildren();
        int inRow = inRow(getWidth());
        double each = (getWidth() - (inRow - 1) * gapPx) / inRow;
        double tall = tallest();
        for (int i = 0; i < columns.size(); i++) {
            int row = i / inRow;
            int place = i % inRow;
            columns.get(i).resizeRelocate(place * (each + gapPx), row * (tall + gapPx), each, tall);
        }
    }

    private int inRow(double across) {
        int inRow = getChildren().size();
        while (inRow > 1 && width(inRow) > across) {
            inRow--;
        }
        return Math.max(1, inRow);
    }

    private double width(int columns) {
        return columns * widest() + (columns - 1) * gapPx;
    }

    private double widest() {
        return getChildren().stream()
                .mapToDouble(column -> column.minWidth(-1))
                .max()
                .orElse(0);
    }

    private double tallest() {
        return getChildren().stream()
                .mapToDouble(column -> column.prefHeight(-1))
                .max()
                .orElse(0);
    }
}
