package telltally.trainer.view;

import java.util.List;
import javafx.geometry.Orientation;
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
        double across = width < 0 ? getWidth() : width;
        int rows = (getChildren().size() + inRow(across) - 1) / inRow(across);
        double tall = (rows - 1) * gapPx;
        for (int row = 0; row < rows; row++) {
            tall += tallest(row, across);
        }
        return tall;
    }

    @Override
    protected void layoutChildren() {
        int inRow = inRow(getWidth());
        double each = each(getWidth());
        double top = 0;
        for (int i = 0; i < getChildren().size(); i++) {
            int row = i / inRow;
            double tall = tallest(row, getWidth());
            getChildren().get(i).resizeRelocate(i % inRow * (each + gapPx), top, each, tall);
            if (i % inRow == inRow - 1) {
                top += tall + gapPx;
            }
        }
    }

    /** How wide each column is. */
    private double each(double across) {
        int inRow = inRow(across);
        return (across - (inRow - 1) * gapPx) / inRow;
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

    /** Of one row; what wraps is taller the narrower it is. */
    private double tallest(int row, double across) {
        int inRow = inRow(across);
        return getChildren().stream()
                .skip((long) row * inRow)
                .limit(inRow)
                .mapToDouble(column -> column.prefHeight(each(across)))
                .max()
                .orElse(0);
    }
}
